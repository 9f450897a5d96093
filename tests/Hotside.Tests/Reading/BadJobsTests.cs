using System.Text;
using Hotside.Tests.Support;

namespace Hotside.Tests.Reading;

/// <summary>Mistakes that a person makes, each with what it is told: what is wrong, where, and what to do.</summary>
public class BadJobsTests
{
    private static string Path(string file) => Repository.Path("tests", "Hotside.Tests", "Reading", "bad", file);

    // "=== what is wrong", then the lines; signs that an editor would hide or mend are spelt out.
    private static (string Name, string Text)[] Cases { get; } =
    [
        .. File.ReadAllText(Path("bad-jobs.txt")).ReplaceLineEndings("\n").Split("=== ", StringSplitOptions.RemoveEmptyEntries)
            .Select(c => c.Split('\n', 2)).Select(c => (c[0], c[1].Replace("␍", "\r", StringComparison.Ordinal).Replace("⟨BOM⟩", "\uFEFF", StringComparison.Ordinal).Replace("⟨NBSP⟩", "\u00A0", StringComparison.Ordinal))),
    ];

    [Fact]
    public void There_are_sixty_mistakes_and_more() => Assert.True(Cases.Length >= 60, $"{Cases.Length} mistakes");

    [Fact]
    public void What_each_mistake_is_told_is_approved()
    {
        var text = new StringBuilder();
        foreach (var (name, lines) in Cases)
        {
            var read = SeveralTexts.Read(lines);
            text.Append("=== ").Append(name).Append('\n');
            foreach (var diagnostic in read.Job?.Findings ?? read.Diagnostics) text.Append(SeveralTexts.Print(read, diagnostic)).Append('\n');
        }
        Approve.Text(text.ToString(), "tests", "Hotside.Tests", "Reading", "bad", "bad-jobs.approved.txt");
    }

    [Fact]
    public void Every_mistake_is_told_with_its_place_and_what_to_do()
    {
        foreach (var (name, lines) in Cases)
        {
            var read = SeveralTexts.Read(lines);
            var worst = (read.Job?.Findings ?? read.Diagnostics).OrderByDescending(d => d.Severity).FirstOrDefault();
            Assert.True(worst is not null, name + ": nothing is said");
            Assert.True(worst.Span is not null, name + ": no place: " + worst);
            Assert.True(worst.Hint is not null || worst.Severity == Hotside.Diagnostics.Severity.Note || SaysWhatToDo.Contains(worst.Code), name + ": no hint: " + worst);
        }
    }

    // Messages that name the cure themselves.
    private static readonly string[] SaysWhatToDo = ["HS1102", "HS1128", "HS1130", "HS1134", "HS4020", "HS4043", "HS1138"];
}
