using System.Collections.Immutable;
using Hotside.Alterations;
using Hotside.Circuits;

namespace Hotside.Orders;

/// <summary>The acts that every order has, whatever the list of changes says: record, battery out, dead tests, first power, hand over.</summary>
internal static class StandingActs
{
    /// <summary>The acts of an alteration; none where it changes nothing.</summary>
    public static IEnumerable<HandAct> Of(Alteration alteration)
    {
        if (alteration.Changes.IsEmpty) yield break;
        var posts = BatteryPosts.Of(alteration.Before);
        var newPosts = BatteryPosts.Of(alteration.After);
        yield return new(WorkActType.Record, "", 0);
        if (!posts.IsEmpty) yield return new(WorkActType.Measure, posts[0].Source.Part.Id, 0);
        foreach (var post in posts.OrderBy(p => p.IsGround ? 0 : 1))
            yield return new(WorkActType.CableOff, post.Source.Part.Id, 0) { Said = post.IsGround ? "ground" : "hot", At = post.End };
        foreach (string id in posts.Select(p => p.Source.Part.Id).Distinct()) yield return new(WorkActType.BatteryOut, id, 0);
        var minding = MindingParts(alteration).ToArray();
        foreach (string id in minding) yield return new(WorkActType.Unplug, id, 0);
        if (!newPosts.IsEmpty && (posts.IsEmpty || Text(posts, alteration.Before) != Text(newPosts, alteration.After)))
            yield return new(WorkActType.MarkPolarity, newPosts[0].Source.Part.Id, 0);
        bool hasFuses = alteration.After.Parts.Any(p => TradeWords.Of(p).Contains("fuse"));
        if (hasFuses) yield return new(WorkActType.DeadTest, "", 0) { Said = "fuses-out" };
        yield return new(WorkActType.DeadTest, "", 0) { Said = "dead-test" };
        if (newPosts.IsEmpty) yield break;
        bool isNew = alteration.Changes.SelectMany(c => c.Acts).Any(a => a is Fit or Replace or Reverse && a.Items.Any(i => alteration.After.FindPart(i) is { IsStandingSource: true }));
        if (!isNew) yield return new(WorkActType.PowerUp, newPosts[0].Source.Part.Id, 0) { Said = "battery-in" };
        // Cables that the list itself lands have acts of their own.
        foreach (var post in newPosts.Where(p => !CablesOn(p.End, alteration).IsEmpty).OrderBy(p => p.IsGround ? 1 : 0))
            yield return new(WorkActType.CableOn, post.Source.Part.Id, 0) { Said = post.IsGround ? "ground" : "hot", At = post.End };
        if (hasFuses) yield return new(WorkActType.PowerUp, "", 0) { Said = "fuses-in" };
        foreach (var post in newPosts.Where(p => p.IsGround)) yield return new(WorkActType.PowerUp, post.Source.Part.Id, 0) { Said = "lamp-out", At = post.End };
        if (alteration.After.Parts.Any(p => p.Kind.Elements.Any(p.IsStarter))) yield return new(WorkActType.PowerUp, "", 0) { Said = "crank" };
        if (alteration.After.Sources.Any(s => s.Element.IsMachine)) yield return new(WorkActType.PowerUp, "", 0) { Said = "charge" };
        foreach (string id in minding) yield return new(WorkActType.PlugIn, id, 0);
        if (alteration.Before.System.ToString() != alteration.After.System.ToString())
        {
            yield return new(WorkActType.Close, "", 0) { Said = "label" };
            yield return new(WorkActType.Close, "", 0) { Said = "tidy" };
        }
        yield return new(WorkActType.Close, "", 0) { Said = "red" };
    }

    // Electronics that nobody touches, where volts or polarity become others: what is inside may not stand the first trial.
    private static IEnumerable<string> MindingParts(Alteration alteration) =>
        alteration.Before.System.ToString() == alteration.After.System.ToString() ? [] : alteration.After.Parts
            .Where(p => p.Kind.Polarity is "destroyed" or "test" && p.Kind.Elements.Any(e => e.Type == ElementType.Electronics) && alteration.Before.FindPart(p.Id) is not null
                && alteration.StateOf(p.Id) is PartState.Left or PartState.Reversed or PartState.Remounted).Select(p => p.Id);

    /// <summary>The wires that go back on a post and that no change of the list puts there; ids.</summary>
    public static ImmutableArray<string> CablesOn(End post, Alteration alteration) =>
    [
        .. alteration.After.ConductorsAt(post).Select(c => c.Id).Where(id => !alteration.Changes.SelectMany(c => c.Acts).Any(a => a switch
        {
            Run or Renew => a.Items.Contains(id),
            Move move => a.Items.Contains(id) && (move.IsRenewed || move.Ends.Any(e => e.To == post)),
            Cut cut => (cut.Items[0] == id && cut.First == post) || (cut.Items[1] == id && cut.Second == post),
            _ => false,
        })),
    ];

    private static string Text(IEnumerable<BatteryPost> posts, Circuit circuit) => circuit.System + string.Join(',', posts.Select(p => $"{p.Source.Part.Id}{p.IsGround}{p.IsPlus}"));
}
