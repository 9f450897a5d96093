using System.Collections.Immutable;
using Hotside.Symbols;

namespace Hotside.Layouts.Passes;

/// <summary>A place in a row that keeps its left-to-right order: a stand, or the passage of a tap's conductor through the row.</summary>
/// <param name="Stand">The stand, or −1 for a passage.</param>
/// <param name="Tap">The tap whose conductor passes, or −1 for a stand.</param>
internal sealed record Seat(int Id, int Row, SeenIn Seen, int Stand, int Tap)
{
    public bool IsStand => Stand >= 0;
}

/// <summary>An end of a piece: where it meets a seat of the row above or below, <paramref name="Offset"/> from the seat's left.</summary>
/// <param name="Implied">A rail end that has no seat of its own: it stands in another end's column.</param>
internal sealed record End(int Id, int Seat, int Offset, SeenIn Seen, bool Implied);

/// <summary>What a net has in one channel: ends at the row above, ends at the row below, and a horizontal between them.</summary>
internal sealed record Piece(
    int Id, int Channel, Net Net, SeenIn Seen, bool IsTrunk, bool IsRail, ImmutableArray<End> Tops, ImmutableArray<End> Bottoms)
{
    public IEnumerable<End> Ends => Tops.Concat(Bottoms);

    /// <summary>The views in which both must keep clear of each other. Two ways to one trunk would meet in four arms where they crossed.</summary>
    public SeenIn Strange(Piece other) => (Net.Id == other.Net.Id ? IsTrunk || other.IsTrunk ? 0 : SeenIn.Both : Net.Strange(other.Net)) & Seen & other.Seen;

    /// <summary>The one top and the one bottom of a piece that merely leads on; null for any other.</summary>
    public (End Top, End Bottom)? Through { get; } = Tops.Count(e => !e.Implied) == 1 && Bottoms.Count(e => !e.Implied) == 1 ? (Tops.First(e => !e.Implied), Bottoms.First(e => !e.Implied)) : null;
}

/// <summary>A step of a conductor from its tap towards the trunk: along a piece to the column of a passage.</summary>
internal sealed record Step(int Piece, int Seat);

/// <summary>
/// The way of a tap to its trunk: from a seat, by steps. A rail end without a seat of its own has no steps and stands at
/// <paramref name="Seat"/>, the seat of the end whose column it shares.
/// </summary>
internal sealed record Way(int Tap, int Seat, int Offset, ImmutableArray<Step> Steps);

/// <summary>A block as rows of seats with pieces between them: what order, columns and channels are solved on.</summary>
internal sealed record Lattice(
    int Rows, ImmutableArray<Seat> Seats, ImmutableArray<Piece> Pieces, ImmutableArray<Way> Ways, ImmutableArray<int> TrunkOf, int Ends);
