using System.Collections.Immutable;

namespace Hotside.Diagnoses;

/// <summary>A way in which a sort of piece fails.</summary>
/// <param name="Name">Its name in the list.</param>
/// <param name="On">Of what: a word of the list, such as <c>ground</c>.</param>
/// <param name="Weight">How often, compared with others.</param>
/// <param name="Change">What becomes of the piece.</param>
/// <param name="Sizes">The cells of its size: ohms, or by what a current is more or less; one cell of 1 where it has no size.</param>
/// <param name="Says">What is said of it; <c>{0}</c> stands for the piece.</param>
internal sealed record FaultMode(string Name, string On, double Weight, FaultChange Change, ImmutableArray<FaultSize> Sizes, string Says)
{
    /// <summary>How it is mended; <c>{0}</c> stands for the piece.</summary>
    public required string Repair { get; init; }
}

/// <summary>A cell of a fault's size: from least to most, each ratio as likely.</summary>
internal readonly record struct FaultSize(double Least, double Most)
{
    /// <summary>The middle, by ratios.</summary>
    public double Middle => Math.Sqrt(Least * Most);

    /// <summary>A size within the cell.</summary>
    /// <param name="share">From 0 to 1.</param>
    public double At(double share) => Least * Math.Pow(Most / Least, share);
}

/// <summary>What a fault makes of a piece.</summary>
internal enum FaultChange
{
    /// <summary>It does not conduct.</summary>
    Out,

    /// <summary>A resistance lies in line with it.</summary>
    Series,

    /// <summary>It draws so many times its current.</summary>
    Times,

    /// <summary>Its contact is closed in every position.</summary>
    Closed,

    /// <summary>It touches the return.</summary>
    Bridge,

    /// <summary>A source without volts.</summary>
    Dead,

    /// <summary>A source with fewer volts and more resistance.</summary>
    Weak,

    /// <summary>A source the other way round.</summary>
    Reversed,

    /// <summary>A joint lies past it.</summary>
    Bypass,

    /// <summary>Its ends are exchanged.</summary>
    Turned,

    /// <summary>Two wires on one part are exchanged.</summary>
    Crossed,

    /// <summary>Nothing is wrong.</summary>
    None,

    /// <summary>Whatever the list does not hold.</summary>
    Unknown,
}
