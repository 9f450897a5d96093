using System.Collections.Immutable;
using Hotside.Circuits;
using UnitsNet;

namespace Hotside.Studies.Figures.Budgets;

/// <summary>
/// What the loads of a circuit need on an average, what its machines give for it, and what is left for starting: rough figures, since duties are habits. Immutable.
/// </summary>
public sealed record ChargingBudget
{
    /// <summary>The amperes that a battery takes while it is charged: from 5 to 10 (common practice, no source). What is there is judged by the least, what is chosen by the most.</summary>
    internal const double LeastRecharge = 5, MostRecharge = 10;

    /// <summary>The part of a machine's rating that loads and the battery may take on an average (common practice, no source).</summary>
    internal const double UsableShare = 0.8;

    // A battery starts an engine until half of its charge is gone (own choice); over its charge its rest volts fall from 12.6 to 11.7 V (TM 5-3805-262-20).
    private const double UsableCharge = 0.5, RestFall = (12.6 - 11.7) / 12;

    private ChargingBudget() { }

    /// <summary>The loads that are on with everything on, in the order of the circuit.</summary>
    public ImmutableArray<BudgetLine> Loads { get; private init; }

    /// <summary>The machines; empty where there are none.</summary>
    public ImmutableArray<MachineOutput> Machines { get; private init; }

    /// <summary>Idle and cruise, by day and at night in rain; empty where there are no machines.</summary>
    public ImmutableArray<BudgetCase> Cases { get; private init; }

    /// <summary>The ampere-hours of all batteries together: side by side they add up, in series the least counts; <see langword="null"/> where one states none.</summary>
    public ElectricCharge? Charge { get; private init; }

    /// <summary>Whether the loads at night and in rain, with 5 A for the battery, stay within 80 % of the machines' rated output; <see langword="null"/> where there are no machines.</summary>
    public bool? MachinesSuffice { get; private init; }

    /// <summary>What is left for the starter; <see langword="null"/> where there is none that turns.</summary>
    public CrankingFigures? Cranking { get; private init; }

    /// <summary>The ammeters while the machines charge with the key on and nothing else.</summary>
    public ImmutableArray<AmmeterReading> Ammeters { get; private init; }

    /// <summary>What the batteries give with everything at rest; those in series give the same.</summary>
    public ElectricCurrent Drain { get; private init; }

    /// <summary>
    /// How long the vehicle may stand until the battery no longer starts it: half of its charge, or less where the starter would then have too few volts. What a battery
    /// loses by itself is not counted. <see langword="null"/> where nothing drains it or its ampere-hours are not stated.
    /// </summary>
    public Duration? StandsFor { get; private init; }

    internal static ChargingBudget Of(CircuitStudy study)
    {
        // What a job calls by such a name itself may be another thing.
        ProposedSettings proposed = new(study);
        SettingFigures? Named(string name) => proposed.Find(name)?.Figures;
        var off = Named(Sequence.AllOff)!;
        SettingFigures? on = Named(ProposedSettings.EverythingOn), charging = Named(ProposedSettings.Charging);
        var full = Named(ProposedSettings.EverythingOnCharging) ?? on ?? off;
        var machines = MachinesOf(study.Circuit, off.Assumptions);
        Duties duties = new(study);
        ImmutableArray<BudgetLine> lines =
        [
            .. study.Loads.Where(l => !l.Element.IsInternal).Select(l => (Load: l, Figure: full.Element(l.Part.Id + "." + l.Element.Name))).Where(l => l.Figure.IsLive)
                .Select(l => new BudgetLine(l.Load, ElectricCurrent.FromAmperes(Math.Abs(l.Figure.Current.Amperes)), duties.Of(l.Load))),
        ];
        BatteryLevels batteries = new(study.Circuit);
        double? hours = batteries.AmpereHours;
        double drain = batteries.Given(off);
        var cranking = Named(ProposedSettings.Cranking) is { } turning ? CrankingOf(study, turning, batteries) : null;
        double rated = machines.Sum(m => m.Rated.Amperes);
        return new()
        {
            Loads = lines,
            Machines = machines,
            Cases = machines.IsEmpty ? [] : CasesOf(lines, machines, hours),
            Charge = hours is { } all ? ElectricCharge.FromAmpereHours(all) : null,
            MachinesSuffice = machines.IsEmpty ? null : lines.Sum(l => l.ByNight.Amperes) + LeastRecharge <= UsableShare * rated,
            Cranking = cranking,
            Ammeters = charging is null ? [] : AmmetersOf(study.Circuit, charging, on ?? off, batteries),
            Drain = ElectricCurrent.FromAmperes(drain),
            StandsFor = drain > 1e-4 && batteries.HoursTillEmpty(off, UsableOf(cranking, batteries.Charge)) is { } time ? Duration.FromHours(time) : null,
        };
    }

