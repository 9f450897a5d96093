using System.Globalization;
using Hotside.Symbols.Shapes;
using Hotside.Tests.Support;

namespace Hotside.Tests.Drawings;

/// <summary>Everything on a sheet is laid out by rule: nothing is so long, so much or so little that it lies over anything else.</summary>
public sealed class LongTextTests
{
    private const string Title = "Hornkreis mit Relais, Signalknopf am Lenkrad und Sicherung im Motorraum, Umbau von sechs auf zwölf Volt mit Masse am Minuspol";
    private const string Ninety = "Horn of the left front wing behind the headlamp bracket with its rubber mounted bell, old1";
    private const string German = "Scheinwerferreinigungsanlagenrelaissockelhalterung mit Übertemperaturschutzschalter";
    private const string Finnish = "Äänimerkinantolaitteen käyttökytkimen varmuusrele, etulokasuojan jäähdytinsäleikön takana";

    private static readonly string Horn = File.ReadAllText(Repository.Path("gallery", "horn", "job.yaml"));

    public static TheoryData<string, string> Texts => new()
    {
        { "a long title", Horn.Replace("title: Horn circuit", "title: " + Title, StringComparison.Ordinal).Replace("title: 12 V negative ground, with a horn relay", "title: " + Title, StringComparison.Ordinal) },
        { "a name of ninety characters", Horn.Replace("H1: horn, 6 V, 8 A", $"H1: horn, '{Ninety}', 6 V, 8 A", StringComparison.Ordinal) },
        { "German words", Horn.Replace("Horn button", $"'{German}'", StringComparison.Ordinal).Replace("Horn relay", $"'{German}'", StringComparison.Ordinal).Replace("Battery feed", $"'{German}'", StringComparison.Ordinal) },
        { "Finnish words", Horn.Replace("Horn button", $"'{Finnish}'", StringComparison.Ordinal).Replace("Horn relay", $"'{Finnish}'", StringComparison.Ordinal).Replace("Battery feed", $"'{Finnish}'", StringComparison.Ordinal) },
        { "a rating of two lines", Horn.Replace("fit K1: relay, Horn relay, 12 V, 30 A, coil 0.15 A", "fit K1: relay, Horn relay, 12 V, 30 A, coil 0.15 A, coil 85 ohm, coil 1.8 W", StringComparison.Ordinal) },
        { "no change", Horn.Split("alteration:")[0] },
        { "forty-five changes", Lamps(45) },
        { "a long reason", Horn.Replace("because S1 then carries 0.15 A, not 8 A", "because " + string.Join(" ", Enumerable.Repeat("the old contact has carried eight amperes for sixty years and is burnt", 6)), StringComparison.Ordinal) },
    };

    [Theory]
    [MemberData(nameof(Texts))]
    public void Nothing_lies_over_anything_else_whatever_is_written(string what, string job)
    {
        var read = Job.Read(job).OrThrow();
        foreach (var options in new DrawingOptions[] { new(), new() { Text = TextSize.Large }, new() { Page = Page.Fit, Words = Words.British } })
            Assert.Equal("", string.Join('\n', Clearance.Faults(read.Draw(View.Pair, options).Scene).Select(f => $"{what}, {options.Text}, {options.Page}: {f}")));
        Assert.Equal("", string.Join('\n', Clearance.Faults(read.Draw(View.Overlay).Scene).Select(f => $"{what}, overlay: {f}")));
    }

    [Theory]
    [MemberData(nameof(Texts))]
    public void All_stands_within_the_frame(string what, string job)
    {
        var scene = Job.Read(job).OrThrow().Draw().Scene;
        Box frame = new(80, 40, scene.Width - 40, scene.Height - 40);
        foreach (var group in scene.Groups.Where(g => !g.AriaHidden))
            Assert.All(group.Shapes, s => Assert.True(frame.Contains(s.Bounds, 1.5), $"{what}: {group.Id} {string.Join(' ', group.Classes)} {s.Bounds}"));
    }

    // What is cut short on the sheet is told whole to whoever cannot see it.
    [Fact]
    public void A_name_that_is_cut_short_is_kept_whole()
    {
        var texts = Job.Read(Horn.Replace("H1: horn, 6 V, 8 A", $"H1: horn, '{Ninety} {Ninety}', 6 V, 8 A", StringComparison.Ordinal)).OrThrow().Draw(View.Before).Scene.Groups.SelectMany(g => g.Shapes).OfType<TextShape>();
        Assert.All(texts.Where(t => t.Text.EndsWith('…')), t => Assert.Equal($"{Ninety} {Ninety}", t.Whole));
    }

    // A lamp a change, each on a fuse of its own.
    private static string Lamps(int count)
    {
        var numbers = Enumerable.Range(1, count / 3).Select(n => n.ToString(CultureInfo.InvariantCulture)).ToArray();
        return "hotside: 1\ntitle: Lamps\nsystem: 12 V, negative ground, sizes in AWG\nparts:\n  G1: battery, 12 V\n  X1: feed-rail, Feed\n"
            + string.Concat(numbers.Select(n => $"  E{n}: lamp, Lamp {n}, 12 V, 5 W\n")) + "wires:\n  w1: G1.pos to X1, 6 RD\n  w2: G1.neg to chassis, 6 BK\n"
            + string.Concat(numbers.Select(n => $"  a{n}: X1 to E{n}.1, 16 RD\n  b{n}: E{n}.2 to chassis, 16 BK\n"))
            + "alteration:\n  title: A fuse each\n  changes:\n"
            + string.Concat(numbers.Select(n => $"    - fit F{n}: fuse, 2 A, 1 on X1\n    - move a{n}: X1 to F{n}.2\n    - replace E{n}: lamp, 12 V, 10 W\n"));
    }
}
