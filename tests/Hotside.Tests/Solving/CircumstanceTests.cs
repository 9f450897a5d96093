using Hotside.Circuits;
using Hotside.Studies.Figures;
using Hotside.Tests.Support;
using UnitsNet;

namespace Hotside.Tests.Solving;

/// <summary>What a job file says of charge, temperature, speed, joints and duty: each by a figure that follows from published values by hand.</summary>
public class CircumstanceTests
{
    private static readonly Job Job = Job.Read(File.ReadAllText(Repository.Path("tests", "Hotside.Tests", "Solving", "circumstances.yaml"))).OrThrow();

    private static SettingFigures Before(string setting) => Job.Study.Before.FindSetting(setting)!.Figures;

    private static double Ohms(SettingFigures figures, string conductor) => figures.Conductor(conductor).Drop.Volts / figures.Conductor(conductor).Current.Amperes;

    // TM 5-3805-262-20, halves of 12.4, 12.0 and 12.6 V.
    [Theory]
    [InlineData("lights", 6.2)] [InlineData("cold and empty", 6.0)]
    public void A_battery_has_the_volts_of_the_charge_that_it_or_the_setting_states(string setting, double rest)
    {
        var cells = Before(setting).Element("G1.cells");
        Assert.Equal(rest - (0.05 * 6 / 90 * cells.Current.Amperes), cells.Voltage.Volts, 1e-6);
    }

    [Fact]
    public void A_charge_that_a_setting_states_of_all_leaves_the_battery_that_states_its_own()
    {
        var job = Job.Read(HornJob.With("parts:\n  G3: battery, 6 V, 90 Ah, charge 50 %, neg on X1, pos on chassis\nsettings:\n  weak: charge 25 %\n")).OrThrow();
        var figures = job.Study.After.FindSetting("weak")!.Figures;
        // The better battery charges the other: 6.1 against 6.0 V.
        Assert.True(figures.Element("G3.cells").Current.Amperes > 0.1);
        Assert.True(figures.Element("G1.cells").Current.Amperes < -0.1);
    }

    // 1/58 × 1.02 / 3.309 mm² (ASTM B258) × length, × (1 + 0.00393 × (T − 20)) (NBS Handbook 100), and the joints.
    [Theory]
    [InlineData("lights", "w4", 1.5, 60, 0.05)] [InlineData("lights on the road", "w4", 1.5, 60, 0.05)] [InlineData("lights", "w5", 2, 20, 0)]
    [InlineData("lights on the road", "w5", 2, 40, 0)] [InlineData("cold and empty", "w5", 2, -20, 0)]
    public void A_wire_resists_by_its_temperature_and_its_joints(string setting, string wire, double metres, double celsius, double joints)
    {
        double area = Math.PI / 4 * Math.Pow(0.127 * Math.Pow(92, (36 - 12) / 39.0), 2);
        Assert.Equal((1.02 / 58 / area * metres * (1 + (0.00393 * (celsius - 20)))) + joints, Math.Abs(Ohms(Before(setting), wire)), 1e-6);
    }

    [Fact]
    public void Degrees_Fahrenheit_are_read_as_they_are_meant() => Assert.Equal(60, Job.Alteration.Before.FindConductor("w8")!.Wire.TemperatureInCelsius!.Value, 1e-9);

    [Fact]
    public void A_contact_drops_what_is_stated_of_it()
    {
        var contact = Before("lights").Element("S1.contact");
        Assert.Equal(0.02, contact.Voltage.Volts / contact.Current.Amperes, 1e-9);
    }

    // 2400 turns of the engine are 3600 of the generator, past the 2400 at which it gives all; at an idle of 700 it makes 1050, and its cut-out is open.
    [Fact]
    public void A_generator_at_idle_gives_nothing_and_on_the_road_carries_the_lights()
    {
        Assert.True(Before("lights at idle").Element("G1.cells").Current.Amperes > 5);
        Assert.Contains(Before("lights at idle").Positions, p => p is { Part: null, Actuator: "engine", Position: "running" });
        Assert.True(Before("lights on the road").Element("G2.armature").Current.Amperes > 5);
        Assert.True(Before("lights on the road").Element("G1.cells").Current.Amperes < 0);
    }

    // 25 A at 1500 and 55 A at 6000 turns: 65 − 60 000 / n. An engine of 700 drives it at 1500.
    [Theory]
    [InlineData("engine idle", 25)] [InlineData("engine 1400 rpm", 45)] [InlineData("engine running, G2 1500 rpm", 25)] [InlineData("engine running", 55)]
    public void An_alternator_gives_by_its_engine_s_speed(string items, double amperes)
    {
        var job = Job.Read("hotside: 1\ntitle: One\nsystem: 12 V, negative ground\nparts:\n  G1: battery, 12 V, 60 Ah, pos on R1.1, neg on chassis\n"
            + $"  G2: alternator-one-wire, 12 V, 55 A, low 25 A\n  R1: heater, 12 V, 6000 W, 2 on chassis\nwires:\n  w1: G2.B+ to R1.1\nsettings:\n  asked: {items}\n").OrThrow();
        Assert.Equal(amperes, job.Study.After.FindSetting("asked")!.Figures.Element("G2.output").Current.Amperes, 1e-6);
    }

    [Fact]
    public void A_stated_duty_comes_before_a_habit()
    {
        var budget = Job.Study.Before.Budget;
        var low = budget.Loads.Single(l => l.Load.Name == "E1.high");
        Assert.Equal((0.2, 0.2), (low.Duty.ByDay.DecimalFractions, low.Duty.ByNight.DecimalFractions));
        Assert.Equal(0.8, budget.Loads.Single(l => l.Load.Name == "E2").Duty.ByDay.DecimalFractions);
    }

