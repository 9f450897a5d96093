using Hotside.Circuits;

namespace Hotside.Diagnoses;

/// <summary>How likely something is seen in each state. Eyes compare with how it was on this vehicle: below 82 % of its volts a lamp is seen to be dim (own choice).</summary>
internal static class Looks
{
    public const int States = 4;

    // Parts of the volts it had: below the first it is off, below the second dim, above the last strong. The last two: where it should be off.
    private const double OffBelow = 0.3, DimBelow = 0.82, StrongAbove = 1.25, NoGlowBelow = 0.12, GlowBelow = 0.45;

    // Edges are soft, and one in thirty looks is misjudged (own choices).
    private const double Soft = 0.05, Misjudged = 0.03;

    // Less of its rated volts counts as off when all is well: below any glow by more than tolerances make up. A pointer shows less.
    private const double LeastShare = 0.10, LeastOfGauge = 0.02;

    /// <summary>The likelihood of each state, in their order.</summary>
    public static void Of(FaultDictionary dictionary, int setting, int cell, Watched watched, Span<double> likelihoods)
    {
        var (sound, point) = (dictionary.Healthy(setting), dictionary.At(setting, cell));
        if (watched.Variable >= 0)
        {
            Fill(likelihoods, point.Relays[watched.Variable] == 0 ? LookState.Off : LookState.Right);
            return;
        }
        double was = SoundVolts(sound, watched), rated = watched.Element.RatedVolts;
        bool isOn = IsOn(was, watched);
        bool isOut = IsOut(dictionary, cell, watched), isTurned = IsTurned(dictionary, cell, watched);
        likelihoods.Clear();
        for (int sample = 0; sample < CellPoint.Samples; sample++)
        {
            double reference = isOn ? Volts(point.Sound[sample], watched, isTurned: false) : rated;
            double share = isOut || Floats(point, watched) ? 0 : Volts(point.Volts[sample], watched, isTurned) / reference;
            if (isOn) Add(likelihoods, share, OffBelow, DimBelow, StrongAbove);
            else Add(likelihoods, share, NoGlowBelow, GlowBelow, double.PositiveInfinity);
        }
        for (int i = 0; i < States; i++) likelihoods[i] = ((1 - Misjudged) * likelihoods[i] / CellPoint.Samples) + (Misjudged / States);
    }

    /// <summary>How something looks when all is well.</summary>
    public static LookState Sound(FaultDictionary dictionary, int setting, Watched watched)
    {
        var sound = dictionary.Healthy(setting);
        if (watched.Variable >= 0) return sound.Relays[watched.Variable] == 0 ? LookState.Off : LookState.Right;
        return IsOn(SoundVolts(sound, watched), watched) ? LookState.Right : LookState.Off;
    }

    /// <summary>The state by volts alone.</summary>
    /// <param name="isOn">Whether it is on when all is well.</param>
    /// <param name="share">Its volts as a part of what it had, or of its rated volts where it should be off.</param>
    public static LookState Judged(bool isOn, double share) =>
        share < (isOn ? OffBelow : NoGlowBelow) ? LookState.Off : share < (isOn ? DimBelow : GlowBelow) ? LookState.Dim : isOn && share > StrongAbove ? LookState.Strong : LookState.Right;

    private static double Volts(float[] volts, Watched watched, bool isTurned)
    {
        double across = (watched.Element.A < 0 ? 0 : volts[watched.Element.A]) - (watched.Element.B < 0 ? 0 : volts[watched.Element.B]);
        if (isTurned) across = -across;
        return watched.Element.Element.IsOneWay ? Math.Max(0, across) : Math.Abs(across);
    }

    /// <summary>The volts that make it work when all is well; none where an end floats.</summary>
    public static double SoundVolts(CellPoint sound, Watched watched) => Floats(sound, watched) ? 0 : Volts(sound.Volts[0], watched, isTurned: false);

    private static bool IsOn(double volts, Watched watched) => volts > (watched.Element.Element.Type == ElementType.Gauge ? LeastOfGauge : LeastShare) * watched.Element.RatedVolts;

    private static bool Floats(CellPoint point, Watched watched) =>
        (watched.Element.A >= 0 && point.Floats[watched.Element.A]) || (watched.Element.B >= 0 && point.Floats[watched.Element.B]);

    /// <summary>Whether a fault lies in the thing itself, so that it may look otherwise at the same volts.</summary>
    public static bool IsInItself(FaultDictionary dictionary, int cell, Watched watched) => watched.Variable < 0 && (IsOut(dictionary, cell, watched) || IsTurned(dictionary, cell, watched));

    private static bool IsOut(FaultDictionary dictionary, int cell, Watched watched) =>
        dictionary.Faults[dictionary.Cells[cell].Fault] is { Mode.Change: FaultChange.Out } fault && fault.FirstEdge == watched.Element.FirstEdge;

    private static bool IsTurned(FaultDictionary dictionary, int cell, Watched watched) =>
        dictionary.Faults[dictionary.Cells[cell].Fault] is { Mode.Change: FaultChange.Turned } fault && fault.FirstEdge == watched.Element.FirstEdge;

    private static void Fill(Span<double> likelihoods, LookState state)
    {
        for (int i = 0; i < States; i++) likelihoods[i] = (Misjudged / States) + (i == (int)state ? 1 - Misjudged : 0);
    }

    private static void Add(Span<double> likelihoods, double share, double off, double dim, double strong)
    {
        double belowOff = Below(share, off), belowDim = Below(share, dim), belowStrong = double.IsInfinity(strong) ? 1 : Below(share, strong);
        likelihoods[(int)LookState.Off] += belowOff;
        likelihoods[(int)LookState.Dim] += Math.Max(0, belowDim - belowOff);
        likelihoods[(int)LookState.Right] += Math.Max(0, belowStrong - belowDim);
        likelihoods[(int)LookState.Strong] += Math.Max(0, 1 - belowStrong);
    }

    // A step with a soft edge: the logistic function of the same slope as a normal distribution.
    private static double Below(double share, double edge) => 1 / (1 + Math.Exp(-1.7 * (edge - share) / Soft));
}
