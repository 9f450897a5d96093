using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Orders;

/// <summary>A post of a battery whose cable comes off before the work and goes on after it.</summary>
/// <param name="Source">The battery.</param>
/// <param name="End">The post.</param>
/// <param name="IsGround">Whether it is grounded; else it is hot.</param>
/// <param name="IsPlus">Whether it is the positive one.</param>
internal sealed record BatteryPost(SourcePoles Source, End End, bool IsGround, bool IsPlus);

/// <summary>Finds the posts of a circuit's batteries that lead out to the vehicle, not from one battery to the next.</summary>
internal static class BatteryPosts
{
    public static ImmutableArray<BatteryPost> Of(Circuit circuit)
    {
        Nodes nodes = Nodes.Of(circuit, throughLinks: true), closed = Nodes.WithAllClosed(circuit);
        var standing = circuit.Sources.Where(s => s.Part.IsStandingSource && !s.Element.TakesEitherPolarity).ToArray();
        bool IsBetween(End post, SourcePoles own) => standing.Any(o => o != own && (nodes.AreOne(o.Feed, post) || nodes.AreOne(o.Return, post))) && !nodes.AreOne(post, circuit.System.ReturnNode);
        var posts = ImmutableArray.CreateBuilder<BatteryPost>();
        foreach (var source in standing)
        {
            if (closed.AreOne(source.Return, circuit.System.ReturnNode)) posts.Add(new(source, source.Return, true, !source.PlusIsFeed));
            // Batteries side by side share their posts with each other, and each has a cable all the same.
            if (!IsBetween(source.Feed, source) || standing.All(o => o == source || nodes.AreOne(o.Feed, source.Feed))) posts.Add(new(source, source.Feed, false, source.PlusIsFeed));
        }
        return posts.ToImmutable();
    }
}
