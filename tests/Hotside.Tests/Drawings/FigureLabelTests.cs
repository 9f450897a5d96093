using Hotside.Drawings;
using Hotside.Drawings.Plans;
using Hotside.Studies.Figures;
using Hotside.Symbols.Shapes;
using Hotside.Tests.Support;

namespace Hotside.Tests.Drawings;

public class FigureLabelTests
{
    private static Job Read(string name) => Job.ReadFile(Repository.Path("gallery", name, "job.yaml")).OrThrow();

    [Theory]
    [InlineData("horn", "horn pressed", View.Pair)]
    [InlineData("starter", "cranking", View.Pair)]
    [InlineData("headlamps", "everything on", View.Pair)]
    [InlineData("charging", "charging", View.Pair)]
    [InlineData("van", "everything on", View.After)]
    public void Figures_stand_at_their_wires_and_over_nothing_else(string name, string setting, View view)
    {
        var job = Read(name);
        foreach (var shown in new[] { ShownFigures.Currents, ShownFigures.Drops, ShownFigures.Voltages })
        {
            var scene = job.Draw(view, new() { Show = shown, Setting = setting }).Scene;
            Assert.Equal("", string.Join('\n', Clearance.Faults(scene)));
            foreach (var (at, study) in new[] { (View.Before, job.Study.Before), (View.After, job.Study.After) })
            {
                var figures = study.Setting(setting).Figures;
                HashSet<string> told = [];
                foreach (var label in scene.Groups.Where(g => g.View == at && g.Classes.Contains("label")))
                    if (label.Data.Where(d => d.Name == "ref").Select(d => d.Value).FirstOrDefault() is { } id && Texts(label).LastOrDefault(t => t.Contains(" V", StringComparison.Ordinal) || t.Contains(" A", StringComparison.Ordinal)) is { } text)
                    {
                        Check(shown, text, figures, figures.Conductor(id));
                        told.Add(id);
                    }
                // What carries current, more than trickles back, has its figure wherever the view shows it.
                string[] live = [.. figures.Conductors.Where(c => Math.Abs(c.Current.Amperes) > 0.2).Select(c => c.Conductor.Id)];
                if (view == View.Pair || view == at) Assert.Equal("", string.Join(' ', live.Except(told)));
            }
        }
    }

    private static IEnumerable<string> Texts(SceneGroup group) => group.Shapes.OfType<TextShape>().Select(t => t.Text);

    // As printed: three figures, a millivolt, or a hundredth of a volt.
    private static void Check(ShownFigures shown, string text, SettingFigures figures, ConductorFigure wire)
    {
        double[] numbers = [.. text.Replace('\u2212', '-').Replace("+", "", StringComparison.Ordinal).Split(' ').Where(t => t.Any(char.IsDigit)).Select(t => double.Parse(t, System.Globalization.CultureInfo.InvariantCulture))];
        switch (shown)
        {
            case ShownFigures.Currents:
                Assert.Equal(Math.Abs(wire.Current.Amperes), numbers[0], Math.Max(0.0006, 0.006 * Math.Abs(wire.Current.Amperes)));
                break;
            case ShownFigures.Drops:
                Assert.Equal(Math.Abs(wire.Drop.Volts), numbers[0], 0.00051);
                break;
            default:
                foreach (var (end, number) in wire.Conductor.Ends.Zip([numbers[0], numbers[^1]]))
                    Assert.Equal(end.IsChassis ? 0 : figures.VoltageAt(end.ToString())!.Value.Volts, number, 0.0051);
                break;
        }
    }

    [Fact]
    public void A_band_lies_under_what_carries_current_and_under_nothing_else()
    {
        var job = Read("horn");
        var scene = job.Draw(View.Pair, new() { Show = ShownFigures.Currents, Setting = "horn pressed" }).Scene;
        foreach (var (at, study) in new[] { (View.Before, job.Study.Before), (View.After, job.Study.After) })
        {
            int live = study.Setting("horn pressed").Figures.Conductors.Count(c => Math.Abs(c.Current.Amperes) > 0.005);
            // The fuse is bolted to the rail: a band lies there too.
            Assert.Equal(live + 1, scene.Groups.Count(g => g.View == at && g.Classes.Contains("live")));
            Assert.Equal(live, scene.Groups.Count(g => g.View == at && g.Classes.Contains("label") && Texts(g).Any(t => t.EndsWith(" A", StringComparison.Ordinal))));
        }
        Assert.DoesNotContain(job.Draw(View.Pair, new() { Show = ShownFigures.Currents, Setting = "all off" }).Scene.Groups, g => g.Classes.Contains("live"));
    }

    [Fact]
    public void What_a_shared_ground_drives_through_lamps_that_are_off_is_no_way_of_the_current()
    {
        var job = Read("van");
        var night = job.Study.After.Setting("driving by night").Figures;
        // The turn lamps are off, and yet some milliamperes go round through them: their grounds differ by what the tail lamps drop.
        Assert.True(Math.Abs(night.Conductor("w50").Current.Amperes) > 0.005);
        Assert.False(night.Element("E7").IsLive);
        LivePaths ways = new(job.Alteration.After, night);
        Assert.False(ways.Has("w49") || ways.Has("w50") || ways.Has("w52"));
        // Lit lamps, the generator's wire and the battery's are ways.
        Assert.True(ways.Has("w37") && ways.Has("w40") && ways.Has("w2") && ways.Has("w1"));
    }

    [Fact]
    public void Legend_and_headline_say_what_the_figures_are()
    {
        string[] texts = [.. Read("horn").Draw(View.Pair, new() { Show = ShownFigures.Drops, Setting = "horn pressed" }).Scene.Groups.SelectMany(Texts)];
        Assert.Contains("volts lost along it, horn pressed", texts);
        Assert.Contains("carries current, horn pressed", texts);
        Assert.Contains(texts, t => t.Contains("G1 (battery) gives 7.99 A", StringComparison.Ordinal));
        Assert.DoesNotContain(texts, t => t.Contains("IEC 60757", StringComparison.Ordinal));
    }

    [Fact]
    public void What_cannot_be_shown_is_told()
    {
        var job = Read("horn");
        Assert.Contains("Figures stand in before, after", Assert.Throws<ArgumentException>(() => job.Draw(View.Overlay, new() { Show = ShownFigures.Currents, Setting = "horn pressed" })).Message, StringComparison.Ordinal);
        Assert.Contains("name one", Assert.Throws<ArgumentException>(() => job.Draw(View.Pair, new() { Show = ShownFigures.Currents })).Message, StringComparison.Ordinal);
        Assert.Contains("did you mean \"horn pressed\"", Assert.Throws<ArgumentException>(() => job.Draw(View.Pair, new() { Show = ShownFigures.Currents, Setting = "horn presed" })).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Figures_stand_in_an_excerpt_too()
    {
        var scene = Read("van").Draw(View.Pair, new() { Figure = ["H1"], Show = ShownFigures.Currents, Setting = "horn pressed" }).Scene;
        Assert.Equal("", string.Join('\n', Clearance.Faults(scene)));
        Assert.Contains(scene.Groups.Where(g => g.Classes.Contains("label")).SelectMany(Texts), t => t.EndsWith(" A", StringComparison.Ordinal));
    }
}
