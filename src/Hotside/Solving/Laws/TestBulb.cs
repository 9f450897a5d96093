using Hotside.Circuits;

namespace Hotside.Solving.Laws;

/// <summary>The bulb that a test lamp has, and that stands in the battery's lead at first power: a turn lamp's, which every shop has at hand (common practice, no source).</summary>
internal static class TestBulb
{
    /// <summary>What it draws at its rated volts, in watts.</summary>
    public const double Watts = 21;

    /// <summary>The same in words.</summary>
    public static string Text => Numbers.Plain(Watts, 0) + " W";
}
