using Hotside.Checks;
using Hotside.Checks.Starting;
using Hotside.Circuits;
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
        if (Trade.IsIsolated(work.Draft.Circuit)) return;
        foreach (var finding in BondingStrap.Of(work.Now.Checked).ToArray())
        {
            if (finding.Kind == BondingStrap.Unsaid)
            {
                work.Ask(finding.Items[0], DecisionTable.Standard["strap-unsaid"].Question!);
                continue;
            }
            string metal = finding.Items[0];
            string[] standing = [.. finding.Items.Skip(1)];
            bool isHeavy = standing.Select(work.Draft.Part).Any(p => p.Kind.Elements.Any(e => p.IsStarter(e) || e.IsMachine));
            var wire = Workbench.NewWire(isHeavy ? "" : "BK", 0.3, WireSize.Awg(isHeavy ? CableGauge : WireGauge)) with { IsBraid = isHeavy };
            string strap = work.Run(End.At(metal, work.Draft.Part(metal).Kind.Terminals[0].Name), work.Return, wire);
            work.DecideBy("strap", strap, ("items", string.Join(", ", standing)), ("stand", standing.Length == 1 ? "stands" : "stand"), ("metal", metal));
            work.Draft.Note(strap).Reason = work.Decisions[^1].Reason;
        }
    }
}
