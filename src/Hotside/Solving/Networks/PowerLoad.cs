namespace Hotside.Solving.Networks;

/// <summary>
/// A load with a converter in it: it draws the same power at any voltage, so its current falls where its volts rise. Below its lock-out it draws nothing.
/// </summary>
/// <param name="In">The node of its first end.</param>
/// <param name="Out">The node of its second end.</param>
/// <param name="Watts">The power, above 0.</param>
/// <param name="LockOut">The volts below which it is off.</param>
/// <param name="IsOneWay">Whether it works only with its first end above its second.</param>
internal sealed record PowerLoad(int In, int Out, double Watts, double LockOut, bool IsOneWay) : Injection(In, Out)
{
    /// <summary>The part of its rated volts below which such a load is off where nobody says (own choice, no source).</summary>
    public const double UsualLockOut = 0.6;

    /// <summary>The current that it draws at a voltage, in amperes; 0 below its lock-out.</summary>
    public double At(double volts) => Math.Abs(volts) < LockOut || (IsOneWay && volts < 0) ? 0 : Watts / volts;
}
