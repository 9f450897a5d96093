using Hotside.Diagnostics;

namespace Hotside.Tests.Diagnostics;

public class DiagnosticPrinterTests
{
    private static readonly DiagnosticKind Unknown = new("HS9999", Severity.Error, "Unknown", "H1 has no terminal \"3\"");

    private static string Print(string line, int column, int endColumn, string? hint = null, int number = 9) =>
        DiagnosticPrinter.Print(Unknown.At(new("van-horn.yaml", number, column, number, endColumn)) with { Hint = hint }, s => s.Line == number ? line : null).Replace("\n", "⏎", StringComparison.Ordinal);

    [Fact]
    public void The_line_stands_below_with_carets_under_the_place() => Assert.Equal(
        "van-horn.yaml:9:7: error HS9999: H1 has no terminal \"3\"⏎    9 |   w1: H1.3 to chassis⏎      |       ^^^^⏎     hint: a horn has terminals 1 and 2",
        Print("  w1: H1.3 to chassis", 7, 11, "a horn has terminals 1 and 2"));

    [Fact]
    public void An_empty_place_has_one_caret() => Assert.EndsWith("|    ^", Print("  ab", 4, 4), StringComparison.Ordinal);

    [Fact]
    public void A_tab_counts_as_one_column() => Assert.EndsWith("|  a b⏎      |    ^", Print("\ta\tb", 4, 5), StringComparison.Ordinal);

    // Two columns a sign: East Asian Width W in UAX 11.
    [Fact]
    public void A_wide_sign_takes_two_columns() => Assert.EndsWith("| 汽笛 x⏎      |      ^", Print("汽笛 x", 4, 5), StringComparison.Ordinal);

    [Fact]
    public void An_emoji_takes_two_columns_and_is_not_cut() => Assert.EndsWith("| 🚗 x⏎      |    ^", Print("🚗 x", 4, 5), StringComparison.Ordinal);

    [Fact]
    public void A_mark_on_a_letter_takes_none() => Assert.EndsWith("| e\u0301x⏎      |  ^", Print("e\u0301x", 3, 4), StringComparison.Ordinal);

    [Fact]
    public void A_long_line_is_cut_on_both_sides()
    {
        string[] lines = Print(new string('a', 500) + "BAD" + new string('c', 500), 501, 504).Split('⏎');
        Assert.StartsWith("    9 | …aaa", lines[1], StringComparison.Ordinal);
        Assert.EndsWith("ccc…", lines[1], StringComparison.Ordinal);
        Assert.True(lines[1].Length < 125);
        Assert.Equal("BAD", lines[1].Substring(lines[2].IndexOf('^', StringComparison.Ordinal), lines[2].Count(c => c == '^')));
    }

    [Fact]
    public void A_long_place_is_cut() => Assert.True(Print(new string('a', 10_000), 1, 10_001).Split('⏎')[2].Length < 125);

    // Escape sequences and marks that turn a line round must not reach a terminal.
    [Fact]
    public void What_would_move_the_cursor_is_shown_as_a_sign() => Assert.DoesNotContain("\u001B", Print("a\u001B[2Jb\u202Ec", 1, 2), StringComparison.Ordinal);

    [Theory]
    [InlineData("", 1, 1)]
    [InlineData("ab", 90, 95)]
    [InlineData("🚗", 2, 3)]
    public void A_place_outside_the_line_does_no_harm(string line, int column, int endColumn) => Assert.Contains("^", Print(line, column, endColumn), StringComparison.Ordinal);

    [Fact]
    public void Without_a_text_only_the_message_is_printed() =>
        Assert.Equal("f:1:1: error HS9999: H1 has no terminal \"3\"", DiagnosticPrinter.Print(Unknown.At(new("f", 1, 1, 1, 2)), _ => null));
}
