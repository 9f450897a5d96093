using Hotside.Circuits;
using Hotside.Studies;
using Hotside.Studies.Figures;
using Hotside.Tests.Support;

namespace Hotside.Tests.Studies.Figures;

/// <summary>
/// Two lamps behind one fuse and one switch, worked by hand figure by figure: an invented circuit, 1/58 Ω·mm²/m (IEC 60028) times 1.02 for copper, and the lamp exponent of
/// Fink and Beaty, page 22-8. The figures were confirmed with ngspice. Here by way of the study, in both polarities.
/// </summary>
public class SettingFiguresTests
{
    private const string Text = Hotside.Tests.Solving.WorkedExampleTests.Text;

    private static readonly string Turned = Text.Replace("negative ground", "positive ground", StringComparison.Ordinal)
        .Replace("G1.pos to F1.1", "G1.neg to F1.1", StringComparison.Ordinal).Replace("chassis to G1.neg", "chassis to G1.pos", StringComparison.Ordinal);

    private static SettingFigures Lights(string text) => Job.Read(text).OrThrow().Study.After.Setting("lights").Figures;

    [Fact]
    public void The_worked_example_comes_out_with_negative_ground() => Compare(Lights(Text), 1, "G1.pos", "G1.neg");

    [Fact]
    public void With_positive_ground_only_the_sign_of_the_volts_against_the_chassis_is_another() => Compare(Lights(Turned), -1, "G1.neg", "G1.pos");

    private static void Compare(SettingFigures lights, double sign, string feed, string other)
    {
        var lamp = lights.Element("E1");
        // The hand's iteration ends within a hundredth of a millivolt.
        Assert.Equal(12.10264, lamp.Voltage.Volts, 2e-5);
        Assert.Equal(2.93036, lamp.Current.Amperes, 1e-5);
        Assert.Equal(35.465, (double)lamp.Power.Watts, 1e-3);
        Assert.Equal(100.9, lamp.OfRated.Percent, 0.05);
        Assert.True(lamp.IsLive);
        Assert.False(lamp.IsBetweenFeeds);
        Assert.Equal(5.86072, lights.Sources.Single().Current.Amperes, 1e-5);
        (string Wire, double Volts)[] drops = [("w1", 0.00784), ("w2", 0.12878), ("w3", 0.15354), ("w4", 0.03544), ("w6", 0.01969), ("w8", 0.00146)];
        Assert.All(drops, d => Assert.Equal(d.Volts, lights.Conductor(d.Wire).Drop.Volts, 1e-5));
        // Heat is amperes times volts: 5.86072 A in w2.
        Assert.Equal(5.86072 * 0.12878, (double)lights.Conductor("w2").Heat.Watts, 1e-4);
        Assert.Equal(0.04513, lights.Element("F1.fuse").Voltage.Volts, 1e-5);
        Assert.Equal(0.05861, lights.Element("S1.contact").Voltage.Volts, 1e-5);
        Assert.Equal(5.86072, lights.Through("S1").Amperes, 1e-5);
        (string End, double Volts)[] terminals = [(feed, 12.55165), ("J1", 12.15777), ("E1.1", 12.12233), ("E1.2", 0.01969), (other, -0.00146)];
        Assert.All(terminals, t => Assert.Equal(sign * t.Volts, lights.VoltageAt(t.End)!.Value.Volts, 2e-5));
        Assert.Empty(lights.Assumptions);
        Assert.Empty(lights.Shorted);
        Assert.Equal(RelayOutcome.Settled, lights.Relays);
        Assert.True(lights.IsExact);
    }

