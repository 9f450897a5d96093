using System.Reflection;
using System.Text.RegularExpressions;
using Hotside.Diagnostics;
using Hotside.Tests.Support;

namespace Hotside.Tests.Diagnostics;

public partial class AllDiagnosticsTests
{
    private static DiagnosticKind[] All { get; } =
    [
        .. typeof(Diagnostic).Assembly.GetTypes().SelectMany(t => t.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic))
            .Where(f => f.FieldType == typeof(DiagnosticKind)).Select(f => (DiagnosticKind)f.GetValue(null)!).OrderBy(k => k.Code, StringComparer.Ordinal),
    ];

    [Fact]
    public void Every_code_is_used_once() => Assert.Equal(All.Select(k => k.Code).Distinct(), All.Select(k => k.Code));

    [Fact]
    public void Every_code_begins_with_HS_and_has_four_digits() => Assert.All(All, k => Assert.Matches(@"^HS[1-5]\d{3}$", k.Code));

    [Fact]
    public void Every_message_can_be_filled_in() => Assert.All(All, k => Assert.DoesNotMatch(@"\{\d\}", k.At(null, "a", "b", "c", "d", "e", "f").Message));

    /// <summary>Reading and circuits only: what the checks and the lists of changes report is tested beside them.</summary>
    [Fact]
    public void Every_mistake_of_reading_is_reported_by_some_test()
    {
        string tests = string.Concat(new[] { "Notation", "Kinds", "Reading" }
            .SelectMany(f => Directory.EnumerateFiles(Repository.Path("tests", "Hotside.Tests", f), "*.cs")).Order(StringComparer.Ordinal).Select(File.ReadAllText));
        var told = Code().Matches(tests).Select(m => m.Value.Trim('"')).ToHashSet();
        Assert.Equal("", string.Join(" ", All.Select(k => k.Code).Where(c => (c[2] is '1' or '2') && !told.Contains(c))));
    }

    [Fact]
    public void The_list_of_diagnostics_is_approved() => Approve.Text(
        string.Concat(All.Select(k => $"{k.Code} {k.Severity.ToString().ToLowerInvariant(),-7} {k.Title}: {k.Message}{(k.Source is null ? "" : $" [{k.Source}]")}\n")),
        "tests", "Hotside.Tests", "Diagnostics", "all-diagnostics.approved.txt");

    [GeneratedRegex("\"HS\\d{4}\"")]
    private static partial Regex Code();
}
