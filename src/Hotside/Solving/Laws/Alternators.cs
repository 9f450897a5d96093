using Hotside.Circuits;

namespace Hotside.Solving.Laws;

/// <summary>
/// What an alternator gives at a speed. It is marked with two outputs, at 1500 and at 6000 turns a minute (ISO 8854, from memory); the curve through them, c − d / n, is an own
/// choice: it begins at some speed and flattens as such machines do.
/// </summary>
internal static class Alternators
{
    /// <summary>The output at the lower mark in parts of the upper one, where only that is stated: 30 to 60 % (common practice, no source), to the careful side of the middle.</summary>
    public const double UsualLow = 0.4;

    /// <summary>How much faster it turns than its engine, so that it makes the turns of its lower mark at an idle of 700 (own choice within common practice, no source).</summary>
    public const double UsualRatio = LowSpeed / EngineSpeeds.Idle;

    // Turns a minute.
    private const double LowSpeed = 1500, HighSpeed = 6000;

    // A hot machine gives 10 to 20 % less than at 23 °C (common practice, no source); in between it is taken as in proportion.
    private const double Cold = 20, Hot = 85, HotLoss = 0.15;

    /// <summary>Amperes at a speed, 0 or more.</summary>
    /// <param name="speed">Turns a minute, above 0.</param>
    /// <param name="low">Amperes at 1500 turns.</param>
    /// <param name="high">Amperes at 6000 turns.</param>
    public static double OutputAt(double speed, double low, double high)
    {
        double d = (high - low) / ((1 / LowSpeed) - (1 / HighSpeed)), c = high + (d / HighSpeed);
        return Math.Max(0, c - (d / speed));
    }

    /// <summary>What is left of the output at a temperature of the machine in °C.</summary>
    public static double ShareAt(double celsius) => 1 - (HotLoss * Math.Clamp((celsius - Cold) / (Hot - Cold), 0, 1));
}
