using Hotside.Circuits;
using Hotside.Solving.Laws;
using Hotside.Wording;

namespace Hotside.Diagnoses;

/// <summary>Readings in words: where the leads go, what is expected, how it is entered.</summary>
internal sealed class ReadingText(Meter meter, TestList tests)
{
    private readonly Circuit circuit = meter.Dictionary.Bench.Circuit;

    /// <summary>Where the black lead goes that is on the return.</summary>
    public string Return => circuit.System.Return is { } node ? circuit.TextOf(node) : "chassis";

    /// <summary>Where the red lead goes, or what is looked at.</summary>
    public string Red(Test test) => test switch
    {
        VoltsTest v => Point(v.Red),
        OhmsTest o => Point(o.Node),
        LampTest l => Point(l.Node),
        LookTest l => meter.Watched[l.Watched].Name,
        FuseTest f => meter.Dictionary.FuseName(f.Fuse),
        _ => "",
    };

    /// <summary>Where the black lead goes; empty where something is looked at.</summary>
    public string Black(Test test) => test switch
    {
        VoltsTest v => Point(v.Black),
        OhmsTest or LampTest => Return,
        _ => "",
    };

    /// <summary>What is read.</summary>
    public string Asks(Test test) => test switch
    {
        VoltsTest => "volts",
        OhmsTest { Pulled: not -1 } o => $"ohms, battery out, {Pulled(o)}",
        OhmsTest => "ohms, battery out",
        LookTest l when meter.Watched[l.Watched].Variable >= 0 => "off or on (does it click)",
        LookTest => "off, dim, right or strong",
        LampTest => $"a {TestBulb.Text} test lamp dark, dim or bright",
        _ => "blown or whole",
    };

    /// <summary>Which fuses are pulled for a reading in ohms: <c>F2 pulled</c>; empty for none.</summary>
    public string Pulled(OhmsTest test) => test.Pulled == OhmsTest.AllFuses ? "all fuses pulled" : test.Pulled >= 0 ? meter.Dictionary.FuseName(test.Pulled) + " pulled" : "";

    /// <summary>As it is entered, the value left open.</summary>
    public string Entry(Test test)
    {
        string at = test.Setting == 0 ? "" : $" @ {meter.Dictionary.Settings[test.Setting].Name}";
        return test switch
        {
            VoltsTest { Black: >= 0 } => $"{Red(test)} to {Black(test)} = ? V{at}",
            VoltsTest => $"{Red(test)} = ? V{at}",
            OhmsTest { Pulled: not -1 } o => $"{Red(test)} = ? ohm, {Pulled(o)}{at}",
            OhmsTest => $"{Red(test)} = ? ohm{at}",
            LampTest => $"{Red(test)} = lamp ?{at}",
            _ => $"{Red(test)} = ?{at}",
        };
    }

    /// <summary>What a fault of a size would show.</summary>
    public string Expected(Test test, int cell)
    {
        switch (test)
        {
            case LookTest look:
                return State(Likeliest(look, cell), meter.Watched[look.Watched].Variable >= 0);
            case FuseTest fuse:
                return meter.IsBlown(fuse.Fuse, cell) ? "blown" : "whole";
            case VoltsTest volts when Floats(volts, cell):
                return "drifts near 0 V";
            case OhmsTest:
                return Ohms(Math.Pow(10, meter.Expect(test, cell).Mean));
            default:
                return QuantityWords.MeterVolts(meter.Expect(test, cell).Mean);
        }
    }

    /// <summary>The state in which something is most likely seen with a fault.</summary>
    public LookState Likeliest(LookTest look, int cell)
    {
        Span<double> states = stackalloc double[Looks.States];
        Looks.Of(meter.Dictionary, look.Setting, cell, meter.Watched[look.Watched], states);
        int likeliest = 0;
        for (int i = 1; i < states.Length; i++)
            if (states[i] > states[likeliest]) likeliest = i;
        return (LookState)likeliest;
    }

    /// <summary>Ohms as a meter shows them.</summary>
    public static string Ohms(double ohms) => ohms >= 0.5 * ColdOhms.Open ? "open" : ohms <= ColdOhms.Least * 1.05 ? "near 0 Ω" : ohms >= 1000 ? Numbers.Brief(ohms / 1000) + " kΩ" : Numbers.Brief(ohms) + " Ω";

    /// <summary>A state in a word.</summary>
    public static string State(LookState state, bool isRelay) => state switch
    {
        LookState.Off => "off",
        LookState.Dim => "dim",
        LookState.Right => isRelay ? "on" : "right",
        _ => "strong",
    };

    /// <summary>How a test lamp looks, in a word.</summary>
    public static string Lamp(LookState state) => state switch { LookState.Off => "lamp dark", LookState.Dim => "lamp dim", _ => "lamp bright" };

    /// <summary>Whether a reading is on a floating point with a fault.</summary>
    public bool Floats(VoltsTest test, int cell) =>
        meter.Dictionary.At(test.Setting, cell) is var point && ((test.Red >= 0 && point.Floats[test.Red]) || (test.Black >= 0 && point.Floats[test.Black]));

    private string Point(int node) => node < 0 ? Return : tests.PointOf(node)?.TextIn(circuit) ?? circuit.TextOf(meter.Dictionary.Bench.Model.Nodes.Ends.First(e => meter.Dictionary.Bench.Model.Nodes.NodeOf(e) == node));
}
