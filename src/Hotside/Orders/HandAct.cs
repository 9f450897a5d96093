using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Orders;

/// <summary>One act of an order before it has its place in it.</summary>
/// <param name="Type">What is done.</param>
/// <param name="Item">The part or wire; empty where the whole vehicle is meant.</param>
/// <param name="Change">The number of the change it belongs to; 0 for what every order has.</param>
internal sealed record HandAct(WorkActType Type, string Item, int Change)
{
    // A frozen set takes longer to make than it is used.
    private static readonly HashSet<string> none = new(StringComparer.Ordinal);

    /// <summary>What stands in the triangle of its change: <c>4</c>, <c>A1</c>; empty for what every order has.</summary>
    public string Label { get; init; } = "";

    /// <summary>Its place among the acts in the order of the changes.</summary>
    public int Index { get; init; }

    /// <summary>For a wire's end, which: 0 or 1, in the order of the circuit that has the wire last.</summary>
    public int Side { get; init; }

    /// <summary>For a wire's end, its terminal: taken off one as named before, put on one as named after.</summary>
    public End At { get; init; } = End.Free;

    /// <summary>For a wire's end, where the other end is in the same circuit.</summary>
    public End Other { get; init; } = End.Free;

    /// <summary>For an end that goes on, the act that took it off or cut it: both are done in one go; −1: none.</summary>
    public int Partner { get; init; } = -1;

    /// <summary>What the act is for, in the words of the rules: <c>take-out</c>, <c>move</c>, <c>renew</c>, <c>run</c>, <c>cut</c>.</summary>
    public string Purpose { get; init; } = "";

    /// <summary>The sentence of work that changes no circuit, or which of several acts that every order has.</summary>
    public string Said { get; init; } = "";

    /// <summary>What the rules may call it.</summary>
    public IReadOnlySet<string> Words { get; init; } = none;

    /// <summary>The parts and, for wires, the part at this end; ids.</summary>
    public ImmutableArray<string> Parts { get; init; } = [];

    /// <summary>The parts at either end of the wire, or the part itself; ids.</summary>
    public ImmutableArray<string> Joined { get; init; } = [];

    /// <summary>The parts that lie between the feed and this end or part; ids.</summary>
    public IReadOnlySet<string> Upstream { get; init; } = none;

    /// <summary>The parts on which this one is bolted or stands; ids.</summary>
    public ImmutableArray<string> Holders { get; init; } = [];

    /// <summary>Where it is done; <see langword="null"/> where nothing says.</summary>
    public string? Place { get; init; }

    /// <summary>The place's number in the order of the file; places that nobody names come last.</summary>
    public int PlaceIndex { get; init; } = int.MaxValue;

    /// <summary>The circuit it belongs to: the id of the fuse, or of what is nearest the feed; empty for the whole vehicle.</summary>
    public string Way { get; init; } = "";

    /// <summary>The circuit's number in the order of the file.</summary>
    public int WayIndex { get; init; }

    /// <summary>The phase of the work.</summary>
    public int Phase { get; init; }

    /// <summary>Whether it changes the circuit.</summary>
    public bool ChangesCircuit => Type is WorkActType.WireOff or WorkActType.Pull or WorkActType.PartOut or WorkActType.Fit or WorkActType.Swap or WorkActType.Turn
        or WorkActType.Remount or WorkActType.Cut or WorkActType.Lay or WorkActType.WireOn;
}
