namespace Hotside.Solving.Networks;

/// <summary>
/// A regulator or limiter in line: passes current from its input to its output until the output has its set-point against a third node. It is no two-terminal element with
/// a law that never falls, so its current is sought apart.
/// </summary>
/// <param name="In">The node of the input.</param>
/// <param name="Out">The node of the output.</param>
/// <param name="Against">The node that the output is held against.</param>
/// <param name="Drop">The least volts from input to output.</param>
/// <param name="DropOhms">The resistance beyond that drop.</param>
/// <param name="SetPoint">The volts held; infinite for one that only drops.</param>
/// <param name="OutputOhms">By how much they fall for each ampere.</param>
/// <param name="Most">The greatest current in amperes.</param>
/// <param name="WorksEitherWay">Whether it works with an input below its third node, too, as a heated strip does.</param>
internal sealed record SeriesRegulator(int In, int Out, int Against, double Drop, double DropOhms, double SetPoint, double OutputOhms, double Most, bool WorksEitherWay)
    : Injection(In, Out)
{
    /// <summary>Whether it is made for an input below its third node: current runs from its output to its input.</summary>
    public bool IsTurned { get; init; }

    /// <summary>By how many volts a current is too small (above 0) or too great (below 0), and how that changes with the current.</summary>
    /// <param name="input">Volts of the input against the third node, turned to be above 0.</param>
    /// <param name="output">Volts of the output against the third node, turned alike.</param>
    /// <param name="amperes">The current, 0 or more.</param>
    /// <param name="inputSlope">By how much the input changes for each ampere.</param>
    /// <param name="outputSlope">By how much the output changes for each ampere.</param>
    public (double Volts, double Slope) Short(double input, double output, double amperes, double inputSlope, double outputSlope)
    {
        (double Volts, double Slope) least = (input - output - Drop - (DropOhms * amperes), inputSlope - outputSlope - DropOhms);
        if (!double.IsInfinity(SetPoint))
        {
            double held = SetPoint - output - (OutputOhms * amperes);
            if (held < least.Volts) least = (held, -outputSlope - OutputOhms);
        }
        if (Most - amperes < least.Volts) least = (Most - amperes, -1);
        return least.Volts < -amperes ? (-amperes, -1) : least;
    }
}
