using Hotside.Studies;
using Hotside.Tests.Support;

namespace Hotside.Tests.Studies;

public class SettingStudyTests
{
    [Fact]
    public void In_a_setting_is_on_what_the_controls_say()
    {
        foreach (string file in JobFiles.All)
        {
            if (JobFiles.Read(file).Alteration is not { } alteration) continue;
            foreach (var study in new[] { CircuitStudy.Of(alteration.Before), CircuitStudy.Of(alteration.After) })
            foreach (var setting in study.Settings.Where(s => !s.IsShort && !s.IsUnsettled))
            foreach (var load in study.Loads.Where(l => !l.Element.IsInternal && l is { IsMomentary: false, AlsoFedBy.IsEmpty: true, IsInRace: false }))
            {
                bool says = load.Control.Holds(set => set.Positions.Contains(setting.Positions.First(p => p.Part == set.Variable.Part && p.Actuator == set.Variable.Actuator.Name).Position));
                bool isOn = (load.Side == SwitchedSide.InSeries ? setting.InSeries : setting.On).Contains(load.Name);
                Assert.True(says == isOn, $"{file}, {setting.Setting.Name}: {load.Name} {load.Side} {{{load.Control}}}, on {isOn}");
            }
        }
    }

    [Fact]
    public void A_pressed_horn_button_pulls_the_relay_in()
    {
        var study = CircuitStudy.Of(JobFiles.Read("horn.yaml").Alteration!.After).Setting("horn pressed");
        Assert.Contains("H1", study.On);
        Assert.Equal("pulled", Assert.Single(study.Relays).Position);
        Assert.Contains("did you mean \"horn pressed\"", Assert.Throws<ArgumentException>(() => CircuitStudy.Of(JobFiles.Read("horn.yaml").Alteration!.After).Setting("horn presed")).Message, StringComparison.Ordinal);
    }
}
