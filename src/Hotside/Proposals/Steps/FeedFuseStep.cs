using Hotside.Checks;
using Hotside.Circuits;
using Hotside.Proposals.Rules;
using Hotside.Sizing;

namespace Hotside.Proposals.Steps;

/// <summary>A fuse of its own for an old feed that the fuses ahead, raised or joined by another, no longer guard.</summary>
internal static class FeedFuseStep
{
    private const int MostRounds = 20;

    /// <summary>Fits the fuses where the feeds leave a rail or stud, and sizes anew.</summary>
    public static void Run(Workbench work)
    {
        for (int round = 0; round < MostRounds; round++)
        {
            var next = work.Now.Sizes.Conductors.Where(c => IsOverGuarded(work, c)).Select(c => (Sizing: c, Near: NearEnd(work, c.Conductor))).FirstOrDefault(c => c.Near is not null);
            if (next.Sizing is not { } sizing || next.Near is not { } near) return;
            string wire = sizing.Conductor.Id;
            work.Draft.Note(wire).IsFused = true;
            string reason = Workbench.Said(DecisionTable.Standard["feed-fuse"].Reason, ("guard", string.Join(" and ", sizing.ProtectedBy)), ("amperes", Numbers.Brief(sizing.GuardAmperes ?? 0)), ("wire", wire), ("allowed", Numbers.Brief(sizing.Allowed!.Amperes)),
                ("let", sizing.ProtectedBy.Length > 1 ? "together let" : "lets"));
            string fuse = work.Draft.Fit(new(work.Draft.KindOf("fuse")) { Name = ProtectionStep.Called(work, sizing.Conductor, near), Joints = [new("1", near)] }, reason);
            work.Draft.Move(wire, near, End.At(fuse, "2"), DecisionTable.Standard["feed-fuse"].Caution);
            work.Decide(fuse, DecisionKind.Fit, reason);
            SizeStep.Run(work);
        }
    }

    /// <summary>Whether a fuse of its own where it begins is what a wire wants.</summary>
    public static bool Helps(Workbench work, ConductorSizing sizing) => IsOverGuarded(work, sizing) && NearEnd(work, sizing.Conductor) is not null;

    // What its guards let through before, and no more now, is the owner's affair.
    private static bool IsOverGuarded(Workbench work, ConductorSizing sizing)
    {
        if (work.Draft.IsNew(sizing.Conductor.Id) || work.Draft.Note(sizing.Conductor.Id).IsFused || sizing is not { IsHot: true, FeedsStarter: false, IsUnprotected: false, Allowed: not null, GuardAmperes: { } guard }) return false;
        if (sizing.By(SizingRule.Fuse)?.Outcome is not (SizingOutcome.Warning or SizingOutcome.Failed)) return false;
        return work.Before.Sizes.Conductors.FirstOrDefault(c => c.Conductor.Id == sizing.Conductor.Id)?.GuardAmperes is not { } was || guard > was * 1.02;
    }

    // Where a fuse can be bolted to: the end of a wire at a rail or stud, an ammeter's too, that is live without it.
    private static End? NearEnd(Workbench work, Conductor wire)
    {
        var graph = work.Now.Checked.Graph;
        var feeds = work.Draft.Circuit.Sources.Where(s => s.Element.When is null).Select(s => graph.NodeOf(s.Feed));
        var reached = graph.Reach(feeds, e => e.IsInLine && e.Conductor?.Id != wire.Id);
        return wire.Ends.Where(e => e.Part is { } id && work.Draft.Part(id) is var part && (part.Kind is { Elements.IsEmpty: true, OnlyTerminal: not null } || Trade.IsAmmeter(part)) && reached.Contains(graph.NodeOf(e))).Select(e => (End?)e).FirstOrDefault();
    }
}
