using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Checks;

/// <summary>A conductor or an element of a part, between two nodes. Each is one object, compared as such: there are many, and they are looked up often.</summary>
/// <param name="a">The node of its first end.</param>
/// <param name="b">The node of its second end.</param>
/// <param name="conductor">The conductor; <see langword="null"/> for an element.</param>
/// <param name="part">The element's part.</param>
/// <param name="element">The element; <see langword="null"/> for a conductor.</param>
internal sealed class WireEdge(int a, int b, Conductor? conductor, Part? part, Element? element)
{
    public int A => a;

    public int B => b;

    public Conductor? Conductor => conductor;

    public Part? Part => part;

    public Element? Element => element;

    /// <summary>When it conducts: each variable of the circuit, by its index, is in one of its positions; empty: always.</summary>
    public ImmutableArray<(int Variable, ImmutableArray<string> Positions)> When { get; init; } = [];

    /// <summary>The id of the conductor or the part.</summary>
    public string Id => conductor?.Id ?? part!.Id;

    /// <summary>Whether it opens by itself when too much flows.</summary>
    public bool IsProtection => element?.Type is ElementType.Fuse or ElementType.Breaker;

    /// <summary>Whether current only passes here: a conductor, or an element in line.</summary>
    public bool IsInLine => conductor is not null || element!.IsInLine;

    /// <summary>Whether nothing limits the current here: a conductor, a contact, a link, a fuse.</summary>
    public bool IsLink => conductor is not null || element!.IsLink;

    /// <summary>The conductor's length in metres; 0 where it is not known, and within parts.</summary>
    public double Metres => conductor?.Wire.LengthInMetres ?? 0;

    /// <summary>The node at its other end.</summary>
    public int Other(int node) => node == a ? b : a;
}
