using Hotside.Circuits;
using Hotside.Diagnoses;
using Hotside.Wording;

namespace Hotside.CheckSheets;

/// <summary>
/// Within which a reading is right. Volts: three standard deviations of parts within their tolerances, no less than 2 % and two digits. A drop: half as much again as worked
/// out, within what the trade allows (0.1 V a joint or a ground, 0.2 V a switch, 0.5 V anything: common practice, no source). Ohms: 30 % through filaments and motors, which
/// are cold; joined is 0.3 ohm above what wires have, open above 10 kohm.
/// </summary>
internal sealed class Bands(DiagnosisBench bench)
{
    // The least band and the half as much again: own choices; what a drop may be and how cold filaments differ: common practice, no source.
    private const double Sigmas = 3, Share = 0.02, Digits = 0.02, DropTimes = 1.5, LeastDrop = 0.05, JointDrop = 0.1, SwitchDrop = 0.2, MostOfDrop = 0.75;

    private const double Cold = 0.30, LeastOhms = 0.3, Joined = 0.5, OpenOhms = 10_000, Drifting = 0.1;

    /// <summary>The cell in which nothing is wrong.</summary>
    public int SoundCell => bench.Dictionary.SoundCell;

    /// <summary>The least and the most of a reading that is right: volts, or ohms.</summary>
    public (double Least, double Most) Of(Test test)
    {
        switch (test)
        {
            case VoltsTest volts when bench.Text.Floats(volts, SoundCell):
                return (-Drifting * bench.Dictionary.Bench.Volts, Drifting * bench.Dictionary.Bench.Volts);
            case VoltsTest { Black: >= 0 } drop when IsDrop(drop):
                double worked = Math.Abs(bench.Meter.Sound(drop).Mean);
                // What wires drop by their length may be more than a good joint; then the band begins there.
                double most = Math.Max(Math.Min(Math.Max(DropTimes * worked, LeastDrop), Limit(drop)), worked + LeastDrop);
                return bench.Meter.Sound(drop).Mean < 0 ? (-most, LeastDrop) : (-LeastDrop, most);
            case VoltsTest volts:
                var sound = bench.Meter.Battery.Of(volts) ?? bench.Meter.Sound(volts);
                double half = Math.Max(Sigmas * sound.Sigma, (Share * Math.Abs(sound.Mean)) + Digits);
                return (sound.Mean - half, sound.Mean + half);
            default:
                double ohms = SoundOhms(test);
                if (ohms >= OpenOhms) return (OpenOhms, double.PositiveInfinity);
                return ohms <= Joined ? (0, ohms + LeastOhms) : (Math.Max(0, ohms - Math.Max(Cold * ohms, LeastOhms)), ohms + Math.Max(Cold * ohms, LeastOhms));
        }
    }

    /// <summary>Whether a reading is right.</summary>
    public bool Holds(Test test, double value) => Holds(Of(test), value);

    /// <summary>Whether a reading lies within a band.</summary>
    public static bool Holds((double Least, double Most) band, double value) => value >= band.Least && value <= band.Most;

    /// <summary>The ohms of a sound circuit.</summary>
    public double SoundOhms(Test test) => Math.Pow(10, bench.Meter.Expect(test, SoundCell).Mean);

    /// <summary>What a sound circuit shows, in words.</summary>
    public string Expected(Test test) => test switch
    {
        VoltsTest volts when bench.Text.Floats(volts, SoundCell) => "drifts near 0 V",
        OhmsTest when SoundOhms(test) >= OpenOhms => "open",
        VoltsTest volts when bench.Meter.Battery.Of(volts) is { } scaled => QuantityWords.MeterVolts(scaled.Mean),
        _ => bench.Text.Expected(test, SoundCell),
    };

    /// <summary>The band in words.</summary>
    public string Text(Test test)
    {
        if (test is LookTest) return "";
        var (least, most) = Of(test);
        if (test is OhmsTest) return double.IsInfinity(most) ? "> 10 kΩ" : least <= 0 ? $"≤ {Numbers.Fixed(most, 1)} Ω" : $"{Ohms(least)} to {Ohms(most)} Ω";
        if (test is VoltsTest { Black: >= 0 } drop && IsDrop(drop)) return bench.Meter.Sound(drop).Mean < 0 ? $"{QuantityWords.MeterVolts(least)} to 0" : $"0 to {QuantityWords.MeterVolts(most)}";
        return $"{QuantityWords.MeterVolts(least)[..^2]} to {QuantityWords.MeterVolts(most)}";
    }

    private static string Ohms(double ohms) => Numbers.Fixed(ohms, ohms < 10 ? 1 : 0);

    // What is across a piece in line that carries current; between other points volts are volts.
    private bool IsDrop(VoltsTest test) => Math.Abs(bench.Meter.Sound(test).Mean) < MostOfDrop;

    private double Limit(VoltsTest test) =>
        bench.Dictionary.Bench.Model.Elements.Any(e => e.Element.Type == ElementType.Contact && ((e.A == test.Red && e.B == test.Black) || (e.B == test.Red && e.A == test.Black))) ? SwitchDrop : JointDrop;
}
