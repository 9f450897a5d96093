using Hotside.Checks.Protection;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Studies;

namespace Hotside.Checks.Lamps;

/// <summary>Row 32: one filament for brake and turn that the brake lights steadily while it should flash.</summary>
internal static class BrakeOverTurn
{
    public static readonly DiagnosticKind Kind = new("HS3332", Severity.Error, "Brake overrides the turn signal",
        "{0} flashes when {1} and is lit steadily when {2}; with both it does not flash")
    {
        Source = "TM 9-8000, 16-13: the stop feed passes the turn switch where one filament serves both",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit)
    {
        if (!circuit.Circuit.Parts.Any(Trade.IsFlasher)) yield break;
        foreach (var load in circuit.Loads.Where(l => l.Element.Type == ElementType.Lamp && l.InSeriesWith.IsEmpty && l.Control.Any.Length > 1
            && l.Paths.Any(p => p.HotWay.Any(id => circuit.Circuit.FindPart(id) is { } part && Trade.IsFlasher(part)))))
        {
            var flashing = load.Control.Any.Where(c => Feeds(circuit, load, c, _ => true) && !Feeds(circuit, load, c, NoFlasher)).ToArray();
            var steady = load.Control.Any.Except(flashing).ToArray();
            var pair = flashing.SelectMany(f => steady.Select(s => (Flash: f, Steady: s))).FirstOrDefault(p => Together(p.Flash, p.Steady) && Feeds(circuit, load, Merged(p.Flash, p.Steady), NoFlasher));
            if (pair.Flash is null) continue;
            yield return Kind.Of([load.Part.Id, .. pair.Flash.All.Concat(pair.Steady.All).Select(s => s.Variable.Part).OfType<string>().Distinct()], load.Name, pair.Flash.ToString(), pair.Steady.ToString()) with
            {
                Hint = "lead the stop feed through the turn switch (turn-stop-switch), or give stop and turn a filament each",
            };
        }
    }

    private static bool NoFlasher(WireEdge edge) => edge.Part is null || !Trade.IsFlasher(edge.Part);

    // Both at once: where they share a lever, what both allow of it.
    private static Combination Merged(Combination a, Combination b) =>
        new([.. a.All.Select(s => b.All.FirstOrDefault(t => t.Variable == s.Variable) is { } other ? s with { Positions = [.. s.Positions.Intersect(other.Positions)] } : s), .. b.All.Where(t => a.All.All(s => s.Variable != t.Variable))]);

    // Whether a way leads from a battery to the load in a combination.
    private static bool Feeds(CheckedCircuit circuit, LoadStudy load, Combination combination, Predicate<WireEdge> passes)
    {
        if (circuit.Points.Solve(OperatingPoints.SettingOf(combination)) is not { } solution) return false;
        OperatingPoint point = new("", solution);
        var reached = circuit.Graph.Reach([FusesAhead.FeedNode(circuit, load)], e => e.IsInLine && point.IsClosed(e) && passes(e));
        return circuit.Feeds.Any(reached.Contains);
    }

    private static bool Together(Combination a, Combination b) => a.All.All(s => b.All.All(t => t.Variable != s.Variable || t.Positions.Intersect(s.Positions).Any()));
}
