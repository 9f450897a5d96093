using System.Globalization;
using Hotside.Tests.Support;

namespace Hotside.Tests.Outputs;

/// <summary>
/// The printed tables, and their figures worked out again by Ohm's law and Kirchhoff's laws with nothing of the library's: copper of 1/58 Ω·mm²/m (IEC 60028) times 1.02 for
/// strands, sections by ASTM B258, d = 0.127 mm · 92^((36 − n) / 39). A battery of 6 V rests at 6.3 V (half of TM 5-3805-262-20's 12.6 V) behind 0.05 Ω·Ah/V, own choice.
/// </summary>
public class SettingTableTests
{
    private static readonly Job Horn = Job.ReadFile(Repository.Path("gallery", "horn", "job.yaml")).OrThrow();
    private static readonly Job Starter = Job.ReadFile(Repository.Path("gallery", "starter", "job.yaml")).OrThrow();

    [Fact]
    public void The_table_of_the_horn_pressed_is_the_approved_one() =>
        Approve.Text(SettingTable.Of(Horn, "horn pressed").ToText(), "tests", "Hotside.Tests", "Outputs", "horn-setting.approved.txt");

    [Fact]
    public void The_table_of_the_starter_cranking_is_the_approved_one() =>
        Approve.Text(SettingTable.Of(Starter, "cranking", Words.British).ToText(), "tests", "Hotside.Tests", "Outputs", "starter-setting.approved.txt");

    // Two batteries in series: the way back of what hangs on both ends at the lower one, not at the tap.
    [Fact]
    public void Behind_batteries_in_series_the_return_is_that_of_the_lower_one()
    {
        var job = Job.Read("""
            hotside: 1
            title: In series
            system: 24 V, negative ground, sizes in AWG
            parts:
              G1: battery, 12 V, 60 Ah
              G2: battery, 12 V, 60 Ah
              S1: switch
              E1: lamp, 24 V, 48 W
            wires:
              w0: G1.neg to chassis, 2 BK, 0.3 m
              w1: G1.pos to G2.neg, 2 BK, 0.3 m
              w2: G2.pos to S1.1, 14 RD, 2 m
              w3: S1.2 to E1.1, 14 RD, 2 m
              w4: E1.2 to chassis, 14 BK, 2 m
            settings:
              light: S1 on
            """).OrThrow();
        string[] row = Row(SettingTable.Of(job, "light").ToText(), "E1");
        double amperes = Number(row[4]);
        Assert.InRange(amperes, 1.5, 2.5);
        Assert.Equal(amperes * (Ohms(14, 2) + Ohms(2, 0.3)), Number(row[7]), 0.001);
    }

    [Fact]
    public void The_horn_has_what_Ohms_law_gives_it()
    {
        // One loop: cells, w1, fuse of 15 A (4.8 mΩ), w3, horn of 6 V and 8 A taken as a resistance, w4, w5, w2.
        double wires = Ohms(2, 0.6) + Ohms(14, 1.4) + Ohms(16, 1.1) + Ohms(16, 0.2) + Ohms(2, 0.5), horn = 6.0 / 8;
        double amperes = 6.3 / ((0.05 * 6 / 90) + 0.0048 + wires + horn);
        string[] row = Row(SettingTable.Of(Horn, "horn pressed").ToText(), "H1");
        Assert.Equal(amperes * horn, Number(row[1]), 0.005);
        Assert.Equal(amperes, Number(row[4]), 0.005);
        Assert.Equal(amperes * amperes * horn, Number(row[5]), 0.05);
        // Lost from the battery's post to the horn, and from there back.
        Assert.Equal(amperes * (Ohms(2, 0.6) + 0.0048 + Ohms(14, 1.4)), Number(row[6]), 0.0005);
        Assert.Equal(amperes * (Ohms(16, 1.1) + Ohms(16, 0.2) + Ohms(2, 0.5)), Number(row[7]), 0.0005);
        // The horn's far end lies above the chassis by what w4 and w5 lose; minus, since plus is grounded.
        Assert.Equal(-amperes * (Ohms(16, 1.1) + Ohms(16, 0.2)), Number(row[12].Replace('\u2212', '-')), 0.005);
        Assert.Equal(amperes * Ohms(16, 1.1), Number(Row(SettingTable.Of(Horn, "horn pressed").ToText(), "w4")[6]), 0.0005);
    }

