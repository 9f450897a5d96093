using Hotside.Tests.Support;

namespace Hotside.Tests.Notation;

/// <summary>What is wrong with the file as YAML, and what YAML would pass over in silence.</summary>
public class NotationDiagnosticTests
{
    private const string Head = "hotside: 1\nsystem: 6 V, positive ground\n";
    private const string Tail = "wires:\n  w1: G1.pos to chassis\n";

    public static TheoryData<string, string, string?> Cases => new()
    {
        { "HS1022", Head + "parts:\n  G1: battery\n⟦ ⟧wires: x\n", "column 3" },
        { "HS1021", Head + "parts:\n  G1: battery\n  ⟦E1⟧ lamp\n" + Tail, "E1: …" },
        { "HS1023", "⟦-⟧ G1: battery\n", "hotside new" },
        { "HS1003", "hotside: 1\nx: " + new string('[', 32) + "⟦[⟧]" + new string(']', 32) + "\n", null },
        { "HS1004", Head + "parts:\n  G1: ⟦&a battery⟧\n" + Tail, null },
        { "HS1005", Head + "parts:\n  G1: battery\n" + Tail + "⟦---⟧\nhotside: 1\n", null },
        { "HS1006", Head + "parts:\n  G1: battery\n  ⟦G1⟧: battery\n" + Tail, "rename" },
        { "HS1007", Head + "parts:\n⟦\t⟧G1: battery\n", "spaces" },
        { "HS1008", Head + "parts:\n  G1: bat⟦\u0007⟧tery\n", "take it out" },
        { "HS1009", Head + "parts:\n  G1: battery, Lamp ⟦#2⟧\n" + Tail, "two spaces" },
        { "HS1010", Head + "parts:\n  G1: battery, Main⟦:⟧ left\n" + Tail, "quotes" },
        { "HS1011", Head + "parts:\n  G1: ⟦'30', rail⟧\n" + Tail, "quotes" },
        { "HS1012", Head + "parts:\n  G1: battery\n  S1: { kind: push-button, name: Horn, ⟦left⟧ }\n" + Tail, "lines of their own" },
        { "HS1013", "⟦#⟧ nothing but a comment", "hotside new" },
        { "HS1014", Head + "title: ⟦" + new string('x', 10_001) + "⟧\nparts:\n  G1: battery\n", null },
        { "HS1016", Head + "parts:\n  G1: ⟦!!str battery⟧\n" + Tail, null },
        { "HS1017", Head + "parts:\n  G1: battery, ⟦6,5 V⟧\n" + Tail, "6.5 V" },
        { "HS1017", Head + "parts:\n  G1: battery\n  N1: reducer, ⟦out 6,5 V⟧\n" + Tail, "out 6.5 V" },
        { "HS1018", Head + "parts:\n  G1: battery, ⟦'⟧Main, 6 V\n" + Tail, "behind the name" },
        { "HS1019", Head + "parts:\n  G1: battery, 'Main, left' ⟦6 V⟧\n" + Tail, "comma" },
        { "HS1020", Head + "parts:\n  G1: battery, 6 V⟦,⟧\n" + Tail, "comma" },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_mistake_is_reported_at_its_place_and_nothing_else_is(string code, string marked, string? hint) => Marked.Expect(code, marked, hint);

    [Theory]
    [InlineData("HS1002", 2_000_001)]
    public void A_file_too_large_is_refused(string code, int length) => Assert.Equal(code, Hostile(new string('x', length)));

    [Fact]
    public void A_file_with_too_many_texts_is_refused() =>
        Assert.Equal("HS1015", Hostile("parts: [" + string.Concat(Enumerable.Repeat("a,", 210_000)) + "]"));

    private static string Hostile(string text) =>
        string.Join(' ', Hotside.Reading.JobReader.Read("job.yaml", text, Hotside.Kinds.Catalogue.Standard, _ => null).Diagnostics.Select(d => d.Code));
}
