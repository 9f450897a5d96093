using System.Text.RegularExpressions;
using Hotside.Diagnostics;
using Hotside.Tests.Support;

namespace Hotside.Tests.Checks;

/// <summary>Sheets drawn by hand that a reader found faults in: every one of them is found.</summary>
public partial class SheetTests
{
    private static readonly string Folder = Repository.Path("tests", "Hotside.Tests", "Checks", "sheets");

    public static TheoryData<string> Sheets => [.. Directory.EnumerateFiles(Folder, "*.yaml").Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Sheets))]
    public void Every_fault_that_was_left_in_is_found(string sheet)
    {
        string text = File.ReadAllText(Path.Combine(Folder, sheet));
        var findings = Job.Read(text).OrThrow().Findings;
        var wanted = Find().Matches(text).Select(m => (Code: m.Groups[1].Value, Items: m.Groups[2].Value.Split(' '))).ToArray();
        Assert.NotEmpty(wanted);
        Assert.All(wanted, w => Assert.True(findings.Any(f => f.Code == w.Code && w.Items.All(f.Items.Contains)), $"{w.Code} of {string.Join(' ', w.Items)} is not found, but:\n{string.Join('\n', findings.Select(f => $"{f.Code} [{string.Join(' ', f.Items)}] {f.Message}"))}"));
    }

    // What is grave and is no fault of the sheet would be a false alarm.
    [Theory]
    [MemberData(nameof(Sheets))]
    public void Nothing_grave_is_told_that_was_not_left_in(string sheet)
    {
        string text = File.ReadAllText(Path.Combine(Folder, sheet));
        string[] wanted = [.. Find().Matches(text).Select(m => m.Groups[1].Value)];
        Assert.Empty(Job.Read(text).OrThrow().Findings.Where(f => f.Severity >= Severity.Error && !wanted.Contains(f.Code)).Select(f => f.ToString()));
    }

    [GeneratedRegex(@"^# find (HS\d{4}): (.+)$", RegexOptions.Multiline)]
    private static partial Regex Find();
}
