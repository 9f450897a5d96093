using Hotside.Checks.Protection;
using Hotside.Circuits;
using Hotside.Proposals.Rules;

namespace Hotside.Proposals.Steps;

/// <summary>A fuse at the beginning of every hot run that has none; starter cables go without, by custom.</summary>
internal static class ProtectionStep
{
    public const double MostMetres = FarProtection.Bare;

    /// <summary>Fits the fuses.</summary>
    public static void Run(Workbench work)
    {
        // Each fuse makes another circuit: one at a time, with a bound against a run that a fuse does not help.
        for (int round = 0; round < 40; round++)
        {
            var branch = work.Now.Checked.Unfused.FirstOrDefault(b => (!b.Loads.IsEmpty || !b.Batteries.IsEmpty || (b.Protections.Any(p => p.Metres > MostMetres) && b.Conductors[0].Wire.Size?.Area < FeedWay.CableArea)) && b.Bare.Any(c => !work.Draft.Note(c.Id).IsFused));
            if (branch is null) break;
            var wire = branch.Bare.First(c => !work.Draft.Note(c.Id).IsFused);
            work.Draft.Note(wire.Id).IsFused = true;
            End near = NearEnd(work, branch.Source, wire);
            // Of what the branch feeds, that which hangs on this wire.
            string[] behind = [.. work.Now.Checked.Study.Loads.Where(l => l.Paths.Any(p => p.Hot.Contains(wire.Id))).Select(l => l.Part.Id)];
            string fed = string.Join(", ", branch.Loads.Select(p => p.Id).Where(behind.Contains).Concat(branch.Batteries.Select(p => p.Id)).Distinct().Take(3));
            string reason = fed.Length > 0 ? $"nothing would open if {wire.Id} touched metal; it feeds {fed}"
                : branch.Loads.IsEmpty ? $"nothing would open if {wire.Id} touched metal, for the next fuse is too far along" : $"nothing would open if {wire.Id} touched metal, and it is always live";
            string fuse = work.Draft.Fit(new(work.Draft.KindOf("fuse")) { Name = branch.Loads.Select(p => p.Id).Distinct().Count() == 1 && !branch.Loads[0].Kind.TakesAnyTerminal ? branch.Loads[0].Title : Called(work, wire, near), Joints = [new("1", near)] }, reason);
            work.Draft.Move(wire.Id, near, End.At(fuse, "2"), "the fuse goes where the feed begins, within 0.18 m of it");
            work.Decide(fuse, DecisionKind.Fit, reason);
        }
        // Cables as thick as a starter's have no plain fuse; what is to guard them is for the owner to say.
        foreach (var cable in work.Now.Checked.Unfused.Where(b => !b.Protections.IsEmpty && b.Conductors[0].Wire.Size?.Area >= FeedWay.CableArea).Select(b => b.Conductors[0].Id).Distinct())
            work.Ask(cable, DecisionTable.Standard["main-cable"].Question!);
    }

    /// <summary>What a fuse at the beginning of a feed is called: after the part that it leads to, or the main fuse where it begins at a battery or a starter's stud.</summary>
    public static string Called(Workbench work, Conductor wire, End near)
    {
        bool isMain = near.Part is { } id && work.Draft.Part(id) is var from && (from.IsStandingSource || from.Kind.Voltage == "brief");
        string? to = wire.Ends.Where(e => e != near).Select(e => e.Part).FirstOrDefault();
        return isMain || to is null || work.Draft.Part(to) is { Kind.Elements.IsEmpty: true, Name: null } ? "Main fuse" : work.Draft.Part(to).Title;
    }

    // The end that the source reaches without the wire itself.
    private static End NearEnd(Workbench work, Part source, Conductor wire)
    {
        var graph = work.Now.Checked.Graph;
        var feeds = work.Draft.Circuit.Sources.Where(s => s.Part.Id == source.Id).Select(s => graph.NodeOf(s.Feed));
        var reached = graph.Reach(feeds, e => e.IsInLine && !e.IsProtection && e.Conductor?.Id != wire.Id);
        return reached.Contains(graph.NodeOf(wire.From)) ? wire.From : wire.To;
    }
}
