using System.Collections.Immutable;
using Hotside.Symbols;

namespace Hotside.Layouts.Passes;

/// <summary>A point at which conductors of a net end: a terminal, or one end on a rail.</summary>
internal sealed record Tap(int Id, int Net, EndKind Kind, int Terminal, SeenIn Seen, ImmutableArray<TapEnd> Ends)
{
    public bool OnTerminal => Terminal >= 0;
}

/// <summary>The end of a line that meets a tap.</summary>
internal readonly record struct TapEnd(int Line, bool IsFrom);

/// <summary>Conductors drawn as one tree: a trunk in one channel and a drop to each tap. Joints are places on the trunk.</summary>
/// <param name="Electric">What the net is joined with in the before and in the after view; −1 where the view does not show it.</param>
internal sealed record Net(
    int Id, SeenIn Seen, ImmutableArray<int> Lines, ImmutableArray<int> Taps, ImmutableArray<int> Joints, (int Before, int After) Electric)
{
    /// <summary>A conductor that runs beside the net it belongs to, so that its ends can be told.</summary>
    public bool RunsApart { get; init; }

    /// <summary>The circuits that have it, where both are shown over each other; none where each view shows its own.</summary>
    public SeenIn Circuits { get; init; }

    /// <summary>What the net is joined with in a view; below 0 where the circuit of that view has it not.</summary>
    public int ElectricIn(SeenIn view) => view == SeenIn.Before ? Electric.Before : Electric.After;

    /// <summary>The views that show both nets and in which they are not joined: there they must keep clear of each other.</summary>
    public SeenIn Strange(Net other)
    {
        bool overlaid = Circuits != 0;
        SeenIn views = overlaid ? Circuits & other.Circuits : Seen & other.Seen;
        if (overlaid && views == 0) return SeenIn.Both;
        if (RunsApart || other.RunsApart) return overlaid ? SeenIn.Both : views;
        if (Electric.Before == other.Electric.Before) views &= ~SeenIn.Before;
        if (Electric.After == other.Electric.After) views &= ~SeenIn.After;
        return overlaid && views != 0 ? SeenIn.Both : views;
    }
}

/// <summary>The nets of a union, whose stands now include the joints that could not stay points on one trunk.</summary>
internal sealed record Netlist(
    ImmutableArray<Stand> Stands, ImmutableArray<Terminal> Terminals, ImmutableArray<Line> Lines, ImmutableArray<LayoutBox> Joints,
    ImmutableArray<Net> Nets, ImmutableArray<Tap> Taps)
{
    /// <summary>The lines that end at a chassis sign of their own.</summary>
    public ImmutableHashSet<int> Signs { get; init; } = [];

    /// <summary>What the ends at a tap are called: by their conductors, which keep their names when others come and go.</summary>
    public IEnumerable<string> NamesOf(Tap tap) => tap.Ends.Select(e => Lines[e.Line].Name + (e.IsFrom ? "<" : ">"));

    /// <summary>The stand of a tap, or −1 on a rail.</summary>
    public int StandOf(Tap tap) => tap.OnTerminal ? Terminals[tap.Terminal].Stand : -1;

    /// <summary>
    /// The same with everything over each other; nets remember which circuits have them. What is there no more stays in one view, in which all else is, too: it keeps clear of everything, and
    /// what it crosses counts half.
    /// </summary>
    public Netlist Overlaid()
    {
        var gone = Nets.Where(n => n.Seen == SeenIn.Before).SelectMany(n => n.Lines).ToHashSet();
        return this with
        {
            Stands = [.. Stands.Select(s => s with { Seen = SeenIn.Both, Boxes = [.. s.Boxes.Select(b => b with { Box = b.Box.AllSeen() })] })],
            Terminals = [.. Terminals.Select(t => t with { Seen = SeenIn.Both })],
            Lines = [.. Lines.Select(l => l with { Seen = Shown(gone.Contains(l.Id)) })],
            Joints = [.. Joints.Select(j => j.AllSeen())],
            Nets = [.. Nets.Select(n => n with { Seen = Shown(n.Seen == SeenIn.Before), Circuits = n.Seen })],
            Taps = [.. Taps.Select(t => t with { Seen = Shown(Nets[t.Net].Seen == SeenIn.Before) })],
        };

        static SeenIn Shown(bool isGone) => isGone ? SeenIn.Before : SeenIn.Both;
    }

    public bool HasRail(Net net) => net.Joints.Any(j => Joints[j].IsRail);
}
