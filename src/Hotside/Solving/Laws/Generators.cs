namespace Hotside.Solving.Laws;

/// <summary>What a generator with a commutator gives at a speed: nothing below the one at which its cut-out closes, its rating from twice that on, in between in proportion.</summary>
internal static class Generators
{
    /// <summary>How much faster it turns than its engine (own choice within common practice, no source).</summary>
    public const double UsualRatio = 1.5;

    // Turns of the generator a minute: own choice within common practice, no source. At an idle of 700 the cut-out is open.
    private const double CutIn = 1200, Full = 2400;

    /// <summary>The part of its rating that it gives at a speed.</summary>
    public static double ShareAt(double speed) => Math.Clamp((speed - CutIn) / (Full - CutIn), 0, 1);
}
