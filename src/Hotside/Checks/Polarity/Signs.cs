using Hotside.Circuits;
using Hotside.Solving;

namespace Hotside.Checks.Polarity;

/// <summary>Which way round volts lie across an element, or current passes it.</summary>
internal static class Signs
{
    private const double Least = 0.05;

    /// <summary>The sign of the greatest volts that an element gets; 0 where it gets none.</summary>
    public static int OfVolts(CheckedCircuit circuit, string part, string element) => Of(circuit, part, element, e => e.Volts);

    /// <summary>The sign of an element's current while the battery alone gives; 0 where none passes.</summary>
    public static int OfDischarge(CheckedCircuit circuit, string part, string element) => Of(circuit, part, element, e => e.Amperes);

    private static int Of(CheckedCircuit circuit, string part, string element, Func<ElementPoint, double> figure) =>
        circuit.Points.Greatest(part, element, figure, p => p is { IsCranking: false, IsRunning: false }) is var greatest && Math.Abs(greatest) < Least ? 0 : Math.Sign(greatest);

    /// <summary>Whether a terminal is stamped plus.</summary>
    public static bool IsPlus(PartKind kind, string terminal) => kind.TerminalNamed(terminal) is "pos" or "+";
}
