using System.Text;
using System.Text.RegularExpressions;
using Hotside.Studies;

namespace Hotside.Tests.Studies;

public partial class StudyLawTests
{
    private static IEnumerable<string> Corpus => TwelveCircuits.All.Select(c => c.Text).Concat(Enumerable.Range(0, 60).Select(GeneratedCircuit.Of));

    [Fact]
    public void Turning_the_battery_round_moves_no_load_to_the_other_side()
    {
        foreach (string text in Corpus.Where(t => t.Contains("negative", StringComparison.Ordinal)).Concat(Corpus.Where(t => t.Contains("positive", StringComparison.Ordinal))))
        {
            // One-way parts are turned as well: they mind the polarity, all others must not.
            string turned = TurnOneWayParts(text.Contains("negative", StringComparison.Ordinal)
                ? text.Replace("negative", "positive", StringComparison.Ordinal) : text.Replace("positive", "negative", StringComparison.Ordinal));
            turned = Swap(turned, @"\bG\d+\.(pos|neg)\b", "pos", "neg");
            Assert.Equal(Verdicts(TestCircuit.Study(text)), Verdicts(TestCircuit.Study(turned)));
        }
    }

    [Fact]
    public void Other_names_and_another_order_of_lines_change_nothing_but_the_order()
    {
        foreach (string text in Corpus)
        {
            string[] lines = [.. text.Split('\n').Select(l => l.Trim())];
            string[] parts = [.. lines[1..].Where(l => !l.StartsWith('-')).Reverse()], wires = [.. lines.Where(l => l.StartsWith('-')).Reverse()];
            string renamed = Id().Replace(string.Join('\n', [lines[0], .. parts, .. wires]), m => "z" + m.Value);
            string[] expected = Verdicts(TestCircuit.Study(text)), actual = Verdicts(TestCircuit.Study(renamed));
            Assert.Equal(expected.Order(StringComparer.Ordinal), actual.Select(v => Renamed().Replace(v, "$1")).Order(StringComparer.Ordinal));
        }
    }

    [Fact]
    public void A_spare_wire_changes_nothing()
    {
        foreach (string text in Corpus)
            Assert.Equal(Verdicts(TestCircuit.Study(text)), Verdicts(TestCircuit.Study(text + "\n- chassis to free\n- " + Battery().Match(text).Value + ".pos to free")));
    }

    [Fact]
    public void Several_threads_find_the_same()
    {
        var circuits = Corpus.Select(TestCircuit.Read).ToArray();
        var token = TestContext.Current.CancellationToken;
        string[] alone = [.. circuits.Select(c => Everything(CircuitStudy.Of(c, token)))];
        string[][] together = new string[4][];
        Parallel.For(0, together.Length, i => together[i] = [.. circuits.Select(c => Everything(CircuitStudy.Of(c, token)))]);
        Assert.All(together, t => Assert.Equal(alone, t));
    }

    [Fact]
    public void A_study_that_is_no_longer_wanted_ends()
    {
        using CancellationTokenSource source = new();
        source.Cancel();
        Assert.Throws<OperationCanceledException>(() => CircuitStudy.Of(TestCircuit.Read(TwelveCircuits.Race), source.Token));
    }

    // What is told of each load and does not depend on the order of the file.
    private static string[] Verdicts(CircuitStudy study) =>
        [.. study.Loads.Select(l => $"{l.Name} {l.Side} {Sorted(l.Control)} {l.StringSide} {l.DeadBecause} {l.IsInRace} {l.IsMomentary} {Sorted(l.Sneaks)} {Sorted(l.Braked)} {Sorted(l.Holds?.Released)}")];

    private static string Sorted(Control? control) => control is null ? "-"
        : string.Join(" | ", control.Any.Select(c => string.Join(" & ", c.All.Select(s => (s.Variable.Part is { } p ? p + " " : "") + s.Variable.Actuator.Name + " " + string.Join("/", s.Positions)).Order(StringComparer.Ordinal))).Order(StringComparer.Ordinal));

    private static string Everything(CircuitStudy study)
    {
        StringBuilder text = new();
        foreach (var l in study.Loads)
            text.Append(l.Name).Append(' ').Append(l.Side).Append(' ').Append(l.Control).Append(' ').AppendJoin(',', l.Chain).Append(' ').AppendJoin(',', l.SwitchedBy).Append(' ')
                .AppendJoin(',', l.InSeriesWith).Append(' ').AppendJoin(',', l.Paths.SelectMany(p => p.Hot.Concat(p.Ground))).Append('\n');
        return text.AppendJoin('\n', study.Findings).ToString();
    }

    private static string Swap(string text, string pattern, string a, string b) =>
        Regex.Replace(text, pattern, m => m.Value.EndsWith(a, StringComparison.Ordinal) ? m.Value[..^a.Length] + b : m.Value[..^b.Length] + a);

    private static string TurnOneWayParts(string text)
    {
        foreach (Match part in OneWay().Matches(text))
            foreach (var (a, b) in new[] { ("1", "2"), ("A", "K"), ("in", "out") })
                text = Swap(text, $@"\b{part.Groups[1].Value}\.({a}|{b})\b", a, b);
        return text;
    }

    [GeneratedRegex(@"G\d+(?= battery)")]
    private static partial Regex Battery();

    [GeneratedRegex(@"(\w+) (?:led-lamp|diode|limiter)\b")]
    private static partial Regex OneWay();

    [GeneratedRegex(@"\b[A-Z]\d+\b(?!\w)")]
    private static partial Regex Id();

    [GeneratedRegex(@"z([A-Z]\d+)")]
    private static partial Regex Renamed();
}
