using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Studies;
using Hotside.Studies.Figures;

namespace Hotside.Wording;

/// <summary>What the figures of a setting mean, in words.</summary>
internal static class FigureText
{
    // Below it a load is weak, above it strained (own choice): a system that charges has a fifth more than its nominal volts.
    private const double Weak = 85, Strained = 125;

    // What a machine that stands has by way of its windings is not told.
    private const double LeastOfMachine = 0.02;

    // Less is no current to a meter.
    private const double LeastAmperes = 0.0005;

    /// <summary>What stands above and below figures: how they were come by.</summary>
    public const string HowComeBy = "Worked out from ratings and wire sizes (AWG: copper by ASTM B258, 2 % for stranding; mm²: IEC 60228, class 5), at 20 °C and with full batteries where nothing else is said; nothing was measured. The workshop manual and local rules take precedence.";

    /// <summary>Where switches, conditions and relays stand that do not rest: <c>S1 pressed, K1 pulled</c>.</summary>
    public static string Standing(IEnumerable<SetPosition> positions, Circuit circuit)
    {
        string[] moved = [.. circuit.Variables.SelectMany(v => positions.Where(p => p.Part == v.Part && p.Actuator == v.Actuator.Name && p.Position != v.Actuator.Rest).Select(p => $"{v} {p.Position}"))];
        return moved.Length == 0 ? "all at rest" : string.Join(", ", moved);
    }

    /// <summary>Where switches stand and what the setting gives a value: <c>S1 on, engine running, engine 700 rpm</c>.</summary>
    public static string Standing(SettingFigures figures, Circuit circuit) =>
        string.Join(", ", [Standing(figures.Positions, circuit), .. figures.Setting.Values.Select(v => (v.Part == SetValue.Charge || v.Quantity.Unit != Unit.Percent ? v.Part : v.Part + " charge") + " " + v.Quantity)]);

    /// <summary>What a source does: <c>G1 (battery) gives 7.79 A at 6.25 V</c>; <see langword="null"/> for a machine's output that does nothing.</summary>
    public static string? Source(ElementFigure source, IReadOnlyCollection<string> shorted, Vocabulary words)
    {
        double amperes = source.Current.Amperes;
        bool isBattery = source.Element.When is null;
        if (!isBattery && (Math.Abs(amperes) < LeastOfMachine || source.Voltage.Volts <= 0)) return null;
        string volts = (source.Voltage.Volts < 0 ? "\u2212" : "") + Numbers.Fixed(Math.Abs(source.Voltage.Volts), 2);
        string name = PartWords.Named(source.Part, words) + (source.Part.Kind.Elements.Count(e => e.IsSource) > 1 ? ", " + source.Element.Name : ""), at = $" at {volts} V";
        if (shorted.Contains(source.Part.Id)) return $"{name} is shorted: it would give {Numbers.ThreeFigures(amperes)} A until something melts";
        return amperes > LeastAmperes ? $"{name} gives {Numbers.ThreeFigures(amperes)} A{at}"
            : amperes < -LeastAmperes ? $"{name} takes {Numbers.ThreeFigures(-amperes)} A{at}{(isBattery ? ": it is charged" : "")}"
            : $"{name} gives nothing, {volts} V";
    }

    /// <summary>What becomes of relays where they do not simply rest, or rest elsewhere than paths alone would say.</summary>
    public static IEnumerable<string> Relays(SettingFigures figures, SettingStudy? study, Circuit circuit)
    {
        if (study is { IsShort: false, IsUnsettled: false } && figures.Relays == RelayOutcome.Settled)
            foreach (var variable in circuit.Variables)
                if (PutOf(study.Relays, variable) is { } said && PutOf(figures.Positions, variable) is { } stands && said != stands)
                    yield return $"{variable} is fed so that it would be {said}, yet with the volts that it has it is {stands}";
        string Moved(SettingFigures f) => Standing(f.Positions.Where(p => circuit.Variables.Any(v => v.Part == p.Part && v.Actuator.Name == p.Actuator && v.Actuator.Drive == ActuatorDrive.Driven)), circuit);
        switch (figures.Relays)
        {
            case RelayOutcome.Race:
                yield return $"relays race: they may rest with {Moved(figures)}{string.Concat(figures.Others.Select(o => "; or with " + Moved(o)))}. The first is given below";
                break;
            case RelayOutcome.NeverSettles:
                yield return $"a relay never comes to rest: {Moved(figures)}{string.Concat(figures.Others.Select(o => "; then " + Moved(o)))}; and again. One moment is given below";
                break;
            case RelayOutcome.NotSearchedOut:
                yield return "the relays have too many states to look at; one is given below";
                break;
        }
        if (figures.IfPulledBefore is { } back) yield return $"it depends on what was done before: relays once pulled rest with {Moved(back)}";
        if (!figures.IsExact) yield return "the currents do not close to the last digit: take the figures as approximate";
    }

    private static string? PutOf(ImmutableArray<SetPosition> positions, Variable variable) => positions.FirstOrDefault(p => p.Part == variable.Part && p.Actuator == variable.Actuator.Name)?.Position;

    /// <summary>What is noteworthy about a load that is live.</summary>
    public static string Remark(ElementFigure load, SettingStudy? study)
    {
        List<string> remarks = [];
        double percent = load.OfRated.Percent;
        if (study is not null && study.InSeries.Contains(load.Name)) remarks.Add("in series");
        else if (load.IsBetweenFeeds) remarks.Add("between two feeds");
        else if (study is { IsShort: false, IsUnsettled: false } && !study.On.Contains(load.Name)) remarks.Add("sneak current");
        // A gauge has what its sender leaves it.
        if (percent < Weak && remarks.Count == 0 && load.Element.Type != ElementType.Gauge) remarks.Add("weak");
        if (percent > Strained) remarks.Add("too many volts");
        return string.Join(", ", remarks);
    }

    /// <summary>What was taken for want of statements, a line each; empty when all is stated.</summary>
    public static IEnumerable<string> Assumptions(ImmutableArray<AssumedValue> assumed, Circuit circuit)
    {
        string[] wires = [.. assumed.Where(a => circuit.FindConductor(a.Of) is not null).Select(a => a.Of)];
        if (wires.Length > 0) yield return $"size or length not stated, so taken as without drop: {Some(wires)}";
        foreach (var group in assumed.Where(a => circuit.FindConductor(a.Of) is null).GroupBy(a => (a.Source, Said(a))))
            yield return $"not stated, taken as {group.Key.Item2}, {(group.Key.Source == "own choice, no source" ? "" : "from ")}{group.Key.Source}: {Some([.. group.Select(a => a.Of)])}";
    }

    /// <summary>Some names, those beyond a dozen counted.</summary>
    public static string Some(IReadOnlyList<string> names) =>
        names.Count <= 12 ? string.Join(", ", names) : $"{string.Join(", ", names.Take(11))} and {Numbers.Whole(names.Count - 11)} more";

    private static string Said(AssumedValue assumed) => QuantityWords.Of(new StatedValue(Math.Round(assumed.Value.Value, 3), assumed.Value.Unit));
}
