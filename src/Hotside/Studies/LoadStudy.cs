using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Studies;

/// <summary>What was found of one load: one consuming element of one part.</summary>
/// <param name="Part">The part.</param>
/// <param name="Element">The consuming element.</param>
/// <param name="Side">On which side it is switched.</param>
/// <param name="Control">What feeds it, through all relays, from all released.</param>
public sealed record LoadStudy(Part Part, Element Element, SwitchedSide Side, Control Control)
{
    /// <summary>The part's id, with the element where the part has several loads: <c>H1</c>, <c>E3.tail</c>.</summary>
    public string Name => NameOf(Part, Element);

    /// <summary>The relay whose contact lies in its ways, nearest to the load first, then the relay that switches that one's coil, and so on; ids.</summary>
    public ImmutableArray<string> Chain { get; init; } = [];

    /// <summary>The parts whose contacts the load's own current passes and which are not relays' contacts: what carries its current; ids.</summary>
    public ImmutableArray<string> SwitchedBy { get; init; } = [];

    /// <summary>
    /// What parts the battery from all (kinds of class Q) and so this load, too, where another switch is in its way: <see cref="Side"/> is told with them on. One in the
    /// battery's lead to the return is none of <see cref="SwitchedBy"/>; ids.
    /// </summary>
    public ImmutableArray<string> DisconnectedBy { get; init; } = [];

    /// <summary>For a fed load the side with <see cref="DisconnectedBy"/> counted like any other switch; else <see langword="null"/>.</summary>
    public SwitchedSide? SideWithDisconnects { get; init; }

    /// <summary>What of <see cref="SwitchedBy"/> makes the side.</summary>
    internal ImmutableArray<string> OwnSwitches => SwitchedBy.RemoveAll(DisconnectedBy.Contains);

    /// <summary>For a load in series, through what it is fed, in the order of the file: ids, with the element where the part has several loads (<c>M1</c>, <c>E3.stop</c>).</summary>
    public ImmutableArray<string> InSeriesWith { get; init; } = [];

    /// <summary>For a load in series, through what it is fed when: <see cref="InSeriesWith"/> by combinations.</summary>
    public ImmutableArray<LoadString> Strings { get; init; } = [];

    /// <summary>The strings that it is meant to be fed through: not those that a running machine drives backwards through it, where a battery feeds it otherwise.</summary>
    internal ImmutableArray<LoadString> MeantStrings => Strings.Any(s => !s.IsBackFed) ? [.. Strings.Where(s => !s.IsBackFed)] : Strings;

    /// <summary>For a load in series, the side on which its string is switched, where that could be worked out; else <see langword="null"/>.</summary>
    public SwitchedSide? StringSide { get; init; }

    /// <summary>The relay that keeps the load fed once it has pulled in, and what releases it; else <see langword="null"/>.</summary>
    public Hold? Holds { get; init; }

    /// <summary>The relay position at whose coming the load goes out again, for one that is fed only while a relay moves; else <see langword="null"/>.</summary>
    public SetPosition? Until { get; init; }

    /// <summary>What shorts it out while its ways stand; ids.</summary>
    public ImmutableArray<string> ShortedBy { get; init; } = [];

    /// <summary>What turns its current round; ids.</summary>
    public ImmutableArray<string> ReversedBy { get; init; } = [];

    /// <summary>When both its ends are one point, for a motor that is braked so; <see langword="null"/> when never, and for all other loads.</summary>
    public Control? Braked { get; init; }

    /// <summary>The machines that also feed it while they run, where the verdict holds without them; ids.</summary>
    public ImmutableArray<string> AlsoFedBy { get; init; } = [];

    /// <summary>When current passes it against its verdict, through other loads; <see langword="null"/> when never.</summary>
    public Control? Sneaks { get; init; }

    /// <summary>Whether it is fed only while a relay moves.</summary>
    public bool IsMomentary => Until is not null;

    /// <summary>Whether relays race for it.</summary>
    public bool IsInRace { get; init; }

    /// <summary>
    /// Whether states may be missing, or the verdict be another: a search for paths was given up, a relay that feeds it was looked at in some positions only, or the whole
    /// was told from what is joined for good. A finding says which.
    /// </summary>
    public bool IsApproximate { get; init; }

    /// <summary>Whether a dead load would be on if its leads were swapped.</summary>
    internal bool IsTurnedRound { get; init; }

    /// <summary>Why a dead load is dead, in a few words such as <c>polarity</c>; else <see langword="null"/>.</summary>
    public string? DeadBecause { get; init; }

    /// <summary>For a load that is fed from elsewhere only, the terminals of what lies elsewhere through which it may be fed, such as <c>A1.58</c>.</summary>
    public ImmutableArray<End> FedFrom { get; init; } = [];

    /// <summary>Whether nothing in the file ever feeds it.</summary>
    internal bool IsNeverFed => Side is SwitchedSide.Dead or SwitchedSide.Elsewhere;

    /// <summary>A way to the feed and one to the return for each of the listed combinations, different ones once; empty when it is never fed.</summary>
    public ImmutableArray<LoadPath> Paths { get; init; } = [];

    /// <summary>The name of a load.</summary>
    internal static string NameOf(Part part, Element element) =>
        part.Kind.Elements.Count(e => e is { IsConsumer: true, IsInternal: false }) == 1 && !element.IsInternal ? part.Id : part.Id + "." + element.Name;
}

/// <summary>A way from the feed to the load and one from the load to the return.</summary>
/// <param name="Hot">The ids of the conductors from the feed to the load, in order.</param>
/// <param name="Ground">The ids of the conductors from the load to the return, in order.</param>
public sealed record LoadPath(ImmutableArray<string> Hot, ImmutableArray<string> Ground)
{
    /// <summary>The ids of the parts and conductors passed from the source to the load, both among them, in order.</summary>
    public ImmutableArray<string> HotWay { get; init; } = [];

    /// <summary>The ids of the parts and conductors passed from the load to the return, the load among them, in order; the last may be <c>chassis</c>.</summary>
    public ImmutableArray<string> GroundWay { get; init; } = [];

    /// <summary>The parts whose fuse or breaker the current passes before the load, from the source on: a breaker that lies before another contact of a switch is none of them.</summary>
    internal ImmutableArray<string> Guards { get; init; } = [];

    /// <summary>The load's end on the hot side; a node within the part where it is no terminal.</summary>
    public End FeedEnd { get; init; }

    /// <summary>The load's end on the side of the return; a node within the part where it is no terminal.</summary>
    public End ReturnEnd { get; init; }
}

/// <summary>Through what a load in series is fed in some combinations.</summary>
/// <param name="With">The other loads, in the order of the file.</param>
/// <param name="When">The combinations.</param>
public sealed record LoadString(ImmutableArray<string> With, Control When)
{
    /// <summary>Whether nothing but machines that run feeds it.</summary>
    internal bool IsBackFed { get; init; }

    /// <summary>The ways of the current in these combinations.</summary>
    internal ImmutableArray<LoadPath> Paths { get; init; } = [];
}

/// <summary>A relay that keeps itself.</summary>
/// <param name="Relay">The relay's id.</param>
/// <param name="Element">The contact that keeps it, or the actuator that stays.</param>
/// <param name="While">What must stand for it to hold.</param>
/// <param name="Released">What lets it go, apart from losing the feed.</param>
public sealed record Hold(string Relay, string Element, Control While, Control Released);
