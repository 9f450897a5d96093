using System.Collections.Immutable;

namespace Hotside.Sizing.Tables;

/// <summary>The ratings in which fuses are made, in amperes, smallest first.</summary>
internal static class FuseLadder
{
    /// <summary>All of them.</summary>
    public static ImmutableArray<double> Ratings { get; } = [.. DataTable.Named("fuse-ratings").Rows.Select(r => DataTable.FigureOf(r[0])!.Value)];

    /// <summary>What part of its rating a fuse carries for good (NFPA 70, 210.20(A): a device of at least 125 % of the continuous load; from memory).</summary>
    public const double ContinuousShare = 0.8;

    /// <summary>Up to how much of a wire's ampacity a fuse may be rated below 50 V (33 CFR 183.455(c)); above 1 is a warning, since AC 43.13-1B, 11-47 wants no more than 1.</summary>
    public const double MostOfAmpacity = 1.5;

    /// <summary>How many gauge numbers a fusible link is thinner than the wire it protects (common practice, no source; several trade texts agree).</summary>
    public const int LinkSteps = 4;
}
