using System.Diagnostics;
using Hotside.Diagnostics;
using Hotside.Kinds;
using Hotside.Reading;
using CsCheck;

namespace Hotside.Tests.Reading;

/// <summary>Nothing that a file says may throw, hang or fill the memory.</summary>
public class HostileInputTests
{
    private const string Job = "hotside: 1\nsystem: 6 V, positive ground, sizes in AWG\nparts:\n  G1: battery, 6 V\n  H1: horn, NAME\nwires:\n  w1: G1.neg to H1.1, 14 BK\n  w2: G1.pos to chassis\n  w3: H1.2 to chassis\n";

    private static JobReading Read(string text) => JobReader.Read("job.yaml", text, Catalogue.Standard, _ => null);

    private static string Errors(string text) => string.Join(' ', Read(text).Diagnostics.Where(d => d.Severity >= Severity.Error).Select(d => d.Code));

    public static TheoryData<string, string> Refused => new()
    {
        { "a hundred thousand brackets", new string('[', 100_000) },
        { "a hundred thousand braces", new string('{', 100_000) },
        { "brackets line by line", string.Concat(Enumerable.Repeat("[\n", 100_000)) },
        { "dashes within dashes", string.Concat(Enumerable.Repeat("- ", 50_000)) + "x" },
        { "deep maps", string.Concat(Enumerable.Range(0, 200).Select(i => new string(' ', i) + "a:\n")) },
        { "questions", string.Concat(Enumerable.Repeat("? ", 20_000)) },
        { "aliases", "a: &a [x,x,x,x,x,x,x,x,x]\nb: &b [*a,*a,*a,*a,*a,*a,*a,*a]\nc: [*b,*b,*b,*b,*b,*b,*b,*b]\n" },
        { "an alias of itself", "a: &a [*a]\n" },
        { "an unknown alias", "a: *nowhere\n" },
        { "three megabytes", new string('x', 3_000_000) },
        { "three megabytes of lines", string.Concat(Enumerable.Repeat("a: b\n", 600_000)) },
        { "a NUL", "hotside: 1\0\n" },
        { "only NULs", new string('\0', 1000) },
        { "an open quote", "title: 'never closed\n" },
        { "an open double quote", "title: \"never closed\n" },
        { "an open bracket", "title: [a, b\n" },
        { "an open brace", "parts: { G1: battery\n" },
        { "a list", "- a\n- b\n" },
        { "a text", "just words" },
        { "a closing bracket", "a: ]\n" },
        { "a directive", "%YAML 9.9\n---\na: b\n" },
        { "a tag", "a: !!python/object:os.system x\n" },
        { "a lone surrogate", "title: \uD800\n" },
        { "an escape beyond Unicode", "title: \"\\UFFFFFFFF\"\n" },
        { "a bad escape", "title: \"\\q\"\n" },
        { "nothing", "" },
        { "a byte order mark alone", "\uFEFF" },
        { "blanks", " \n \n" },
        { "a key that is a map", "{a: b}: c\n" },
        { "a key that is a list", "[a]: c\n" },
        { "a merge key", "<<: {a: b}\n" },
        { "a second line separator", "title: a\u2028b\n" },
    };

    [Theory]
    [MemberData(nameof(Refused))]
    public void What_is_no_job_file_is_refused_quickly(string what, string text)
    {
        var clock = Stopwatch.StartNew();
        var reading = Read(text);
        Assert.True(reading.Diagnostics.Any(d => d.Severity >= Severity.Error), what + " is taken for a job");
        Assert.All(reading.Diagnostics, d => Assert.NotNull(d.Span));
        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(5), $"{what} takes {clock.Elapsed}");
        foreach (var diagnostic in reading.Diagnostics.Take(50)) DiagnosticPrinter.Print(diagnostic, s => reading.Sources.GetValueOrDefault(s.File)?.Line(s.Line));
    }

    [Theory]
    [InlineData("Trompe été")]
    [InlineData("汽笛")]
    [InlineData("صفارة")]
    [InlineData("\u202Eturned\u202C")]
    [InlineData("🚗🔋")]
    [InlineData("e\u0301")]
    public void Unicode_in_a_name_passes(string name) => Assert.Equal(name, Read(Job.Replace("NAME", name, StringComparison.Ordinal)).Alteration!.Before.FindPart("H1")!.Name);

    [Fact]
    public void A_name_of_ten_thousand_characters_passes_and_a_longer_one_is_refused()
    {
        string name = new('x', 9_990);
        Assert.Equal(name, Read(Job.Replace("NAME", name, StringComparison.Ordinal)).Alteration!.Before.FindPart("H1")!.Name);
        Assert.Equal("HS1014", Errors(Job.Replace("NAME", new string('x', 10_001), StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("\r\n")]
    [InlineData("\r")]
    public void Line_ends_of_every_system_are_read(string end) => Assert.Equal("", Errors(Job.Replace("\n", end, StringComparison.Ordinal)));

    [Fact]
    public void A_byte_order_mark_is_passed_over() => Assert.Equal("", Errors("\uFEFF" + Job));

    [Fact]
    public void A_job_cut_off_anywhere_never_throws()
    {
        string text = Support.JobFiles.Text("van.yaml");
        for (int length = 0; length < text.Length; length += 37) Read(text[..length]);
    }

    // Any character of a sound job replaced by any sign that means something to YAML or to a line.
    [Fact]
    public void A_job_with_a_wrong_character_anywhere_never_throws()
    {
        string text = Support.JobFiles.Text("small/12-own-kind.yaml") + Support.JobFiles.Text("headlamps.yaml");
        const string signs = "\t\n ,.:;'\"[]{}#&*!|>%@`?-=/\\\0\u0085\uFFFF09aZ²é";
        Gen.Select(Gen.Int[0, text.Length - 1], Gen.Int[0, signs.Length - 1]).Sample(
            (at, sign) => Read(string.Concat(text.AsSpan(0, at), signs[sign].ToString(), text.AsSpan(at + 1))).Diagnostics.Length >= 0, iter: 400, seed: "0000000000001");
    }

    [Fact]
    public void Names_and_numbers_of_any_size_never_throw()
    {
        foreach (string item in new[] { new string('9', 400) + " V", "1e308 V", "6,5 V", "-6 V", "0.0.0 V", "1/0/0 AWG", "5/0 AWG", "99999x1 W", "..5 ohm", "1.. ohm", "NaN V", "∞ V", "6 V/7 V", "'", "\"", "''", "= ", " = x", "on", "in", "at", "because", "because ", ", ,", "case on", "1 on ", "x on y on z", "free", "1 free free" })
            Assert.NotNull(Read(Job.Replace("NAME", item, StringComparison.Ordinal)));
    }
}
