using System.Collections.Immutable;
using Hotside.Symbols;

namespace Hotside.Layouts.Passes;

/// <summary>A point at which conductors of a net end: a terminal, or one end on a rail.</summary>
internal sealed record Tap(int Id, int Net, EndKind Kind, int Terminal, SeenIn Seen)
{
    public bool OnTerminal => Terminal >= 0;
}

/// <summary>Conductors drawn as one tree: a trunk in one channel and a drop to each tap. Joints are places on the trunk.</summary>
/// <param name="Electric">What the net is joined with in the before and in the after view; −1 where the view does not show it.</param>
internal sealed record Net(
    int Id, SeenIn Seen, ImmutableArray<int> Lines, ImmutableArray<int> Taps, ImmutableArray<int> Joints, (int Before, int After) Electric)
{
    /// <summary>The views that show both nets and in which they are not joined: there they must keep clear of each other.</summary>
    public SeenIn Strange(Net other)
    {
        SeenIn views = Seen & other.Seen;
        if (Electric.Before == other.Electric.Before) views &= ~SeenIn.Before;
        if (Electric.After == other.Electric.After) views &= ~SeenIn.After;
        return views;
    }
}

/// <summary>The nets of a union, whose stands now include the joints that could not stay points on one trunk.</summary>
internal sealed record Netlist(
    ImmutableArray<Stand> Stands, ImmutableArray<Terminal> Terminals, ImmutableArray<Line> Lines, ImmutableArray<LayoutBox> Joints,
    ImmutableArray<Net> Nets, ImmutableArray<Tap> Taps)
{
    /// <summary>The stand of a tap, or −1 on a rail.</summary>
    public int StandOf(Tap tap) => tap.OnTerminal ? Terminals[tap.Terminal].Stand : -1;

    public bool HasRail(Net net) => net.Joints.Any(j => Joints[j].IsRail);
}
