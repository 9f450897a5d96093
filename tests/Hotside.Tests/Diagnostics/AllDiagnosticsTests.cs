using System.Text.RegularExpressions;
using Hotside.Diagnostics;
using Hotside.Tests.Support;

namespace Hotside.Tests.Diagnostics;

public partial class AllDiagnosticsTests
{
    private static IEnumerable<DiagnosticKind> All => DiagnosticKind.All;

    [Fact]
    public void Every_code_is_used_once() => Assert.Equal(All.Select(k => k.Code).Distinct(), All.Select(k => k.Code));

    [Fact]
    public void Every_code_begins_with_HS_and_has_four_digits() => Assert.All(All, k => Assert.Matches(@"^HS[1-5]\d{3}$", k.Code));

    [Fact]
    public void Every_message_can_be_filled_in() => Assert.All(All, k => Assert.DoesNotMatch(@"\{\d\}", k.At(null, "a", "b", "c", "d", "e", "f").Message));

    [Fact]
    public void The_list_holds_every_kind_that_stands_in_the_code()
    {
        string source = string.Concat(Directory.EnumerateFiles(Repository.Path("src", "Hotside"), "*.cs", SearchOption.AllDirectories).Order(StringComparer.Ordinal).Select(File.ReadAllText));
        Assert.Equal(Code().Matches(source).Select(m => m.Value.Trim('"')).Distinct().Order(StringComparer.Ordinal), All.Select(k => k.Code));
    }

    [Fact]
    public void The_list_of_diagnostics_is_approved() => Approve.Text(
        string.Concat(All.Select(k => $"{k.Code} {k.Severity.ToString().ToLowerInvariant(),-7} {k.Title}: {k.Message}{(k.Source is null ? "" : $" [{k.Source}]")}\n")),
        "tests", "Hotside.Tests", "Diagnostics", "all-diagnostics.approved.txt");

    [GeneratedRegex("\"HS\\d{4}\"")]
    private static partial Regex Code();
}
