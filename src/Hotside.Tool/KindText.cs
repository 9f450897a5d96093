using Hotside.Circuits;
using Hotside.Kinds;

namespace Hotside.Tool;

/// <summary>Kinds of parts as lines of text.</summary>
internal static class KindText
{
    private const int Width = 10;

    /// <summary>All kinds, a line each, under the headings of their classes.</summary>
    public static IEnumerable<string> List(IEnumerable<PartKind> kinds)
    {
        var classes = kinds.ToLookup(PartClass.Of);
        int width = classes.SelectMany(c => c).Max(k => k.Id.Length);
        string between = "";
        foreach (var each in PartClass.All.Where(classes.Contains))
        {
            yield return $"{between}{(each.Letter + "  " + each.Name).Trim()}";
            foreach (var kind in classes[each]) yield return $"  {kind.Id.PadRight(width)}  {kind.Summary}";
            between = "\n";
        }
    }

    /// <summary>One kind in full.</summary>
    public static IEnumerable<string> Of(PartKind kind)
    {
        yield return $"{kind.Id}: {kind.Summary}";
        string british = kind.BritishNoun is { } noun ? $" (British: {noun})" : "";
        yield return Line("called", $"{kind.Noun}{british}; class {PartClass.Of(kind).Letter}, {PartClass.Of(kind).Name.ToLowerInvariant()}");
        yield return Line("source", kind.Source);
        if (kind.Ways is { } ways) yield return Line("ways", $"{ways.Least} to {ways.Most}; (n) stands for the number of the way");
        if (kind.TakesAnyTerminal) yield return Line("terminal", "any name");
        foreach (var terminal in kind.Terminals) yield return Line("terminal", Terminal(terminal));
        if (kind.HasCaseTerminal && kind.Terminals.All(t => !t.IsCase)) yield return Line("terminal", $"case    {(kind.Case == CaseKind.Grounded ? "stands on the chassis unless said otherwise" : "the shell")}");
        foreach (var element in kind.Elements) yield return Line("inside", Inside(element));
        foreach (var actuator in kind.Actuators) yield return Line("position", Position(actuator));
        foreach (var rating in kind.Ratings.Concat(kind.CommonRatings)) yield return Line("rating", $"{rating.Name}, of {string.Join(rating.IsOneEach ? ", then " : " and ", rating.Elements)}{(rating.Default is { } common ? $"; commonly {common}" : "")}");
        foreach (string option in kind.Options.OrderBy(o => o.Key, StringComparer.Ordinal).Select(o => $"{o.Key}: {o.Value}")) yield return Line("option", option);
        yield return Line("voltage", $"{kind.Voltage}: {Sensitivity.MeaningOfVoltage(kind.Voltage)}");
        yield return Line("polarity", $"{kind.Polarity}: {Sensitivity.MeaningOfPolarity(kind.Polarity)}");
        yield return Line("current", $"{kind.Current}: {Sensitivity.MeaningOfCurrent(kind.Current)}");
    }

    private static string Line(string what, string text) => $"  {what.PadRight(Width)}{text}".TrimEnd();

    private static string Terminal(KindTerminal terminal)
    {
        string[] aliases = [.. terminal.Aliases, .. terminal.IsCase ? ["case"] : Array.Empty<string>()];
        return $"{terminal.Name.PadRight(7)} {terminal.Meaning}{(aliases.Length == 0 ? "" : $" (also {string.Join(", ", aliases)})")}";
    }

    private static string Inside(Element element)
    {
        string[] items =
        [
            $"{element.Name}: {element.Type.ToString().ToLowerInvariant()}, {element.From} to {element.To}",
            .. element.IsOneWay ? ["one way"] : Array.Empty<string>(),
            .. element.TakesEitherPolarity ? ["either polarity"] : Array.Empty<string>(),
            .. element.IsInternal ? ["no load of its own"] : Array.Empty<string>(),
            .. element.IsNoControl ? ["not a control"] : Array.Empty<string>(),
            .. element.When is { } when ? [$"when {when}"] : Array.Empty<string>(),
        ];
        return string.Join(", ", items);
    }

    private static string Position(Actuator actuator)
    {
        string by = actuator.Drive switch
        {
            ActuatorDrive.Driven => string.Join(", ", actuator.Pulls.Select(p => $"{p.Position} by {string.Join(" and ", p.Coils)}")),
            ActuatorDrive.Automatic => "by itself",
            var drive => "by " + drive.ToString().ToLowerInvariant(),
        };
        string returns = actuator.ReturnsFrom is { } from ? $", returns from {from} to {actuator.ReturnsTo}" : actuator.Returns ? ", returns" : actuator.Stays ? ", stays" : "";
        return $"{actuator.Name}: {string.Join(" / ", actuator.Positions)}, {by}{returns}";
    }
}