    [Fact]
    public void What_is_on_by_paths_has_its_volts_and_what_is_off_has_none()
    {
        foreach (var study in JobFiles.All.Select(f => JobFiles.Read(f).Alteration).OfType<Hotside.Alterations.Alteration>().SelectMany(a => new[] { CircuitStudy.Of(a.Before), CircuitStudy.Of(a.After) }))
        foreach (var setting in study.Settings.Where(s => s is { IsShort: false, IsUnsettled: false }))
        {
            // Verdicts take connectors and interrupters as they rest; figures take them as they are put.
            if (setting.Setting.Positions.Any(p => study.Circuit.Variables.Any(v => v.Part == p.Part && v.Actuator.Name == p.Actuator && (v.Actuator.IsNoControl || v.Actuator.Cycles)))) continue;
            var figures = setting.Figures;
            if (figures.Relays != RelayOutcome.Settled || setting.Relays.Any(r => figures.Positions.First(p => p.Part == r.Part && p.Actuator == r.Actuator).Position != r.Position)) continue;
            foreach (var load in study.Loads.Where(l => l is { Element.IsInternal: false, IsMomentary: false, IsInRace: false, IsApproximate: false, AlsoFedBy.IsEmpty: true, Sneaks: null } && l.Side != SwitchedSide.Dead))
            {
                var figure = figures.Element(load.Name);
                bool isThere = setting.On.Contains(load.Name) || setting.InSeries.Contains(load.Name);
                // Between two feeds the difference of their volts decides.
                if (figure.IsBetweenFeeds) continue;
                Assert.True(isThere == figure.IsLive || figure.RatedCurrent.Amperes < 1e-3, $"{study.Circuit.System} {setting.Setting.Name}: {load.Name} {figure.Voltage} {figure.Current}");
            }
        }
    }

    [Fact]
    public void A_short_circuit_names_its_source_and_has_its_current()
    {
        var lights = Lights(Text.Replace("settings:", "  w9: J1 to chassis, 0 ohm\nsettings:", StringComparison.Ordinal));
        Assert.Equal(["G1"], lights.Shorted);
        // 12.6 V over 75.4574 mΩ, the path shared by both lamps.
        Assert.Equal(166.98, lights.Sources.Single().Current.Amperes, 0.01);
    }

    [Fact]
    public void What_hangs_between_two_feeds_is_told_for_what_it_is()
    {
        var charging = Job.ReadFile(Repository.Path("gallery", "charging", "job.yaml")).OrThrow().Study.After.Setting("charging").Figures;
        var lamp = charging.Element("H1");
        Assert.True(lamp.IsBetweenFeeds);
        Assert.True(lamp.OfRated.Percent < 10);
        Assert.True(charging.VoltageAt("H1.61")!.Value.Volts > 12);
    }

    [Fact]
    public void Wires_without_length_are_assumed_and_parallel_ones_share_an_unknown_current()
    {
        var lights = Lights(Text.Replace("14 RD, 2.6 m", "14 RD", StringComparison.Ordinal).Replace("settings:", "  w9: F1.2 to S1.1, 14 RD\nsettings:", StringComparison.Ordinal));
        Assert.Equal(["w2", "w9"], lights.Assumptions.Select(a => a.Of));
        Assert.All(lights.Assumptions, a => Assert.Equal(Unit.Ohm, a.Value.Unit));
        Assert.Equal(["w2", "w9"], lights.Conductors.Where(c => c is { IsShared: true, IsAssumed: true }).Select(c => c.Conductor.Id));
    }

    [Fact]
    public void What_nothing_ties_floats()
    {
        var job = Job.Read(Text.Replace("E2: lamp, 12 V, 35 W", "E2: lamp, 12 V, 35 W\n  X9: connector, 2 ways", StringComparison.Ordinal)).OrThrow();
        Assert.Null(job.Study.After.Setting("lights").Figures.VoltageAt("X9.a1"));
    }

    [Fact]
    public void Wrong_names_are_answered_with_the_nearest()
    {
        var lights = Lights(Text);
        Assert.Contains("\"E1.1\"", Assert.Throws<ArgumentException>(() => lights.VoltageAt("E1.11")).Message, StringComparison.Ordinal);
        Assert.Contains("\"w2\"", Assert.Throws<ArgumentException>(() => lights.Conductor("w22")).Message, StringComparison.Ordinal);
        Assert.Contains("\"F1.fuse\"", Assert.Throws<ArgumentException>(() => lights.Element("F1.fus")).Message, StringComparison.Ordinal);
    }
}
