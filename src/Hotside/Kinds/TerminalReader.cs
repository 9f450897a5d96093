using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Notation;

namespace Hotside.Kinds;

/// <summary>Reads a terminal: <c>86: top, coil start, also A1</c>.</summary>
internal static class TerminalReader
{
    public static KindTerminal? Read(YamlText name, YamlText line, List<Diagnostic> problems)
    {
        if (!Names.IsTerminal(name.Value))
        {
            problems.Add(KindProblems.BadName.At(name.Span, name.Value));
            return null;
        }
        var items = LineItems.Split(line, problems);
        if (items.IsEmpty || !Enum.TryParse(items[0].Text, ignoreCase: true, out TerminalSide side) || items[0].Text.Any(char.IsDigit))
        {
            problems.Add(KindProblems.BadTerminal.At(items.IsEmpty ? line.Span : items[0].Span, items.IsEmpty ? "" : items[0].Text) with
            {
                Hint = "top, bottom, left, right or any comes first",
            });
            return null;
        }
        var aliases = items.Skip(1).Where(i => i.Text.StartsWith("also ", StringComparison.Ordinal)).Select(i => i.Text["also ".Length..]).ToImmutableArray();
        return new(name.Value, side)
        {
            Meaning = string.Join(", ", items.Skip(1).Where(i => !i.Text.StartsWith("also ", StringComparison.Ordinal)).Select(i => i.Text)),
            Aliases = [.. aliases.Where(a => a != "case")],
            IsCase = aliases.Contains("case"),
        };
    }
}
