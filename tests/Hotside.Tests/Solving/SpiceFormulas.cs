namespace Hotside.Tests.Solving;

/// <summary>Laws of elements as formulas for ngspice, written down anew from physics and from what the laws are said to be; nothing here is taken from the solver.</summary>
internal static class SpiceFormulas
{
    // What leaks past whatever blocks or is in its limit.
    private const string Leak = "1e-9";

    /// <summary>A straight line of a slope through a voltage without current, between two limits.</summary>
    public static string Clamp(string u, double siemens, double emf, double least, double most)
    {
        string line = Invariant($"{siemens:R}*({u}-({emf:R}))");
        if (!double.IsInfinity(most)) line = Invariant($"min({most:R},{line})");
        if (!double.IsInfinity(least)) line = Invariant($"max({least:R},{line})");
        return $"{line}+{Leak}*{u}";
    }

    /// <summary>A filament: a twelfth of its hot resistance when cold; hot, its resistance goes with a power of the voltage.</summary>
    public static string Lamp(string u, double volts, double amperes, double exponent) =>
        Invariant($"{u}/max({volts / amperes / 12:R},{volts / amperes:R}*pow({u}*{u}/{volts * volts:R}+1e-12,{(1 - exponent) / 2:R}))");

    /// <summary>A motor with a constant field that drives a fan: amperes go with the square of the speed n, and u = kE·n + R·I·n².</summary>
    public static string Fan(string u, double volts, double amperes, double ohms)
    {
        double counter = volts - (ohms * amperes);
        return Invariant($"4*{amperes:R}*{u}*abs({u})/pow({counter:R}+sqrt({counter * counter:R}+{4 * ohms * amperes:R}*abs({u})),2)+{Leak}*{u}");
    }

    /// <summary>A motor with its field in series that drives a fan: u = R·i + (U0 − R·I0)·(i / I0)².</summary>
    public static string SeriesFan(string u, double volts, double amperes, double ohms)
    {
        double ohmic = ohms * amperes;
        return Invariant($"2*{amperes:R}*{u}/({ohmic:R}+sqrt({ohmic * ohmic:R}+{4 * (volts - ohmic):R}*abs({u})))");
    }

    /// <summary>A load of constant power above its lock-out, and nothing below.</summary>
    public static string ConstantPower(string u, double watts, double lockOut, bool isOneWay) =>
        Invariant($"{watts:R}*({u}>={lockOut:R} ? 1/{u} : {(isOneWay ? "0" : $"({u}<=-{lockOut:R} ? 1/{u} : 0)")})+{Leak}*{u}");

    /// <summary>A regulator in line: the least of what its drop, its set-point and its limit let through, and never backwards.</summary>
    public static string Regulator(string inputToOutput, string outputToGround, double drop, double dropOhms, double setPoint, double outputOhms, double most)
    {
        string least = Invariant($"({inputToOutput}-{drop:R})/{dropOhms:R}");
        if (!double.IsInfinity(setPoint)) least = Invariant($"min({least},({setPoint:R}-{outputToGround})/{outputOhms:R})");
        if (!double.IsInfinity(most)) least = Invariant($"min({least},{most:R})");
        return $"max(0,{least})";
    }

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);
}