    [Fact]
    public void The_starter_has_what_Kirchhoffs_laws_leave_it()
    {
        // The motor draws its 180 A whatever the volts, for its torque is the engine's; the coil of 6 V and 8 A is 0.75 Ω beside it.
        double shared = (0.05 * 6 / 100) + Ohms(0, 0.7) + Ohms(0, 0.4), coil = (6.0 / 8) + Ohms(16, 1.2) + Ohms(16, 0.2);
        double winding = (6.3 - (180 * shared)) / (coil + shared), motor = 6.3 - ((180 + winding) * shared) - (180 * Ohms(0, 0.6));
        string text = SettingTable.Of(Starter, "cranking").ToText();
        Assert.Equal(motor, Number(Row(text, "M1")[1]), 0.005);
        Assert.Equal(winding, Number(Row(text, "K2")[4]), 0.005);
        Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"gives {180 + winding:0} A at {6.3 - ((180 + winding) * 0.003):0.00} V"), text, StringComparison.Ordinal);
    }

    // An ammeter beside a battery at its first or its second terminal, with the lamp drawing from the battery, and with the machine charging it.
    [Theory]
    [InlineData("P1.1", "P1.2", "day", "shows a charge")] [InlineData("P1.1", "P1.2", "night", "shows a discharge")]
    [InlineData("P1.2", "P1.1", "day", "shows a charge")] [InlineData("P1.2", "P1.1", "night", "shows a discharge")]
    public void An_ammeter_tells_which_way_its_current_goes(string battery, string loads, string setting, string reading)
    {
        foreach (string ground in new[] { "negative ground", "positive ground" })
        {
            var (hot, cold) = ground[0] == 'n' ? ("pos", "neg") : ("neg", "pos");
            var job = Job.Read($"hotside: 1\ntitle: One\nsystem: 6 V, {ground}\nparts:\n  G1: battery, 6 V, 60 Ah, charge 50 %, {cold} on chassis\n  G2: generator, 6 V, 30 A\n  K1: cut-out, 6 V\n  P1: ammeter\n  S1: switch\n  E1: lamp, 6 V, 30 W, 2 on chassis\n"
                + $"wires:\n  w1: G1.{hot} to {battery}\n  w2: {loads} to S1.1\n  w3: S1.2 to E1.1\n  w4: G2.A to K1.GEN\n  w5: K1.BAT to {loads}\nsettings:\n  day: engine running\n  night: S1 on\n").OrThrow();
            Assert.Contains(reading, string.Join(' ', Row(SettingTable.Of(job, setting).ToText(), "P1")), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_sequence_tells_each_step_and_a_setting_of_one_circuit_only_is_told_so()
    {
        Assert.Contains("nothing here is called \"K1 alone\"", SettingTable.Of(Horn, "K1 alone").ToText(), StringComparison.Ordinal);
        Assert.Contains("did you mean \"horn pressed\"", Assert.Throws<ArgumentException>(() => SettingTable.Of(Horn, "horn presed")).Message, StringComparison.Ordinal);
        var job = Job.Read(File.ReadAllText(Repository.Path("gallery", "horn", "job.yaml")) + "sequences:\n  toot: horn pressed then all off\n").OrThrow();
        string text = SettingTable.OfSequence(job, "toot").ToText();
        Assert.Contains("1. horn pressed: S1 pressed, K1 pulled", text, StringComparison.Ordinal);
        Assert.Contains("2. all off: all at rest", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_relay_that_is_fed_too_weakly_is_told()
    {
        // 85 Ω of coil behind 85 Ω of resistor have half of the volts, and a relay wants two thirds (data sheet of a plug-in relay, ISO 7588-1 pattern).
        var job = Job.Read("""
            hotside: 1
            title: Weak relay
            system: 12 V, negative ground
            parts:
              G1: battery, 12 V, 60 Ah
              S1: push-button
              R1: resistor, 85 ohm
              K1: relay, 12 V, coil 85 ohm
              E1: lamp, 12 V, 10 W, 2 on chassis
            wires:
              w1: G1.pos to S1.1
              w2: S1.2 to R1.1
              w3: R1.2 to K1.86
              w4: K1.85 to chassis
              w5: G1.pos to K1.30
              w6: K1.87 to E1.1
              w7: G1.neg to chassis
            settings:
              pressed: S1 pressed
            """).OrThrow();
        Assert.Contains("K1 is fed so that it would be pulled, yet with the volts that it has it is released", SettingTable.Of(job, "pressed").ToText(), StringComparison.Ordinal);
        Assert.False(job.Study.After.Setting("pressed").Figures.Element("E1").IsLive);
    }

    [Fact]
    public void A_buzzer_that_never_rests_and_a_short_circuit_are_told()
    {
        const string buzzer = """
            hotside: 1
            title: Buzzer
            system: 12 V, negative ground
            parts:
              G1: battery, 12 V, 60 Ah
              S1: push-button
              K1: relay-changeover, 12 V, coil 0.15 A
            wires:
              w1: G1.pos to K1.30
              w2: K1.87a to K1.86
              w3: K1.85 to S1.1
              w4: S1.2 to chassis
              w5: G1.neg to chassis
            settings:
              pressed: S1 pressed
            """;
        Assert.Contains("a relay never comes to rest", SettingTable.Of(Job.Read(buzzer).OrThrow(), "pressed").ToText(), StringComparison.Ordinal);
        // 12.6 V over 10 mΩ of cells (0.05 Ω·Ah/V · 12 V / 60 Ah, own choice) and four joints of 1 µΩ.
        string shorted = buzzer.Replace("w2: K1.87a to K1.86", "w2: K1.87a to S1.1", StringComparison.Ordinal).Replace("w3: K1.85 to S1.1", "w3: K1.85 to chassis", StringComparison.Ordinal);
        Assert.Contains("G1 (battery) is shorted: it would give 1259 A", SettingTable.Of(Job.Read(shorted).OrThrow(), "pressed").ToText(), StringComparison.Ordinal);
    }

    private static double Ohms(int gauge, double metres)
    {
        double diameter = 0.127 * Math.Pow(92, (36 - gauge) / 39.0);
        return 1.02 / 58 / (Math.PI / 4 * diameter * diameter) * metres;
    }

    // The first row of a name, which is that of the before circuit.
    private static string[] Row(string text, string name) => text.Split('\n').First(l => l.StartsWith($"  {name} ", StringComparison.Ordinal)).Split(' ', StringSplitOptions.RemoveEmptyEntries);

    private static double Number(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);
}
