using Hotside.Tests.Support;

namespace Hotside.Tests.Kinds;

/// <summary>What is wrong with a kind that a job file brings along.</summary>
public class KindDiagnosticTests
{
    private const string Head = "hotside: 1\nsystem: 6 V, positive ground\nparts:\n  G1: battery\nwires:\n  w1: G1.pos to chassis\nkinds:\n";
    private const string Own = Head + "  own:\n";
    private const string Two = Own + "    terminals: { 1: top, 2: bottom }\n";

    public static TheoryData<string, string, string?> Cases => new()
    {
        { "HS1202", Own + "    ⟦leter⟧: K\n", "did you mean \"letter\"" },
        { "HS1203", Own + "    terminals: ⟦[1, 2]⟧\n", null },
        { "HS1204", Own + "    like: ⟦relayy⟧\n", "did you mean \"relay\"" },
        { "HS1205", Own + "    terminals:\n      1: ⟦tip⟧, feed\n", "top, bottom" },
        { "HS1206", Own + "    terminals:\n      ⟦1 a⟧: top\n", null },
        { "HS1207", Two + "    elements:\n      a: ⟦lamp⟧\n", null },
        { "HS1208", Two + "    elements:\n      a: ⟦lump⟧, 1 to 2\n", "did you mean \"lamp\"" },
        { "HS1209", Two + "    elements:\n      a: lamp, ⟦1 to 3⟧\n", null },
        { "HS1210", Two + "    elements:\n      a: lamp, 1 to 2, ⟦oneway⟧\n", "did you mean \"one way\"" },
        { "HS1211", Two + "    elements:\n      a: contact, 1 to 2, ⟦when lever on⟧\n", null },
        { "HS1212", Two + "    actuators: { lever: off / on }\n    elements:\n      a: contact, 1 to 2, ⟦when lever onn⟧\n", "did you mean \"on\"" },
        { "HS1213", Two + "    actuators:\n      lever: ⟦on⟧\n", null },
        { "HS1214", Two + "    elements: { a: 'lamp, 1 to 2' }\n    ratings:\n      ⟦coil X⟧: a\n", null },
        { "HS1215", Two + "    elements: { a: 'lamp, 1 to 2' }\n    ratings:\n      V: ⟦b⟧\n", null },
        { "HS1216", Own + "    case: ⟦metal⟧\n", "one of: none, grounded" },
        { "HS1217", Own + "    ways: ⟦many⟧\n", null },
        { "HS1219", Two + "    elements: { a: 'lamp, 1 to 2' }\n    ratings: { W: a }\n    defaults:\n      ⟦A⟧: 2 A, from memory\n", null },
        { "HS1220", Two + "    elements: { a: 'lamp, 1 to 2' }\n    ratings: { W: a }\n    defaults:\n      W: ⟦21 W⟧\n", "from common practice" },
        { "HS1220", Two + "    elements: { a: 'lamp, 1 to 2' }\n    ratings: { W: a }\n    defaults:\n      W: ⟦2 A, from memory⟧\n", "8 W at 6 V" },
        // "when" swallowed an item that was meant for the element.
        { "HS1218", Two + "    actuators: { engine: stopped / running }\n    elements:\n      a: source, 1 to 2, when engine running, ⟦either polarity⟧\n", "last" },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_mistake_is_reported_at_its_place_and_nothing_else_is(string code, string marked, string? hint) => Marked.Expect(code, marked, hint);

    [Fact]
    public void A_file_that_names_no_kind_is_told_so() =>
        Assert.Contains("HS1201", Assert.Throws<ArgumentException>(() => Hotside.Kinds.Catalogue.Standard.WithKind("letter: K\n")).Message, StringComparison.Ordinal);
}
