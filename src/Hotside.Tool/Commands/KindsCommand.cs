using System.CommandLine;
using Hotside.Kinds;

namespace Hotside.Tool.Commands;

/// <summary><c>hotside kinds [KIND]</c>: the kinds of parts, or one in full; as text or drawn.</summary>
internal static class KindsCommand
{
    public static Command Make()
    {
        var kind = new Argument<string?>("KIND") { Description = "One kind, to see its terminals, what is inside, its ratings and what it minds.", Arity = ArgumentArity.ZeroOrOne };
        var sheet = new Option<bool>("--sheet") { Description = "Draw the symbol chart of all kinds; needs -o." };
        var output = new Option<string?>("--output", "-o") { Description = "The SVG file to draw to; - for standard output." };
        var command = new Command("kinds", """
            Lists the kinds of parts with a line each, or one kind with its terminals, ratings and positions;
            with -o the kind is drawn, with --sheet all of them.

            Example:
              hotside kinds horn-relay
              hotside kinds horn-relay -o horn-relay.svg
              hotside kinds --sheet -o chart.svg
            """) { kind, sheet, output };
        command.SetAction(parsed => new KindsRun(parsed.InvocationConfiguration.Output, parsed.InvocationConfiguration.Error, parsed.GetValue(output))
            .Of(parsed.GetValue(kind), parsed.GetValue(sheet)));
        return command;
    }

    /// <summary>One call of the command.</summary>
    private sealed record KindsRun(TextWriter Output, TextWriter Error, string? Target)
    {
        public int Of(string? id, bool sheet)
        {
            if (Target is not (null or "-") && !Target.EndsWith(".svg", StringComparison.OrdinalIgnoreCase)) return Wrong($"\"{Target}\" must end in .svg.");
            if (sheet && id is not null) return Wrong("--sheet draws all kinds; leave out the one, or --sheet.");
            if (sheet && Target is null) return Wrong("--sheet needs -o FILE.svg.");
            if (sheet) return Draw(KindSheet.Of(Catalogue.Standard.Kinds));
            if (id is null && Target is not null) return Wrong("name a kind to draw, or give --sheet for all.");
            if (id is null) return Write(KindText.List(Catalogue.Standard.Kinds));
            if (Catalogue.Standard.Find(id) is { } found) return Target is null ? Write(KindText.Of(found)) : Draw(KindSheet.Of(found));
            return Wrong($"there is no kind \"{id}\".{(Catalogue.Standard.Nearest(id) is { } near ? $" Did you mean \"{near}\"?" : " \"hotside kinds\" lists them.")}");
        }

        private int Draw(Drawing drawing)
        {
            if (Target == "-") Output.Write(drawing.ToSvg());
            else drawing.SaveSvg(Target!);
            return ExitCode.Done;
        }

        private int Write(IEnumerable<string> lines)
        {
            foreach (string line in lines) Output.WriteLine(line);
            return ExitCode.Done;
        }

        private int Wrong(string what)
        {
            Error.WriteLine("hotside: " + what);
            return ExitCode.WrongUsage;
        }
    }
}
