using System.Globalization;
using System.Text;
using Hotside.Diagnostics;
using Hotside.Tests.Support;

namespace Hotside.Tests.Checks;

/// <summary>Each check is told of the example that stands with its explanation, in words that are approved, and not of what only comes near to it.</summary>
public class CheckTests
{
    private static readonly Lazy<Dictionary<string, string>> Near = new(ReadNear);

    public static TheoryData<string> Codes => [.. DiagnosticKind.All.Where(IsCheck).Select(k => k.Code)];

    public static TheoryData<string> Rules => [.. DiagnosticKind.All.Where(k => IsCheck(k) && k != Acceptance.Idle).Select(k => k.Code)];

    [Theory]
    [MemberData(nameof(Codes))]
    public void What_only_comes_near_is_not_told(string code)
    {
        var job = SeveralTexts.Read(Near.Value[code]).OrThrow();
        Assert.DoesNotContain(job.Findings, d => d.Code == code);
    }

    [Fact]
    public void What_the_examples_are_told_is_approved()
    {
        var text = new StringBuilder();
        foreach (var kind in DiagnosticKind.All.Where(IsCheck))
            foreach (var told in SeveralTexts.Read(kind.Example + "\n").OrThrow().Findings.Where(d => d.Code == kind.Code))
                text.Append(CultureInfo.InvariantCulture, $"{told.Severity.ToString().ToLowerInvariant()} {told.Code} [{string.Join(' ', told.Items)}]: {told.Message}\n     hint: {told.Hint}\n");
        Approve.Text(text.ToString(), "tests", "Hotside.Tests", "Checks", "examples.approved.txt");
    }

    [Theory]
    [MemberData(nameof(Rules))]
    public void A_check_says_where_its_rule_is_from(string code) => Assert.NotEmpty(DiagnosticKind.Find(code)!.Source ?? "");

    private static bool IsCheck(DiagnosticKind kind) => kind.Code.StartsWith("HS33", StringComparison.Ordinal);

    private static Dictionary<string, string> ReadNear() => File.ReadAllText(Repository.Path("tests", "Hotside.Tests", "Checks", "near-misses.txt"))
        .Split("\n\n", StringSplitOptions.RemoveEmptyEntries).Where(b => !b.StartsWith('#')).Select(b => b.TrimEnd('\n').Split('\n'))
        .ToDictionary(l => l[0], l => string.Concat(l.Skip(1).Select(line => line[2..] + "\n")), StringComparer.Ordinal);
}