    // The first source of a machine is its output; what a part does not state was assumed by the solver.
    private static ImmutableArray<MachineOutput> MachinesOf(Circuit circuit, ImmutableArray<AssumedValue> assumed) =>
    [
        .. circuit.Sources.Where(s => s.Element.When is not null).GroupBy(s => s.Part.Id).Select(g => g.First()).Select(s => MachineOutput.Of(s.Part, s.Element,
            s.Part.RatedMiddle(s.Element.Name, Unit.Ampere) ?? assumed.FirstOrDefault(a => a.Of == $"{s.Part.Id}.{s.Element.Name}" && a.Value.Unit == Unit.Ampere)?.Value.Value ?? 0)),
    ];

    /// <summary>At idle, by night and in rain: where a battery lacks most.</summary>
    internal BudgetCase? IdleByNight => Cases is [_, _, var idle, _] ? idle : null;

    private static ImmutableArray<BudgetCase> CasesOf(ImmutableArray<BudgetLine> lines, ImmutableArray<MachineOutput> machines, double? hours)
    {
        double day = lines.Sum(l => l.ByDay.Amperes), night = lines.Sum(l => l.ByNight.Amperes), idle = machines.Sum(m => m.AtIdle.Amperes), cruise = machines.Sum(m => m.AtCruise.Amperes);
        return
        [
            BudgetCase.Of("idle, dry day", day, idle, hours), BudgetCase.Of("cruise, dry day", day, cruise, hours),
            BudgetCase.Of("idle, night and rain", night, idle, hours), BudgetCase.Of("cruise, night and rain", night, cruise, hours),
        ];
    }

    private static CrankingFigures? CrankingOf(CircuitStudy study, SettingFigures figures, BatteryLevels batteries)
    {
        var starter = study.Loads.Where(BriefLoad.IsStarter).Select(l => figures.Element(l.Part.Id + "." + l.Element.Name)).Where(m => m.IsLive).MaxBy(m => Math.Abs(m.Current.Amperes));
        if (starter is null || batteries.Given(figures) <= 0) return null;
        // A starter on a tap of the bank is asked for the tap's volts.
        double volts = study.Circuit.System.Volts.Contains(starter.RatedVoltage.Volts) ? starter.RatedVoltage.Volts : study.Circuit.System.Volts.Max();
        return new(starter.Name, ElectricCurrent.FromAmperes(Math.Abs(starter.Current.Amperes)), ElectricPotential.FromVolts(Math.Abs(starter.Voltage.Volts)),
            ElectricPotential.FromVolts(batteries.VoltsAtPosts(figures)), ElectricPotential.FromVolts(CrankingFigures.LeastShare * volts));
    }

    private static ImmutableArray<AmmeterReading> AmmetersOf(Circuit circuit, SettingFigures charging, SettingFigures stopped, BatteryLevels batteries)
    {
        double takes = -batteries.Given(charging);
        return
        [
            .. from part in circuit.Parts
               from element in part.Kind.Elements.Where(e => e.Type == ElementType.Shunt).Take(1)
               let name = $"{part.Id}.{element.Name}"
               let discharge = Math.Sign(Math.Round(stopped.Element(name).Current.Amperes, 2))
               where discharge != 0
               select new AmmeterReading(part, ElectricCurrent.FromAmperes(-discharge * charging.Element(name).Current.Amperes), ElectricCurrent.FromAmperes(takes)),
        ];
    }

    // The share of its charge that a battery may lose and still start.
    private static double UsableOf(CrankingFigures? cranking, double charge)
    {
        double most = Math.Max(charge - (1 - UsableCharge), 0);
        return cranking is null ? most : Math.Clamp((cranking.AtStarter - cranking.Least).Volts / (RestFall * cranking.Least.Volts / CrankingFigures.LeastShare), 0, most);
    }
}
