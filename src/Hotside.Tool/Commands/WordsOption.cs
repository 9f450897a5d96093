using System.CommandLine;

namespace Hotside.Tool.Commands;

/// <summary>Whose words a command uses.</summary>
internal static class WordsOption
{
    public static Option<string> Make()
    {
        var option = new Option<string>("--words") { Description = "American or British words: ground or earth, hot or live.", DefaultValueFactory = _ => "us" };
        option.AcceptOnlyFromAmong("us", "uk");
        return option;
    }

    public static Words Of(string? value) => value == "uk" ? Words.British : Words.American;
}
