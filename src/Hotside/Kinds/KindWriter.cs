using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Notation;

namespace Hotside.Kinds;

/// <summary>Writes a kind as data, as it stands under its name in a job file.</summary>
internal static class KindWriter
{
    /// <summary>The lines that describe a kind, without indentation and without its name.</summary>
    public static IEnumerable<string> Lines(PartKind kind)
    {
        if (kind.Letter.Length > 0) yield return "letter: " + kind.Letter;
        if (kind.Noun != new PartKind(kind.Id).Noun) yield return "noun: " + YamlQuotes.Of(kind.Noun);
        if (kind.BritishNoun is { } british) yield return "british noun: " + YamlQuotes.Of(british);
        if (kind.Summary.Length > 0) yield return "summary: " + YamlQuotes.Of(kind.Summary);
        if (kind.Source.Length > 0) yield return "source: " + YamlQuotes.Of(kind.Source);
        if (kind.Symbol is { } symbol) yield return "symbol: " + symbol;
        if (kind.Ways is { } ways) yield return $"ways: {Numbers.Whole(ways.Least)} to {Numbers.Whole(ways.Most)}";
        if (!kind.InnerNodes.IsEmpty) yield return $"inner: [{string.Join(", ", kind.InnerNodes)}]";
        if (kind.TakesAnyTerminal) yield return "terminals: any";
        foreach (string line in Section("terminals", kind.Terminals.Select(t => (t.Name, Terminal(t))))) yield return line;
        foreach (string line in Section("elements", kind.Elements.Select(e => (e.Name, Element(e))))) yield return line;
        foreach (string line in Section("actuators", kind.Actuators.Where(a => !IsImplied(a, kind)).Select(a => (a.Name, Of(a))))) yield return line;
        foreach (string line in Section("ratings", kind.Ratings.Select(r => (r.Name, string.Join(r.IsOneEach ? ", " : " + ", r.Elements))))) yield return line;
        foreach (string line in Section("defaults", kind.Ratings.Where(r => r.Default is not null).Select(r => (r.Name, r.Default!.ToString())))) yield return line;
        foreach (string line in Section("options", kind.Options.OrderBy(o => o.Key, StringComparer.Ordinal).Select(o => (o.Key, o.Value)))) yield return line;
        if (kind.Case != CaseKind.None) yield return "case: " + Word(kind.Case);
        if (kind.Voltage != "indifferent") yield return "voltage: " + kind.Voltage;
        if (kind.Polarity != "indifferent") yield return "polarity: " + kind.Polarity;
        if (kind.Current != "indifferent") yield return "current: " + kind.Current;
    }

    private static IEnumerable<string> Section(string name, IEnumerable<(string Key, string Value)> entries)
    {
        var all = entries.ToArray();
        return all.Length == 0 ? [] : all.Select(e => $"  {YamlQuotes.Of(e.Key)}: {YamlQuotes.Of(e.Value)}").Prepend(name + ":");
    }

    private static string Terminal(KindTerminal terminal) => string.Join(", ",
        new[] { Word(terminal.Side), terminal.Meaning }.Where(t => t.Length > 0)
            .Concat(terminal.Aliases.Select(a => "also " + a)).Concat(terminal.IsCase ? ["also case"] : Array.Empty<string>()));

    private static string Element(Element element)
    {
        var items = ImmutableArray.CreateBuilder<string>();
        items.Add(Word(element.Type));
        items.Add($"{element.From} to {element.To}");
        if (element.IsOneWay) items.Add("one way");
        if (element.TakesEitherPolarity) items.Add("either polarity");
        if (element.IsAgainstCase) items.Add("against case");
        if (element.Against is { } terminal) items.Add("against " + terminal);
        if (element.IsInternal) items.Add("internal");
        if (element.IsNoControl) items.Add("not a control");
        items.AddRange(ElementTraitWords.All.Where(t => element.Traits.HasFlag(t.Trait)).Select(t => t.Word));
        if (element.When is { } when) items.Add("when " + when);
        return string.Join(", ", items);
    }

    private static string Of(Actuator actuator)
    {
        var items = ImmutableArray.CreateBuilder<string>();
        items.Add(string.Join(" / ", actuator.Positions));
        if (actuator.Drive is ActuatorDrive.Hand or ActuatorDrive.Foot or ActuatorDrive.Key) items.Add("by " + Word(actuator.Drive));
        if (actuator.Drive == ActuatorDrive.Automatic) items.Add("automatic");
        if (actuator.IsShared) items.Add("shared");
        foreach (var pull in actuator.Pulls) items.Add($"{pull.Position} by {string.Join(" and ", pull.Coils)}");
        if (!actuator.KeptBy.IsEmpty) items.Add("kept by " + string.Join(" and ", actuator.KeptBy));
        if (actuator.ReturnsFrom is { } from) items.Add($"returns from {from} to {actuator.ReturnsTo}");
        else if (actuator.Returns) items.Add("returns");
        if (actuator.Cycles) items.Add("cycles");
        if (actuator.IsNoControl) items.Add("not a control");
        if (actuator.Stays) items.Add("stays");
        if (actuator.PullsAt is { } pulls) items.Add(ActuatorReader.PullsAt + Numbers.Plain(pulls));
        if (actuator.DropsAt is { } drops) items.Add(ActuatorReader.DropsAt + Numbers.Plain(drops));
        return string.Join(", ", items);
    }

    // A winding's own actuator is not written: reading makes it again.
    private static bool IsImplied(Actuator actuator, PartKind kind) =>
        actuator.Drive == ActuatorDrive.Driven && kind.ElementNamed(actuator.Name) is { Type: ElementType.Coil };

    private static string Word<T>(T value) where T : struct, Enum => value.ToString().ToLowerInvariant();
}
