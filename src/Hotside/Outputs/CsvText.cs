using System.Text;

namespace Hotside.Outputs;

/// <summary>Comma-separated values after RFC 4180: a head line, lines ended by carriage return and line feed.</summary>
internal static class CsvText
{
    /// <summary>The lines of a table, the head line first.</summary>
    public static string Of(IEnumerable<IEnumerable<string>> lines)
    {
        var text = new StringBuilder();
        foreach (var line in lines) text.AppendJoin(',', line.Select(Quoted)).Append("\r\n");
        return text.ToString();
    }

    private static string Quoted(string cell) =>
        cell.AsSpan().IndexOfAny(",\"\r\n") < 0 ? cell : "\"" + cell.Replace("\"", "\"\"", StringComparison.Ordinal) + "\"";
}
