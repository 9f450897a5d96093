using Hotside.Circuits;
using Hotside.Studies;
using Hotside.Studies.Figures;
using Hotside.Tests.Support;

namespace Hotside.Tests.Studies.Figures;

public class ProposedSettingTests
{
    private static readonly Job Van = Job.ReadFile(Repository.Path("gallery", "van", "job.yaml")).OrThrow();

    public static TheoryData<string> Cases => [.. Directory.GetDirectories(Repository.Path("gallery")).Where(d => File.Exists(Path.Combine(d, "job.yaml"))).Select(d => Path.GetFileName(d)).Order(StringComparer.Ordinal)];

    private static CircuitStudy[] StudiesOf(string name) =>
        Job.ReadFile(Repository.Path("gallery", name, "job.yaml")).OrThrow().Study is var study ? [study.Before, study.After] : [];

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_load_alone_is_on_and_whatever_has_no_part_in_its_switches_is_off(string name)
    {
        foreach (var study in StudiesOf(name))
        foreach (var load in study.Loads.Where(l => study.ProposedSettings.Contains(l.Name + " alone") && l is { IsMomentary: false, IsInRace: false }))
        {
            var alone = study.Setting(load.Name + " alone");
            Assert.True((load.Side == SwitchedSide.InSeries ? alone.InSeries : alone.On).Contains(load.Name), load.Name);
            Assert.True(alone.Figures.Element(load.Name).IsLive, $"{name}: {load.Name} {alone.Figures.Element(load.Name).Current}");
            // Only what its combination names is moved.
            Assert.All(alone.Setting.Positions, p => Assert.Contains(load.Control.Any, c => c.All.Any(s => s.Variable.Part == p.Part && s.Variable.Actuator.Name == p.Actuator && s.Positions.Contains(p.Position))));
            Assert.All(alone.On.Where(o => o != load.Name), other => Assert.True(
                study.Load(other).Control.IsAlways || study.Load(other).Control.Any.Any(c => c.All.All(s => alone.Positions.Any(p => p.Part == s.Variable.Part && p.Actuator == s.Variable.Actuator.Name && s.Positions.Contains(p.Position))))));
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void With_everything_on_no_named_setting_and_no_load_alone_takes_more(string name)
    {
        foreach (var study in StudiesOf(name))
        {
            if (!study.ProposedSettings.Contains("everything on")) continue;
            double most = Watts(study.Setting("everything on").Figures);
            foreach (var setting in study.Settings.Select(s => s.Setting.Name).Concat(study.ProposedSettings.Where(n => n.EndsWith(" alone", StringComparison.Ordinal))).Select(study.Setting))
                // Starters, engines that run, and senders set to a value are another matter.
                if (setting.Setting.Values.IsEmpty && !setting.Setting.Positions.Any(p => p.Actuator == "engine") && !setting.Figures.Loads.Any(l => IsBrief(l) && l.IsLive))
                    Assert.True(Watts(setting.Figures) <= most * 1.001, $"{name}: {setting.Setting.Name} takes {Watts(setting.Figures)} W, everything {most} W");
        }
    }

    private static bool IsBrief(ElementFigure load) => load.Part.Kind.Voltage == "brief" && load.Part.Kind.Letter is "M" or "K";

    private static double Watts(SettingFigures figures) => figures.Elements.Where(e => e.Element.IsConsumer).Sum(e => (double)e.Power.Watts);

    [Fact]
    public void With_all_off_every_actuator_rests_and_the_van_takes_nothing()
    {
        var off = Van.Study.Before.Setting("all off");
        Assert.Empty(off.Setting.Positions);
        Assert.Empty(off.On);
        Assert.Equal(0, off.Figures.Sources.First(s => s.Part.Id == "G1").Current.Amperes, 1e-4);
    }

    [Fact]
    public void Cranking_turns_the_starter_through_its_relay_with_the_key_on()
    {
        var cranking = Job.ReadFile(Repository.Path("gallery", "tractor", "job.yaml")).OrThrow().Study.After.Setting("cranking");
        var starter = cranking.Figures.Loads.Where(l => l.Element.Type == ElementType.Motor && l.Part.Kind.Id.StartsWith("starter", StringComparison.Ordinal)).MaxBy(l => l.Current.Amperes)!;
        Assert.True(starter.IsLive);
        Assert.True(starter.Current.Amperes > 50);
    }

    [Fact]
    public void Charging_runs_every_machine_and_the_battery_takes_current()
    {
        foreach (var study in new[] { Van.Study.Before, Van.Study.After })
        {
            var charging = study.Setting("charging");
            Assert.Contains(charging.Setting.Positions, p => p is { Part: null, Actuator: "engine", Position: "running" });
            Assert.True(charging.Figures.Element("G1.cells").Current.Amperes < -1);
            Assert.True(charging.Figures.Sources.Where(s => s.Element.When is not null).Sum(s => s.Current.Amperes) > 1);
        }
    }

    [Fact]
    public void What_the_job_names_itself_comes_before_what_is_proposed()
    {
        Assert.DoesNotContain("cranking", Van.Study.Before.ProposedSettings);
        Assert.Equal(Van.Alteration.Before.Settings.First(s => s.Name == "cranking"), Van.Study.Before.Setting("cranking").Setting);
        Assert.Contains("did you mean \"everything on\"", Assert.Throws<ArgumentException>(() => Van.Study.Before.Setting("everthing on")).Message, StringComparison.Ordinal);
    }
}
