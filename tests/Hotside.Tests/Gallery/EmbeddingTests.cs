using System.Diagnostics;
using System.Net;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Hotside.Tests.Support;

namespace Hotside.Tests.Gallery;

/// <summary>The programs of the gallery are compiled and run as a reader would, one after the other: builds of one library do not run side by side.</summary>
public sealed partial class EmbeddingTests : IDisposable
{
    private static readonly string Source = Repository.Path("gallery", "embedding");

    // What the programs write goes here, beside the horn that they read.
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("hotside");

    public EmbeddingTests()
    {
        foreach (string place in new[] { "horn", "embedding/gallery/horn" })
        {
            Directory.CreateDirectory(Path.Combine(folder.FullName, place));
            File.Copy(Repository.Path("gallery", "horn", "job.yaml"), Path.Combine(folder.FullName, place, "job.yaml"));
        }
    }

    [Fact]
    public void Every_program_compiles_runs_and_does_what_its_head_says()
    {
        Assert.Equal("reversing-lamp.svg, 297 x 210 mm\n", Run("job-to-svg"));
        Assert.Superset(new HashSet<string>(["G1", "F1", "S1", "E1", "w1", "w5"]), References("reversing-lamp.svg"));

        Assert.Equal("1: F1\n2: w1\n3: w5\n4: w6\n5: G1\n", Run("circuit-in-code"));
        Assert.Superset(new HashSet<string>(["F1", "H1", "w5"]), References("horn-pair.svg"));

        Assert.Equal(
            """
            before: H1 is ground-switched by S1; on when S1 pressed
            after: H1 is hot-switched by K1; on when S1 pressed
            after: K1 is ground-switched by S1; on when S1 pressed

            """, Run("sides"));

        Assert.Equal("E1: ground-switched by E1; on when E1 on\n", Run("own-kind"));
        Assert.Superset(new HashSet<string>(["E1", "F1"]), References("spot-lamp.svg"));

        Run("theme");
        Assert.Contains("#20242b", File.ReadAllText(Written("horn-slate.svg")), StringComparison.Ordinal);
        Assert.Equal([0x89, (byte)'P', (byte)'N', (byte)'G'], File.ReadAllBytes(Written("horn-slate.png")).Take(4));

        // The horn's symbol after the work, as the table has it.
        string table = Run("hit-test");
        var place = HornAfter().Match(table);
        Assert.Contains("at that place: H1 (After)", Run("hit-test", place.Groups[1].Value, place.Groups[2].Value), StringComparison.Ordinal);

        Assert.Contains("14 AWG GN: 0.9 m to buy\n", Run("wire-table"), StringComparison.Ordinal);
        Assert.StartsWith("no.,wire,", File.ReadAllText(Written("horn-wires.csv")), StringComparison.Ordinal);

        Assert.Equal("H1: hot-switched by K1; on when S1 pressed\nK1: ground-switched by S1; on when S1 pressed\nH1 was ground-switched\n", Run("five-lines"));
    }

    [Fact]
    public void The_readme_s_five_lines_are_those_that_run()
    {
        string program = File.ReadAllText(Path.Combine(Source, "five-lines.cs")), readme = File.ReadAllText(Repository.Path("README.md"));
        Assert.Contains("```csharp\n" + Lines().Match(program).Groups[1].Value + "```", readme, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_endpoint_streams_a_drawing_or_says_what_is_wrong()
    {
        using var process = Start("web-endpoint", "--urls", "http://127.0.0.1:0");
        try
        {
            string address = "";
            while (address.Length == 0 && await process.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken) is { } line) address = Address().Match(line).Value;
            Assert.NotEqual("", address);
            using var client = new HttpClient { BaseAddress = new Uri(address) };
            using var job = new StringContent(await File.ReadAllTextAsync(Repository.Path("gallery", "horn", "job.yaml"), TestContext.Current.CancellationToken));
            using var drawn = await client.PostAsync(new Uri("/pair.svg", UriKind.Relative), job, TestContext.Current.CancellationToken);
            Assert.Equal("image/svg+xml", drawn.Content.Headers.ContentType?.MediaType);
            Assert.Equal(await File.ReadAllTextAsync(Repository.Path("gallery", "horn", "pair.svg"), TestContext.Current.CancellationToken), await drawn.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
            using var none = new StringContent("hotside: 1\nparts:\n  H1: hron\n");
            using var refused = await client.PostAsync(new Uri("/before.png", UriKind.Relative), none, TestContext.Current.CancellationToken);
            Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.StatusCode);
            Assert.Contains("HS1", await refused.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
        }
        finally
        {
            process.Kill(entireProcessTree: true);
        }
    }

    [Fact]
    public void The_readme_names_every_program_and_no_other() =>
        Assert.Equal(
            Directory.GetFiles(Source, "*.cs").Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal),
            Link().Matches(File.ReadAllText(Path.Combine(Source, "README.md"))).Select(m => m.Groups[1].Value).Order(StringComparer.Ordinal));

    public void Dispose() => folder.Delete(recursive: true);

    private string Written(string name) => Path.Combine(folder.FullName, "embedding", name);

    private HashSet<string> References(string svg) =>
        [.. XDocument.Load(Written(svg)).Descendants().Select(e => e.Attribute("data-ref")?.Value).OfType<string>()];

    private string Run(string program, params string[] arguments) => OutsideProgram.Finish(Start(program, arguments));

    private Process Start(string program, params string[] arguments) =>
        OutsideProgram.Start(Path.Combine(folder.FullName, "embedding"), "dotnet", ["run", Path.Combine(Source, program + ".cs"), "--", .. arguments]);

    [GeneratedRegex(@"http://127\.0\.0\.1:\d+")]
    private static partial Regex Address();

    [GeneratedRegex(@"#region five lines\n(.*?)#endregion", RegexOptions.Singleline)]
    private static partial Regex Lines();

    [GeneratedRegex(@"After +H1 +([\d.]+) +([\d.]+)")]
    private static partial Regex HornAfter();

    [GeneratedRegex(@"\]\(([\w-]+\.cs)\)")]
    private static partial Regex Link();
}
