using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Solving;
using Hotside.Solving.Laws;
using Hotside.Sizing.Tables;

namespace Hotside.Sizing.Guards;

/// <summary>The current at the first moment: filaments cold, motors standing.</summary>
internal sealed class Inrush
{
    // How long it lasts: own choice, no source.
    private const double LampSeconds = 0.02, MotorSeconds = 0.5;

    private readonly StateSolver solver;

    /// <summary>The inrush of a circuit.</summary>
    public Inrush(CircuitModel model) => solver = new(model);

    /// <summary>How a fuse stands the inrush in a setting, the engine standing.</summary>
    /// <param name="fuse">The fuse.</param>
    /// <param name="positions">The setting: that in which it carries most.</param>
    public (double Lamps, double Motors) Of(ModelElement fuse, ImmutableArray<SetPosition> positions)
    {
        int[] state = solver.StateOf(positions);
        double With(Func<Law, Law> first) => Math.Abs(solver.AmperesOf(solver.Solve(state, [], laws => [.. laws.Select(l => l is null ? null : first(l))]), fuse));
        return (With(Cold), With(Standing));
    }

    /// <summary>Whether a fuse of a rating stands an inrush: <see cref="SizingOutcome.Note"/> where it does in the middle of its band, failed where it is likely to open.</summary>
    public static SizingOutcome Judge(FusePattern pattern, double rating, (double Lamps, double Motors) amperes)
    {
        var lamps = Judge(pattern, rating, amperes.Lamps, LampSeconds);
        var motors = Judge(pattern, rating, amperes.Motors, MotorSeconds);
        return lamps > motors ? lamps : motors;
    }

    private static SizingOutcome Judge(FusePattern pattern, double rating, double amperes, double seconds)
    {
        double multiple = amperes / rating, within = Math.Min(multiple, OpeningTime.MostTimes);
        if (OpeningTime.At(pattern, within) is not { } time) return SizingOutcome.Passed;
        // Beyond the last point of the standard heat has no time to leave: what opens it is I²·t.
        double sooner = within / multiple * within / multiple;
        // Where nothing tells how soon it may open, it may; what lasts longer than it stands opens it.
        if (time.Least <= 0) return time.Most is { } surely && seconds >= surely * sooner ? SizingOutcome.Failed : SizingOutcome.Note;
        return seconds < time.Least * sooner ? SizingOutcome.Passed
            : time.Most is not { } most || seconds < Math.Sqrt(time.Least * most) * sooner ? SizingOutcome.Note : SizingOutcome.Failed;
    }

    private static Law Cold(Law law) => law is LampLaw lamp ? ClampLaw.Resistance(lamp.ColdOhms) : law;

    private static Law Standing(Law law) => law switch
    {
        FanLaw fan => ClampLaw.Resistance(fan.ArmatureOhms),
        SeriesFanLaw series => ClampLaw.Resistance(series.WindingOhms),
        // A motor under a constant torque: a line through nothing with limits either way.
        ClampLaw { Emf: 0, IsLine: false } clamp when clamp.Most > 0 && double.IsFinite(clamp.Most) => ClampLaw.Resistance(1 / clamp.Siemens),
        _ => law,
    };
}
