using System.Text.RegularExpressions;
using Hotside.Diagnostics;
using Hotside.Tests.Support;

namespace Hotside.Tests.Checks;

/// <summary>Every row of an inspector's list has an answer: a code that exists, or the reason why there is none.</summary>
public partial class RowTests
{
    private static readonly (int Row, string Answer)[] Rows = [.. File.ReadLines(Repository.Path("tests", "Hotside.Tests", "Checks", "rows.txt"))
        .Where(l => !l.StartsWith('#')).Select(l => Line().Match(l)).Select(m => (int.Parse(m.Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture), m.Groups[3].Value))];

    [Fact]
    public void Each_of_the_seventy_rows_stands_once() => Assert.Equal(Enumerable.Range(1, 70), Rows.Select(r => r.Row));

    [Fact]
    public void An_answer_is_codes_that_exist_or_a_reason() => Assert.All(Rows, r => Assert.True(
        Code().Count(r.Answer) > 0 ? Code().Matches(r.Answer).All(c => DiagnosticKind.Find(c.Value) is not null) : r.Answer.StartsWith("none: ", StringComparison.Ordinal),
        $"row {r.Row}: {r.Answer}"));

    [Fact]
    public void Every_check_serves_a_row() => Assert.Empty(
        DiagnosticKind.All.Where(k => k.Code.StartsWith("HS33", StringComparison.Ordinal) && k != Acceptance.Idle).Select(k => k.Code).Except(Rows.SelectMany(r => Code().Matches(r.Answer)).Select(m => m.Value)));

    [Fact]
    public void A_code_bears_the_number_of_its_row() => Assert.All(
        Rows.SelectMany(r => Code().Matches(r.Answer).Select(c => (r.Row, c.Value))).Where(p => p.Value.StartsWith("HS33", StringComparison.Ordinal) && string.CompareOrdinal(p.Value, "HS3380") < 0),
        p => Assert.True(p.Value == $"HS33{p.Row:00}" || p is { Row: 41 or 49, Value: "HS3306" }));

    [GeneratedRegex(@"^(\d+) ([^|]+) \| (.+)$")]
    private static partial Regex Line();

    [GeneratedRegex(@"HS\d{4}")]
    private static partial Regex Code();
}
