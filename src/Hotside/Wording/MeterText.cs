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
        var (black, level) = Reference(path, source, circuit);
        string full = "about " + QuantityWords.Volts(level), before = Drop(path.HotWay, circuit), behind = Drop(path.GroundWay, circuit);
        string volts = before.Length == 0 ? full : $"{full} less what {before}", low = behind.Length == 0 ? "next to nothing" : "what " + behind;
        string test = behind.Length == 0 ? $"If {back} reads more than a few tenths of a volt when it is on, that {words.Ground} is bad; if" : "If";
        string lead = $"Voltmeter, black lead on {black}";
        switch (load.Side)
        {
            case SwitchedSide.HotSwitched:
                yield return $"{lead}: {feed} reads {volts} when {load.Name} is on, nothing when it is off; {back} reads {(behind.Length == 0 ? low + " both times" : low + " when it is on, nothing when it is off")}.";
                yield return $"{test} {feed} reads nothing when it should be on, look further back.";
                break;
            case SwitchedSide.GroundSwitched:
                yield return $"{lead}: off, {feed} and {back} both read {full}, {back} through {load.Name} itself; on, {feed} {(before.Length == 0 ? "reads the same" : "reads " + volts)} and {back} {low}.";
                yield return $"If {back} reads nothing when it is off, {load.Name} is open inside; a bare {back} that touches metal switches it on.";
                break;
            case SwitchedSide.BothSides:
                yield return $"{lead}: on, {feed} reads {volts} and {back} {low}. Off, the readings depend on which of the two ways is open.";
                break;
            case SwitchedSide.Unswitched:
                yield return $"{lead}: {feed} reads {volts} at all times, {back} {low}.";
                break;
            default:
                yield return $"{lead}: on, the reading falls from load to load along the string; between {feed} and {back} there is only {load.Name}'s share.";
                break;
        }
    }

    // Where the way ends, and what its source stands at against that: a source may stand upon another, and a load between two posts.
    private static (string Black, double Volts) Reference(LoadPath path, SourcePoles source, Circuit circuit)
    {
        var nodes = Nodes.Of(circuit, throughLinks: true);
        double Level(SourcePoles s, int depth) => (s.PlusIsFeed ? s.Volts : -s.Volts)
            + (depth < circuit.Sources.Length && circuit.Sources.FirstOrDefault(o => o != s && nodes.AreOne(o.Feed, s.Return)) is { } below ? Level(below, depth + 1) : 0);
        if (circuit.Sources.FirstOrDefault(s => s.Part.Id == path.GroundWay[^1]) is not { } end || nodes.AreOne(source.Return, circuit.System.ReturnNode) && end == source)
            return (circuit.System.Return is { } node ? circuit.TextOf(node) : "bare chassis metal", Level(source, 0));
        return end == source ? (circuit.TextOf(source.Return), source.PlusIsFeed ? source.Volts : -source.Volts)
            : (circuit.TextOf(end.Feed), Level(source, 0) - Level(end, 0));
    }

    // An end inside the part cannot be touched with a probe.
    private static string NameOf(End end, LoadStudy load, string otherwise) =>
        load.Part.Kind.TerminalNamed(end.Terminal) is null ? otherwise : end.Terminal == "case" ? $"the case of {end.Part}" : end.ToString();

    private static string Drop(IEnumerable<string> way, Circuit circuit)
    {
        string[] dropping = [.. way.Distinct().Where(id => circuit.FindPart(id) is { } part
            && part.Kind.Elements.Any(e => e.Type is ElementType.Resistor or ElementType.Dropper or ElementType.Sender))];
        return dropping.Length == 0 ? "" : $"{PartWords.And(dropping)} {(dropping.Length == 1 ? "drops" : "drop")}";
    }
}
