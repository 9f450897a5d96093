using Hotside.Tests.Support;

namespace Hotside.Tests.Reading;

/// <summary>What is wrong with the sections of a job file, each at its place.</summary>
public class ReadingDiagnosticTests
{
    private const string Head = "hotside: 1\nsystem: 6 V, positive ground, sizes in AWG\n";
    private const string Parts = Head + "parts:\n  G1: battery, 6 V, 90 Ah\n  H1: horn, 6 V, 8 A\n  S1: push-button\n";
    private const string Wires = "wires:\n  w1: G1.neg to H1.1, 14 BK, 1 m\n  w2: H1.2 to S1.1, 16 YE\n  w3: S1.2 to chassis\n  w4: G1.pos to chassis\n";
    private const string Changes = Parts + Wires + "alteration:\n  title: T\n  changes:\n";

    /// <summary>Code, marked input, part of the hint.</summary>
    public static TheoryData<string, string, string?> Cases => new()
    {
        { "HS1101", Head + "parts:\n  G1: battery\n⟦wire⟧:\n  w1: G1.pos to chassis\n", "did you mean \"wires\"" },
        { "HS1102", Head + "parts:\n  ⟦- G1⟧\n", "id: …" },
        { "HS1103", Parts + Wires + "  w5: ⟦H2.1⟧ to chassis, 14 BK\n", "did you mean \"H1\"" },
        { "HS1104", Parts + Wires + "  w5: ⟦H1.3⟧ to chassis, 14 BK\n", "a horn has 1, 2" },
        { "HS1105", Parts + Wires + "  w5: ⟦H1⟧ to chassis, 14 BK\n", "a horn has 1, 2" },
        { "HS1106", "⟦s⟧ystem: 6 V, positive ground\nparts:\n  G1: battery\nwires:\n  w1: G1.pos to chassis\n", "hotside: 1" },
        { "HS1107", "hotside: ⟦2⟧\nsystem: 6 V, positive ground\nparts:\n  G1: battery\nwires:\n  w1: G1.pos to chassis\n", "version 1" },
        { "HS1108", "⟦h⟧otside: 1\nparts:\n  G1: battery\nwires:\n  w1: G1.pos to chassis\n", null },
        { "HS1109", Parts + "  ⟦E 1⟧: lamp\n" + Wires, null },
        { "HS1110", Parts + "wires:\n  ⟦H1⟧: G1.pos to chassis\n", "line 5" },
        { "HS1111", Parts + "  ⟦free⟧: lamp\n" + Wires, "another id" },
        { "HS1112", Parts + "  E1: ⟦lampp⟧, 6 V\n" + Wires, "did you mean \"lamp\"" },
        { "HS1113", Parts + "  X1: stud, Main positive, ⟦'8 mm stud'⟧\n" + Wires, null },
        { "HS1114", Parts + "  X1: horn, ⟦6 W⟧\n" + Wires, "it has V, A" },
        { "HS1115", Parts + "  X1: horn, 6 V, ⟦12 V⟧\n" + Wires, "once" },
        { "HS1116", Parts + "  X1: horn, ⟦6 v⟧\n" + Wires, null },
        { "HS1117", Parts + "  X1: horn, ⟦in A2⟧\n" + Wires, "at …" },
        { "HS1118", Parts + "  X1: horn, ⟦case insulated⟧\n" + Wires, null },
        { "HS1119", Parts + "  X1: horn, ⟦S = 85⟧\n" + Wires, null },
        { "HS1120", Parts + "  X1: horn, ⟦30 rail⟧\n" + Wires, "quotes" },
        { "HS1121", Parts + Wires + "  w5: ⟦G1.pos.1⟧ to chassis\n", "part.terminal" },
        { "HS1122", Parts + Wires + "  w5: ⟦G1.pos chassis⟧, 14 BK\n", "G1.neg to chassis" },
        { "HS1123", "hotside: 1\nsystem: 6 V, positive ground\nparts:\n  G1: battery\nwires:\n  w1: G1.pos to chassis, ⟦14 BK⟧\n", "sizes in AWG" },
        { "HS1124", Parts + Wires + "  w5: G1.pos to chassis, ⟦14 BX⟧\n", "IEC 60757" },
        { "HS1125", Parts + Wires + "  w5: G1.pos to chassis, 1 m, ⟦2 m⟧\n", null },
        { "HS1126", Parts + Wires + "  w5: ⟦G1.pos to free⟧, 14 BK\n", "spare" },
        { "HS1127", "hotside: 1\nsystem: 6 V, positive ground, ⟦size in AWG⟧\nparts:\n  G1: battery\nwires:\n  w1: G1.pos to chassis\n", "sizes in AWG" },
        { "HS1128", "hotside: 1\nsystem: ⟦6 V⟧\nparts:\n  G1: battery\nwires:\n  w1: G1.pos to chassis\n", null },
        { "HS1129", Parts + Wires + "settings:\n  on: ⟦S2 pressed⟧\n", "did you mean \"S1\"" },
        { "HS1130", Parts + Wires + "settings:\n  on: ⟦S1 presed⟧\n", "did you mean \"pressed\"" },
        { "HS1131", Parts + "  Y1: relay-two\n" + Wires + "settings:\n  on: ⟦Y1 out⟧\nkinds:\n  relay-two:\n    terminals:\n      1: top\n    elements:\n      a: contact, 1 to case, when x out\n      b: contact, 1 to case, when y out\n    actuators:\n      x: in / out\n      y: in / out\n    case: grounded\n", "Y1 x out" },
        { "HS1132", Parts + Wires + "settings:\n  on: ⟦H1 45 ohm⟧\n", null },
        { "HS1133", Changes + "    - ⟦taek out w1⟧\n", "did you mean \"take out\"" },
        { "HS1134", Changes + "    - ⟦move w1⟧\n", null },
        { "HS1135", Parts + Wires + "title block:\n  ⟦legal ownr⟧: Somebody\n", "did you mean \"legal owner\"" },
        { "HS1136", "include: ⟦../other.yaml⟧\n" + Parts + Wires, "below it" },
        { "HS1137", "include: ⟦missing.yaml⟧\n" + Parts + Wires, null },
        { "HS1138", "include: ⟦job.yaml⟧\n" + Parts + Wires, null },
        { "HS1139", Parts + Wires + "  ⟦w5⟧:\n", "its ends" },
        { "HS1140", Parts + "  X1: ⟦connector, 99 ways⟧\n" + Wires, null },
        { "HS1141", Parts + "  X1: ⟦connector, 15 A⟧\n" + Wires, "12 ways" },
        { "HS1142", Parts + "  X1: horn, ⟦0 V⟧\n" + Wires, null },
        { "HS1143", Parts + "  E1: ⟦lamp, because it is old⟧\n" + Wires, "a change" },
        { "HS1144", Parts + "  A1: assembly\n  E1: ⟦lamp, at A1⟧\n" + Wires, "in A1" },
        { "HS1145", Parts + "  E1: headlamp, ⟦45/35/3 W⟧\n" + Wires, "high, low" },
        { "HS1146", Parts + Wires + "settings:\n  on: ⟦S1 pressed, S1 released⟧\n", "one of them" },
        { "HS1147", Parts + "  E1: { kind: lamp, ⟦nam⟧: Panel }\n" + Wires, "did you mean \"name\"" },
        { "HS1116", Parts + "  K1: relay, ⟦coil 0.15⟧\n" + Wires, "coil 0.15 A" },
        { "HS1102", Parts + "  E1: ⟦[lamp]⟧\n" + Wires, null },
        { "HS1102", Parts + Wires + "  w5: ⟦[G1.pos]⟧\n", null },
        { "HS1102", Parts + Wires + "settings:\n  on: ⟦[S1 pressed]⟧\n", null },
        { "HS1102", Parts + Wires + "title: ⟦[a]⟧\n", null },
        { "HS1102", Parts + Wires + "title block:\n  revision: ⟦[A]⟧\n", null },
        { "HS2001", Parts + Wires + "  ⟦w5⟧: H1.1 to H1.1, 14 BK\n", "elsewhere" },
        { "HS2002", Parts + "  ⟦E1⟧: lamp, 6 V\n" + Wires, "wires" },
        { "HS2003", "hotside: 1\nsystem: 6 V, negative ground\nparts:\n  ⟦G1⟧: battery\nwires:\n  w1: G1.pos to chassis\n", "system line" },
        { "HS2004", Parts + "  ⟦E1⟧: lamp, 6 V, 1 free\n" + Wires + "  w5: E1.1 to chassis\n", null },
        { "HS2007", Parts + "  X2: feed-rail, 1 on X1\n  ⟦X1⟧: feed-rail, 1 on X2\n" + Wires, null },
        { "HS2008", "hotside: 1\nsystem: 6 V, isolated ground, return X2\nparts:\n  G1: battery\n  X2: stud\nwires:\n  w1: G1.neg to X2\n  ⟦w2⟧: X2 to chassis\n", "the return is X2" },
        { "HS2009", "hotside: 1\nsystem: 12 V, negative ground\nparts:\n  ⟦G1⟧: battery, 6 V\nwires:\n  w1: G1.neg to chassis\n", null },
        { "HS2011", Parts + "  K1: relay\n" + Wires + "  w5: K1.86 to H1.1\n  w6: K1.85 to H1.2\n  w7: ⟦K1.A1⟧ to H1.1\n", "K1.86 for both" },
        { "HS1103", Parts + Wires + "  w5: ⟦H1-2⟧ to chassis, 14 BK\n", "a part and its terminal are written H1.2" },
        { "HS1121", Parts + Wires + "  w5: ⟦H1:2⟧ to chassis, 14 BK\n", "a part and its terminal are written H1.2" },
        { "HS2005", Parts + "  ⟦X1⟧: splice\n" + Wires + "  w5: X1 to chassis\n", null },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_mistake_is_reported_at_its_place_and_nothing_else_is(string code, string marked, string? hint) => Marked.Expect(code, marked, hint);

    // What concerns the whole circuit has no place of its own.
    [Fact]
    public void A_circuit_without_a_source_is_told_so()
    {
        var all = Hotside.Reading.JobReader.Read("job.yaml", Head + "parts:\n  E1: lamp\nwires:\n  w1: E1.1 to chassis\n", Hotside.Kinds.Catalogue.Standard, _ => null).Diagnostics;
        Assert.Contains(all, d => d.Code == "HS2006");
    }

    [Fact]
    public void Two_batteries_in_a_row_are_a_source_of_their_sum() => Assert.DoesNotContain(
        Hotside.Reading.JobReader.Read("job.yaml", "hotside: 1\nsystem: 12 V, negative ground\nparts:\n  G1: battery, 6 V\n  G2: battery, 6 V\nwires:\n  w1: G1.neg to chassis\n  w2: G1.pos to G2.neg\n", Hotside.Kinds.Catalogue.Standard, _ => null).Diagnostics,
        d => d.Code == "HS2009");

    [Theory]
    // Two terminals wrong in one line are both told; a part whose line is wrong is not missed again by its wires.
    [InlineData(Parts + Wires + "  w5: H1.3 to H1.4, 14 BK\n", "HS1104 HS1104")]
    [InlineData(Parts + "  E1: lampp\n" + Wires + "  w5: E1.1 to E1.2\nsettings:\n  on: E1 pressed\n", "HS1112")]
    [InlineData(Changes + "    - fit K1: relayy, 12 V\n    - run w6: K1.85 to chassis\n", "HS1112")]
    public void What_follows_from_a_mistake_stays_silent(string text, string codes) =>
        Assert.Equal(codes, string.Join(' ', Hotside.Reading.JobReader.Read("job.yaml", text, Hotside.Kinds.Catalogue.Standard, _ => null).Diagnostics
            .Where(d => d.Severity >= Hotside.Diagnostics.Severity.Error).Select(d => d.Code)));
}
