using Hotside.Checks;
using Hotside.Checks.Starting;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Proposals.Exposures;
using Hotside.Proposals.Rules;

namespace Hotside.Proposals.Steps;

/// <summary>Metal on which something stands gets a strap to the ground pole where it has none.</summary>
internal static class StrapStep
{
    // A strap as heavy as a starter's cable, and a wire for what draws little (common practice, no source).
    private const int CableGauge = 2, WireGauge = 14;

    /// <summary>Runs the straps, and asks where nobody says what a machine stands on.</summary>
    public static void Run(Workbench work)
    {
        if (work.Target.IsSame) return;
        foreach (var (metal, standing, strap) in Missing(work.Now))
        {
            string id = work.Run(strap.From, strap.To, strap.Wire);
            work.DecideBy("strap", id, ("items", string.Join(", ", standing)), ("stand", standing.Length == 1 ? "stands" : "stand"), ("metal", metal));
            work.Draft.Note(id).Reason = work.Decisions[^1].Reason;
        }
        foreach (var finding in Found(work.Now).Where(f => f.Kind == BondingStrap.Unsaid)) work.Ask(finding.Items[0], DecisionTable.Standard["strap-unsaid"].Question!);
    }

    /// <summary>A circuit with the straps that it lacks: what stands on bare metal gets its volts all the same once they are run.</summary>
    public static Circuit Strapped(Bench bench) => Missing(bench) is { Length: > 0 } missing ? bench.Circuit.With([.. bench.Circuit.Conductors, .. missing.Select(m => m.Strap)]) : bench.Circuit;

    // A boat's metal is bonded, and carries no current.
    private static IEnumerable<Diagnostic> Found(Bench bench) => Trade.IsIsolated(bench.Circuit) ? [] : BondingStrap.Of(bench.Checked);

    private static (string Metal, string[] Standing, Conductor Strap)[] Missing(Bench bench) =>
        [.. Found(bench).Where(f => f.Kind == BondingStrap.Kind).Select(f => (f.Items[0], f.Items.Skip(1).ToArray())).Select(m => (m.Item1, m.Item2, Strap(bench.Circuit, m.Item1, m.Item2)))];

    private static Conductor Strap(Circuit circuit, string metal, string[] standing)
    {
        bool isHeavy = standing.Select(s => circuit.FindPart(s)!).Any(p => p.Kind.Elements.Any(e => p.IsStarter(e) || e.IsMachine));
        var wire = Workbench.NewWire(isHeavy ? "" : "BK", 0.3, WireSize.Awg(isHeavy ? CableGauge : WireGauge)) with { IsBraid = isHeavy };
        return new("strap of " + metal, End.At(metal, circuit.FindPart(metal)!.Kind.Terminals[0].Name), circuit.System.ReturnNode, wire);
    }
}
