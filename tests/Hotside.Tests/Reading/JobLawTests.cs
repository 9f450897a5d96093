using System.Text.RegularExpressions;
using Hotside.Circuits;
using Hotside.Studies;
using Hotside.Tests.Support;

namespace Hotside.Tests.Reading;

/// <summary>What of a job changes when its lines stand in another order, its ids are others, or its polarity is the other one: nothing but that.</summary>
public partial class JobLawTests
{
    public static TheoryData<string> Files => [.. JobFiles.All.Select(f => "jobs/" + f), .. GalleryFiles];

    private static IEnumerable<string> GalleryFiles => Directory.EnumerateFiles(Repository.Path("gallery"), "job.yaml", SearchOption.AllDirectories)
        .Select(f => "gallery/" + Path.GetRelativePath(Repository.Path("gallery"), f).Replace('\\', '/')).Order(StringComparer.Ordinal);

    private static Job Read(string file) => Job.Read(file.StartsWith("jobs/", StringComparison.Ordinal)
        ? JobFiles.Text(file["jobs/".Length..]) : File.ReadAllText(Repository.Path(file.Split('/')))).OrThrow();

    // The order of lines decides where things stand in a drawing and which of several equal causes a text names first; not what is true.
    [Theory]
    [MemberData(nameof(Files))]
    public void Parts_and_wires_in_another_order_change_no_verdict_no_number_and_no_finding(string file)
    {
        var job = Read(file);
        var turned = Job.Read(LinesTurned(job.ToYaml())).OrThrow();
        Assert.Equal(Told(Job.Read(job.ToYaml()).OrThrow(), l => l), Told(turned, l => l));
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Parts_and_wires_in_another_order_change_no_size(string file)
    {
        string text = Read(file).ToYaml();
        static string[] Sizes(Job job) => [.. new[] { job.Sizes.Before, job.Sizes.After }.SelectMany(s => s.Conductors.Select(c => $"{c.Conductor.Id} {c.SizeNeeded} {c.Binding} {c.Verdict}").Order(StringComparer.Ordinal))];
        Assert.Equal(Sizes(Job.Read(text).OrThrow()), Sizes(Job.Read(LinesTurned(text)).OrThrow()));
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Other_ids_change_nothing_but_the_ids(string file)
    {
        string text = Read(file).ToYaml();
        var job = Job.Read(text).OrThrow();
        string[] ids = [.. job.Alteration.Before.Parts.Concat(job.Alteration.After.Parts).Select(p => p.Id), .. job.Alteration.Before.Conductors.Concat(job.Alteration.After.Conductors).Select(c => c.Id)];
        // Conditions that parts share keep their names, though a part may bear one too.
        string[] shared = [.. job.Alteration.Before.Parts.Concat(job.Alteration.After.Parts).SelectMany(p => p.Kind.Actuators).Where(a => a.IsShared).Select(a => a.Name)];
        var names = ids.Distinct().Where(i => !shared.Contains(i)).Select((id, i) => (id, Now: $"Q{999 - i}x")).ToDictionary(p => p.id, p => p.Now, StringComparer.Ordinal);
        string Renamed(string line) => Word().Replace(line, m => names.GetValueOrDefault(m.Value, m.Value));
        var renamed = Job.Read(Renamed(text)).OrThrow();
        Assert.Equal(Told(job, Renamed), Told(renamed, line => line));
    }

    // Every source and every part that passes current one way is turned round, and the other pole is grounded. In an isolated system no pole is, so there is nothing to turn.
    [Theory]
    [MemberData(nameof(Files))]
    public void The_other_polarity_changes_no_verdict_and_no_finding(string file)
    {
        var job = Read(file);
        foreach (var circuit in new[] { job.Alteration.Before, job.Alteration.After }.Where(c => c.System.Ground != Ground.Isolated))
            Assert.Equal(Told(CircuitStudy.Of(circuit), l => l), Told(CircuitStudy.Of(Mirrored(circuit)), l => l));
    }

    // Who writes by the mark of another maker says the same. A plus or a minus stamped on a part tells more than a number.
    [Theory]
    [MemberData(nameof(Files))]
    public void Terminals_by_other_of_their_marks_change_no_verdict_no_number_and_no_finding(string file)
    {
        var job = Read(file);
        var circuits = new[] { job.Alteration.Before, job.Alteration.After };
        string Marked(Match end) => circuits.SelectMany(c => c.Parts).Where(p => p.Id == end.Groups[1].Value).Select(p => p.Kind.Terminals.FirstOrDefault(t => t.Name == end.Groups[2].Value)?.Aliases).ToArray() is [{ } first, ..] all
            && first.FirstOrDefault(a => a is not ("+" or "-" or "pos" or "neg") && all.All(k => k?.Contains(a) == true)) is { } other ? $"{end.Groups[1].Value}.{other}" : end.Value;
        string text = job.ToYaml(), marked = WrittenEnd().Replace(text, Marked);
        Assert.Equal(Told(Job.Read(text).OrThrow()), Told(Job.Read(marked).OrThrow()));

        static string[] Told(Job job) =>
        [
            .. new[] { job.Study.Before, job.Study.After }.SelectMany(s => JobLawTests.Told(s, l => l).Concat(s.Settings.SelectMany(t => t.Figures.Elements.Select(e => $"{t.Setting.Name} {e.Part.Id} {e.Element.Name} {e.Current.Amperes:F6}")))),
            .. new[] { job.Sizes.Before, job.Sizes.After }.SelectMany(s => s.Conductors.Select(c => $"{c.Conductor.Id} {c.SizeNeeded} {c.Binding} {c.Verdict}")),
            .. job.Findings.Select(f => $"finding {f.Code} {string.Join(' ', f.Items)}"),
        ];
    }

    [GeneratedRegex(@"\b([\w-]+)\.([\w+-]+)")]
    private static partial Regex WrittenEnd();

    // Names are changed before lists are put into order, for what is sorted by name stands elsewhere under another.
    private static string[] Told(Job job, Func<string, string> named) =>
    [
        .. Told(job.Study.Before, named).Select(t => "before " + t).Concat(Told(job.Study.After, named).Select(t => "after " + t))
            .Concat(Tests.Alterations.ChangeDump.Of(job.Alteration).Split('\n').Select(c => "change " + named(c)))
            .Concat(job.Findings.Select(f => $"finding {f.Code} {InOrder(f.Items, named)}")).Order(StringComparer.Ordinal),
    ];

    private static IEnumerable<string> Told(CircuitStudy study, Func<string, string> named) =>
        study.Loads.Select(l => $"{named(l.Name)}: {l.Side} {Sorted(l.Control, named)} {l.StringSide} {l.IsMomentary} {l.IsInRace} {Sorted(l.Sneaks, named)} {InOrder(l.Chain, named)}")
            .Concat(study.Findings.Select(f => $"{f.Code} {InOrder(f.Items, named)}")).Order(StringComparer.Ordinal);

    private static string Sorted(Control? control, Func<string, string> named) => control is null ? "-"
        : string.Join(" | ", control.Any.Select(c => string.Join(" & ", c.All.Select(s => $"{named(s.Variable.Part ?? "")} {s.Variable.Actuator.Name} {string.Join('/', s.Positions)}").Order(StringComparer.Ordinal))).Order(StringComparer.Ordinal));

    private static string InOrder(IEnumerable<string> ids, Func<string, string> named) => string.Join(' ', ids.Select(named).Order(StringComparer.Ordinal));

    // Within parts and within wires, last first.
    private static string LinesTurned(string text)
    {
        string[] lines = text.Split('\n');
        foreach (string section in new[] { "parts:", "wires:" })
        {
            int first = Array.IndexOf(lines, section) + 1, end = first;
            while (end < lines.Length && lines[end].StartsWith("  ", StringComparison.Ordinal)) end++;
            if (first > 0) Array.Reverse(lines, first, end - first);
        }
        return string.Join('\n', lines);
    }

    internal static Circuit Mirrored(Circuit circuit) => new(
        circuit.System with { Ground = circuit.System.Ground == Ground.Positive ? Ground.Negative : Ground.Positive },
        [.. circuit.Parts.Select(p => new Part(p.Id, p.Spec with { Kind = p.Kind with { Elements = [.. p.Kind.Elements.Select(Mirrored)] } }))], circuit.Conductors, circuit.Settings);

    // What holds a terminal's volts holds those of the same terminal.
    private static Element Mirrored(Element element) =>
        (element.IsSource && !element.TakesEitherPolarity) || element.Directs
            ? element with { From = element.To, To = element.From, Traits = element.Type == ElementType.Dropper ? element.Traits ^ ElementTraits.HoldsFirst : element.Traits } : element;

    [GeneratedRegex(@"[\w-]+")]
    private static partial Regex Word();
}
