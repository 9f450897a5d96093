using Hotside.Circuits;
using Hotside.Studies;

namespace Hotside.Wording;

/// <summary>How to tell with a voltmeter on which side a load is switched. Readings on open and closed sides: common practice, no source.</summary>
internal static class MeterText
{
    public static IEnumerable<string> Of(LoadStudy load, CircuitStudy study, Vocabulary words)
    {
        var circuit = study.Circuit;
        if (load.Paths.IsEmpty || load.IsMomentary) yield break;
        var path = load.Paths[0];
        if (circuit.Sources.FirstOrDefault(s => s.Part.Id == path.HotWay[0]) is not { } source) yield break;
        string feed = NameOf(path.FeedEnd, load, $"the {words.Hot} end of {load.Name}"), back = NameOf(path.ReturnEnd, load, $"the other end of {load.Name}");
        string volts = "about " + SheetText.Potential(source) + Drop(path, circuit);
        string lead = $"Voltmeter, black lead on {(circuit.System.Return is { } node ? circuit.TextOf(node) : "bare chassis metal")}";
        switch (load.Side)
        {
            case SwitchedSide.HotSwitched:
                yield return $"{lead}: {feed} reads {volts} when {load.Name} is on, nothing when it is off; {back} reads next to nothing both times.";
                yield return $"If {back} reads more than a few tenths of a volt when it is on, that {words.Ground} is bad; if {feed} reads nothing, look further back.";
                break;
            case SwitchedSide.GroundSwitched:
                yield return $"{lead}: {feed} reads {volts} on and off; {back} reads the same when {load.Name} is off, through {load.Name} itself, and next to nothing when it is on.";
                yield return $"If {back} reads nothing when it is off, {load.Name} is open inside; a bare {back} that touches metal switches it on.";
                break;
            case SwitchedSide.BothSides:
                yield return $"{lead}: on, {feed} reads {volts} and {back} next to nothing. Off, the readings depend on which of the two ways is open.";
                break;
            case SwitchedSide.Unswitched:
                yield return $"{lead}: {feed} reads {volts} at all times, {back} next to nothing.";
                break;
            default:
                yield return $"{lead}: on, the reading falls from load to load along the string; between {feed} and {back} there is only {load.Name}'s share.";
                break;
        }
    }

    // An end inside the part cannot be touched with a probe.
    private static string NameOf(End end, LoadStudy load, string otherwise) =>
        load.Part.Kind.TerminalNamed(end.Terminal) is null ? otherwise : end.Terminal == "case" ? $"the case of {end.Part}" : end.ToString();

    private static string Drop(LoadPath path, Circuit circuit)
    {
        string[] dropping = [.. path.HotWay.Concat(path.GroundWay).Distinct().Where(id => circuit.FindPart(id) is { } part
            && part.Kind.Elements.Any(e => e.Type is ElementType.Resistor or ElementType.Dropper or ElementType.Sender))];
        return dropping.Length == 0 ? "" : $", less what {PartWords.And(dropping)} {(dropping.Length == 1 ? "drops" : "drop")},";
    }
}
