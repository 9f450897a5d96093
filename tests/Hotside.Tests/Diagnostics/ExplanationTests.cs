using Hotside.Diagnostics;
using Hotside.Faults;
using Hotside.Kinds;
using Hotside.Tests.Support;

namespace Hotside.Tests.Diagnostics;

/// <summary>Every code is explained, and the lines of its explanation bring it about.</summary>
public class ExplanationTests
{
    public static TheoryData<string> Codes => [.. DiagnosticKind.All.Select(k => k.Code)];

    // No example could show these; each is brought about here or, the last two, where the studies are tested.
    private static readonly Dictionary<string, Func<string>> Large = new()
    {
        ["HS1002"] = () => new string('x', 2_000_001),
        ["HS1003"] = () => "x: " + new string('[', 40) + new string(']', 40) + "\n",
        ["HS1014"] = () => "hotside: 1\ntitle: " + new string('x', 10_001) + "\n",
        // A ring of relays, each fed over the contact of the one before that opens when it pulls in.
        ["HS3010"] = () => "parts:\n" + string.Concat(Enumerable.Range(1, 11).Select(i => $"  K{i}: relay-changeover, 6 V, coil 0.2 A, 30 on X1\n"))
            + "wires:\n" + string.Concat(Enumerable.Range(1, 11).Select(i => $"  w{i + 20}: K{i}.87a to K{(i % 11) + 1}.86, 16 BK\n  w{i + 40}: K{i}.85 to chassis, 16 BK\n")),
        ["HS1015"] = () => "parts: [" + string.Concat(Enumerable.Repeat("a,", 210_000)) + "]",
    };

    private static readonly string[] Elsewhere = ["HS1201", "HS3007", "HS3018", "HS3019", "HS3406", "HS4301", "HS4302", "HS4303", "HS4304", "HS4305"];

    [Theory]
    [MemberData(nameof(Codes))]
    public void A_code_says_what_it_means_and_what_to_do(string code)
    {
        var kind = DiagnosticKind.Find(code)!;
        Assert.EndsWith(".", kind.Meaning, StringComparison.Ordinal);
        Assert.EndsWith(".", kind.Remedy, StringComparison.Ordinal);
        Assert.NotEqual(kind.Meaning, kind.Remedy);
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void The_example_of_a_code_is_told_that_code(string code)
    {
        string example = DiagnosticKind.Find(code)!.Example;
        if (example.Length == 0 && Elsewhere.Contains(code)) return;
        string text = example.Length > 0 ? Unescaped(example) + "\n" : Large[code]();
        var read = SeveralTexts.Read(text);
        IReadOnlyCollection<Diagnostic> told = read.Job is not { } job ? read.Diagnostics
            // Sizes and faults have findings of their own, for who asks.
            : code.StartsWith("HS42", StringComparison.Ordinal) ? [.. job.Findings, .. job.WorkOrder.Findings]
            : code.StartsWith("HS31", StringComparison.Ordinal) ? [.. job.Sizes.After.Findings, .. CircuitFaults.OfEach(job.Sizes.After).Findings] : job.Findings;
        Assert.True(told.Any(d => d.Code == code), $"{code} is not told, but:\n{string.Join('\n', told)}\nof\n{HornJob.With(text)[..Math.Min(2000, HornJob.With(text).Length)]}");
    }

    [Fact]
    public void A_kind_file_without_a_name_is_told_so() =>
        Assert.Contains("HS1201", Assert.Throws<ArgumentException>(() => Catalogue.Standard.WithKind("terminals:\n  1: top\n")).Message, StringComparison.Ordinal);

    [Fact]
    public void A_code_is_found_in_any_case_and_an_unknown_one_is_not()
    {
        Assert.Equal("HS1104", DiagnosticKind.Find("hs1104")!.Code);
        Assert.Null(DiagnosticKind.Find("HS0000"));
    }

    [Theory]
    [InlineData("HS1104", DiagnosticArea.Reading)]
    [InlineData("HS2001", DiagnosticArea.Circuit)]
    [InlineData("HS3001", DiagnosticArea.Study)]
    [InlineData("HS4001", DiagnosticArea.Alteration)]
    public void A_code_says_what_it_is_about(string code, DiagnosticArea area) => Assert.Equal(area, DiagnosticKind.Find(code)!.Area);

    private static string Unescaped(string text) => text.Replace("\\t", "\t", StringComparison.Ordinal).Replace("\\u0007", "\u0007", StringComparison.Ordinal);
}
