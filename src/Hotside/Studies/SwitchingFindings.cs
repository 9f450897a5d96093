using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Studies.Operating;
using Hotside.Studies.Switching;

namespace Hotside.Studies;

/// <summary>What the verdicts of a circuit show to be wrong or doubtful.</summary>
internal static class SwitchingFindings
{
    public static IEnumerable<Diagnostic> Of(Verdicts verdicts) =>
        [.. Shorts(verdicts), .. Relays(verdicts), .. Loads(verdicts), .. Taps(verdicts), .. Sneaks(verdicts)];

    private static IEnumerable<Diagnostic> Shorts(Verdicts verdicts) =>
        verdicts.Short == Diagrams.Never ? []
        : [StudyProblems.Short.Of(Owners(verdicts, verdicts.Short), verdicts.ControlOf(verdicts.Short).ToString()) with { Hint = "a load or nothing must lie between a feed and the return" }];

    private static IEnumerable<Diagnostic> Relays(Verdicts verdicts)
    {
        string Names(int[] relays) => string.Join(", ", Ids(verdicts, relays));
        foreach (var (relays, when) in verdicts.Relays.NeverSettling) yield return StudyProblems.NeverSettles.Of(Ids(verdicts, relays), Names(relays), verdicts.ControlOf(when).ToString());
        foreach (var (relays, when) in verdicts.Relays.Races) yield return StudyProblems.Race.Of(Ids(verdicts, relays), Names(relays), verdicts.ControlOf(when).ToString());
        foreach (int[] relays in verdicts.Relays.Untried) yield return StudyProblems.Untried.Of(Ids(verdicts, relays), Names(relays));
        int both = verdicts.Relays.Closed(verdicts.Relays.Undefined);
        if (both != Diagrams.Never) yield return StudyProblems.BothCoils.Of(Owners(verdicts, both), verdicts.ControlOf(both).ToString());
    }

    private static IEnumerable<Diagnostic> Loads(Verdicts verdicts)
    {
        foreach (var load in verdicts.Loads.Where(l => l.Side == SwitchedSide.Dead && !l.Element.IsInternal))
            yield return load.DeadBecause == "polarity"
                ? StudyProblems.WrongPolarity.Of([load.Part.Id], load.Name) with { Hint = $"{load.Part.Id} has plus on {load.Element.From}; turn its leads" }
                : StudyProblems.Dead.Of([load.Part.Id], load.Name) with { Hint = "look for a wire, a feed or a return that is missing" };
    }

    // A load between the tap of stacked batteries and the return, or between two heights of the stack.
    private static IEnumerable<Diagnostic> Taps(Verdicts verdicts)
    {
        var graph = verdicts.Graph;
        foreach (var tap in graph.Feeds.Where(f => graph.Feeds.Any(above => above.Return == f.Point && above != f)))
            foreach (var load in verdicts.Loads.Where(l => l.Paths.Any(p => Touches(graph, p, tap.Point))).Take(1))
                yield return StudyProblems.Tap.Of([load.Part.Id, tap.Source.Part.Id], load.Name, tap.Source.Part.Id) with { Hint = "feed it from the whole bank through a reducer, or charge the batteries apart" };
    }

    private static bool Touches(ContactGraph graph, LoadPath path, int point) =>
        new[] { path.Hot.FirstOrDefault(), path.Ground.LastOrDefault() }.OfType<string>().Select(graph.Circuit.FindConductor).OfType<Conductor>()
            .Any(c => c.Ends.Any(e => graph.Point(e) == point));

    // In each named setting: current where no verdict feeds.
    private static IEnumerable<Diagnostic> Sneaks(Verdicts verdicts)
    {
        var graph = verdicts.Graph;
        foreach (var setting in graph.Circuit.Settings)
        {
            int[] state = State(verdicts, setting);
            if (graph.Diagrams.Value(verdicts.Short, state)) continue;
            var solution = new NodalSolution(graph, state);
            foreach (var (load, edge) in verdicts.Loads.Zip(graph.Consumers).Where(l => !l.First.Element.IsInternal && l.First.Side != SwitchedSide.InSeries && l.First.Until is null))
            {
                double rated = (load.Part.Rated(load.Element.Name, Unit.Volt) ?? graph.Circuit.System.Volts.Max()) / Resistance.Of(load.Part, load.Element, graph.Circuit.System.Volts.Max());
                if (Math.Abs(solution.Through(edge)) > rated * 0.05 && !verdicts.IsOn(load, state))
                    yield return StudyProblems.SneakPath.Of([load.Part.Id], setting.Name, load.Name) with { Hint = "find the way by which it is fed, and part it with a diode, a relay or a feed of its own" };
            }
        }
    }

    private static int[] State(Verdicts verdicts, Setting setting)
    {
        var graph = verdicts.Graph;
        int[] state = new int[graph.Diagrams.Variables];
        for (int v = 0; v < state.Length; v++)
            if (setting.Positions.FirstOrDefault(p => p.Part == graph.Variables[v].Part && p.Actuator == graph.Variables[v].Actuator.Name) is { } set)
                state[v] = Math.Max(0, graph.Variables[v].Actuator.Positions.IndexOf(set.Position));
        foreach (int relay in verdicts.Relays.Driven)
            state[relay] = Math.Max(0, Array.FindIndex(verdicts.Relays.RestOf(relay), f => graph.Diagrams.Value(f, state)));
        return state;
    }

    private static IEnumerable<string> Ids(Verdicts verdicts, int[] relays) => relays.Select(r => verdicts.Graph.Variables[r].Part!).Distinct();

    private static IEnumerable<string> Owners(Verdicts verdicts, int function) =>
        verdicts.Graph.Diagrams.Support(function).Select(v => verdicts.Graph.Variables[v].Part).OfType<string>().Distinct();
}
