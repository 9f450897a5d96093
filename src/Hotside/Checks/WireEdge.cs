using Hotside.Circuits;

namespace Hotside.Checks;

/// <summary>A conductor or an element of a part, between two nodes.</summary>
/// <param name="A">The node of its first end.</param>
/// <param name="B">The node of its second end.</param>
/// <param name="Conductor">The conductor; <see langword="null"/> for an element.</param>
/// <param name="Part">The element's part.</param>
/// <param name="Element">The element; <see langword="null"/> for a conductor.</param>
internal sealed record WireEdge(int A, int B, Conductor? Conductor, Part? Part, Element? Element)
{
    /// <summary>The id of the conductor or the part.</summary>
    public string Id => Conductor?.Id ?? Part!.Id;

    /// <summary>Whether it opens by itself when too much flows.</summary>
    public bool IsProtection => Element?.Type is ElementType.Fuse or ElementType.Breaker;

    /// <summary>Whether current only passes here: a conductor, or an element in line.</summary>
    public bool IsInLine => Conductor is not null || Element!.IsInLine;

    /// <summary>Whether nothing limits the current here: a conductor, a contact, a link, a fuse.</summary>
    public bool IsLink => Conductor is not null || Element!.IsLink;

    /// <summary>The conductor's length in metres; 0 where it is not known, and within parts.</summary>
    public double Metres => Conductor?.Wire.LengthInMetres ?? 0;

    /// <summary>The node at its other end.</summary>
    public int Other(int node) => node == A ? B : A;
}
