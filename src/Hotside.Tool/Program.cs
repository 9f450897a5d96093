using System.CommandLine;
using Hotside.Tool;
using Hotside.Tool.Commands;

var root = new RootCommand("""
    Hotside reads the wiring of a vehicle before and after an alteration, checks it, says on which side
    each load is switched, and draws the pair with the changed conductors marked.

    Start with:  hotside new my-van   then   hotside check my-van.yaml   and   hotside draw my-van.yaml -o my-van.svg
    """)
{
    NewCommand.Make(),
    ConvertCommand.Make(),
    CheckCommand.Make(),
    DrawCommand.Make(),
    WiresCommand.Make(),
    OrderCommand.Make(),
    PackCommand.Make(),
    StudyCommand.Make(),
    ExplainCommand.Make(),
    DiagnoseCommand.Make(),
    SheetsCommand.Make(),
    KindsCommand.Make(),
    CompletionsCommand.Make(),
};

return Runner.Run(root, args, Console.Out, Console.Error);