    [Fact]
    public void A_battery_that_is_half_empty_does_not_start_the_engine_for_long()
    {
        Duration? Stands(string charge) => Job.Read("hotside: 1\ntitle: One\nsystem: 12 V, negative ground\nparts:\n  G1: battery, 12 V, 60 Ah" + charge
            + ", neg on chassis\n  R1: heater, 12 V, 12 W, 2 on chassis\nwires:\n  w1: G1.pos to R1.1\n").OrThrow().Study.After.Budget.StandsFor;
        // 1 A at 12 V: half of 60 Ah; a tenth of them.
        Assert.InRange(Stands("")!.Value.Hours, 27, 31);
        Assert.InRange(Stands(", charge 60 %")!.Value.Hours, 5.5, 6.3);
    }

    [Fact]
    public void What_an_alteration_makes_anew_is_a_good_joint()
    {
        Conductor After(string id) => Job.Alteration.After.FindConductor(id)!;
        Assert.Null(After("w4").Wire.JointAtToInOhms);
        Assert.Equal(60, After("w4").Wire.TemperatureInCelsius);
        Assert.Equal((0.01, null), (After("w6").Wire.JointAtFromInOhms, After("w6").Wire.JointAtToInOhms));
        Assert.Equal(0.005, After("w2").Wire.JointAtToInOhms);
    }

    [Fact]
    public void A_sequence_takes_each_step_under_what_its_setting_says()
    {
        var circuit = Job.Alteration.Before.With([Sequence.Of("drive", ["lights", "cold and empty", "lights"], Job.Alteration.Before.Settings, out _)!]);
        var steps = Hotside.Studies.CircuitStudy.Of(circuit).FindSequence("drive")!.Steps;
        Assert.Equal(steps[0].Element("E2").Voltage.Volts, steps[2].Element("E2").Voltage.Volts, 1e-9);
        Assert.True(steps[1].Element("E2").Voltage.Volts < steps[0].Element("E2").Voltage.Volts - 0.1);
    }

    [Fact]
    public void The_builder_takes_the_same_values_with_their_units()
    {
        CircuitBuilder builder = new CircuitBuilder(ElectricPotential.FromVolts(12), Ground.Negative)
            .Part("G1", Hotside.Kinds.Kind.Battery).Part("E1", Hotside.Kinds.Kind.Lamp).Wire("w1", "G1.pos", "E1.1").Wire("w2", "G1.neg", "chassis").Wire("w3", "E1.2", "chassis")
            .Setting("weak").Value("weak", "charge", Ratio.FromPercent(25)).Value("weak", "w1", Temperature.FromDegreesFahrenheit(140));
        var weak = builder.Build().Settings.Single();
        Assert.Equal((25, Unit.Percent), (weak.Values[0].Quantity.Value, weak.Values[0].Quantity.Unit));
        Assert.Equal(60, weak.Values[1].Quantity.Value, 1e-9);
        Assert.Throws<ArgumentException>("of", () => builder.Value("weak", "w9", Temperature.FromDegreesCelsius(60)));
        Assert.Throws<ArgumentException>("of", () => builder.Value("weak", "E1", RotationalSpeed.FromRevolutionsPerMinute(700)));
        Assert.Throws<ArgumentException>("setting", () => builder.Value("strong", "charge", Ratio.FromPercent(25)));
        Assert.Throws<ArgumentException>("value", () => builder.Value("weak", "charge", Length.FromMeters(1)));
    }

    // The file and the builder say the same: an engine that has a speed, or drives a machine that has one, runs; no figure is out of its range.
    [Fact]
    public void A_speed_says_that_the_engine_runs_and_a_builder_knows_the_ranges_of_a_file()
    {
        const string Parts = "hotside: 1\ntitle: Speeds\nsystem: 12 V, negative ground\nparts:\n  G1: battery, 12 V, 60 Ah, neg on chassis\n  G2: generator, 12 V, 20 A\n  G3: solar-panel, 12 V, 5 A, neg on chassis\n"
            + "wires:\n  w1: G2.A to G1.pos\n  w2: G3.pos to G1.pos\n";
        foreach (string speed in new[] { "engine 700 rpm", "G2 1500 rpm" })
            Assert.Contains(Job.Read($"{Parts}settings:\n  slow: {speed}\n").OrThrow().Alteration.After.Settings.Single().Positions, p => p is { Part: null, Actuator: "engine", Position: "running" });
        // A panel has no speed, though it gives under a condition.
        foreach (string odd in new[] { "daylight 700 rpm", "G3 1500 rpm" })
            Assert.Contains(Job.Read($"{Parts}settings:\n  odd: {odd}\n").Diagnostics, d => d.Severity == Hotside.Diagnostics.Severity.Error);
        var builder = new CircuitBuilder(ElectricPotential.FromVolts(12), Ground.Negative).Part("G1", Hotside.Kinds.Kind.Battery).Part("G2", Hotside.Kinds.Kind.Generator)
            .Setting("slow").Value("slow", "G2", RotationalSpeed.FromRevolutionsPerMinute(1500));
        Assert.Contains(builder.Build().Settings.Single().Positions, p => p.Position == "running");
        Assert.Throws<ArgumentException>("value", () => builder.Value("slow", "G1", Ratio.FromPercent(160)));
        Assert.Throws<ArgumentException>("value", () => builder.Value("slow", "wires", Temperature.FromDegreesCelsius(-300)));
        Assert.Throws<ArgumentException>("value", () => builder.Value("slow", "engine", RotationalSpeed.FromRevolutionsPerMinute(-5)));
    }
}
