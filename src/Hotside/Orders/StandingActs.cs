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
        if (!newPosts.IsEmpty && (posts.IsEmpty || Text(posts, alteration.Before) != Text(newPosts, alteration.After)))
            yield return new(WorkActType.MarkPolarity, newPosts[0].Source.Part.Id, 0);
        bool hasFuses = alteration.After.Parts.Any(p => TradeWords.Of(p).Contains("fuse"));
        if (hasFuses) yield return new(WorkActType.DeadTest, "", 0) { Said = "fuses-out" };
        yield return new(WorkActType.DeadTest, "", 0) { Said = "dead-test" };
        if (newPosts.IsEmpty) yield break;
        bool isNew = alteration.Changes.SelectMany(c => c.Acts).Any(a => a is Fit or Replace or Reverse && a.Items.Any(i => alteration.After.FindPart(i) is { IsStandingSource: true }));
        if (!isNew) yield return new(WorkActType.PowerUp, newPosts[0].Source.Part.Id, 0) { Said = "battery-in" };
        foreach (var post in newPosts.OrderBy(p => p.IsGround ? 1 : 0))
            yield return new(WorkActType.CableOn, post.Source.Part.Id, 0) { Said = post.IsGround ? "ground" : "hot", At = post.End };
        if (hasFuses) yield return new(WorkActType.PowerUp, "", 0) { Said = "fuses-in" };
        yield return new(WorkActType.PowerUp, newPosts[0].Source.Part.Id, 0) { Said = "lamp-out" };
        if (alteration.After.Parts.Any(p => p.Kind.Elements.Any(p.IsStarter))) yield return new(WorkActType.PowerUp, "", 0) { Said = "crank" };
        if (alteration.After.Sources.Any(s => s.Element.When is not null)) yield return new(WorkActType.PowerUp, "", 0) { Said = "charge" };
        if (alteration.Before.System.ToString() != alteration.After.System.ToString())
        {
            yield return new(WorkActType.Close, "", 0) { Said = "label" };
            yield return new(WorkActType.Close, "", 0) { Said = "tidy" };
        }
        yield return new(WorkActType.Close, "", 0) { Said = "red" };
    }

    private static string Text(IEnumerable<BatteryPost> posts, Circuit circuit) => circuit.System + string.Join(',', posts.Select(p => $"{p.Source.Part.Id}{p.IsGround}{p.IsPlus}"));
}
