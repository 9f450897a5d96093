using System.Globalization;
using System.Text;

namespace Hotside.Benchmarks;

/// <summary>A whole vehicle made from a seed, as a job file: about 300 conductors, 40 switches and several relays before, relays fitted and polarity turned after.</summary>
internal sealed class GeneratedVehicle
{
    private const int Conductors = 300, Switches = 40;

    private readonly SeededNumbers numbers;
    private readonly StringBuilder parts = new(), wires = new(), changes = new();
    private readonly Dictionary<char, int> ids = [];
    private int wireCount, runCount = 500, switchCount;

    private GeneratedVehicle(int seed) => numbers = new(seed);

    /// <summary>The job file of a seed.</summary>
    public static string Of(int seed) => new GeneratedVehicle(seed).Make(seed);

    private string Make(int seed)
    {
        Supply();
        Lighting();
        Signals();
        Action[] circuits = [SwitchedLamps, SwitchedLamps, DoorLamps, TwoWayLamp, Fan, Wiper, Warning, Gauge, RelayedMotor, HeldLamp, PilotBetween, CrossFeed];
        while (wireCount < Conductors - 8)
            if (switchCount < Switches) circuits[numbers.Below(circuits.Length)]();
            else Gauge();
        return string.Create(CultureInfo.InvariantCulture, $"""
            hotside: 1
            title: Generated vehicle {seed}
            system: 6 V, positive ground, sizes in AWG
            parts:
            {parts}wires:
            {wires}alteration:
              title: 12 V negative ground, with relays
              system: 12 V, negative ground
              changes:
            {changes}    - replace G1 reversed: battery, 12 V, 60 Ah

            """);
    }

    private void Supply()
    {
        Add("G1", "battery, 6 V, 100 Ah");
        Add("engine", "metal, Engine block");
        Add("X1", "feed-rail, Battery feed");
        Add("X2", "feed-rail, Ignition feed");
        string relay = Part('K', "starter-relay-internal, Starter relay, 6 V, coil 8 A"), starter = Part('M', "starter, 6 V, 200 A, case on engine"), button = Switch("push-button, Starter button");
        string generator = Part('P', "generator, 6 V, 30 A, case on engine"), regulator = Part('K', "regulator, 6 V, 30 A"), main = Part('F', "fuse, 40 A"), ammeter = Part('P', "ammeter, 60 A");
        string key = Switch("ignition-switch, Ignition switch"), coil = Part('T', "ignition-coil, 6 V, 1.2 ohm"), points = Part('S', "distributor, case on engine");
        Wire("G1.neg", relay + ".BAT");
        Wire("G1.pos", "chassis");
        Wire("engine", "chassis");
        Wire(relay + ".MOT", starter + ".1");
        Wire(relay + ".S", button + ".1");
        Wire(button + ".2", "chassis");
        Chain(relay + ".BAT", main + ".1");
        Chain(main + ".2", ammeter + ".1");
        Wire(ammeter + ".2", "X1");
        Wire("X1", regulator + ".BAT");
        Wire(regulator + ".GEN", generator + ".A");
        Wire(regulator + ".FLD", generator + ".F");
        Wire("X1", key + ".30");
        Wire(key + ".15", "X2");
        Wire(Fused("X2"), coil + ".15");
        Wire(coil + ".1", points + ".1");
    }

    private void Lighting()
    {
        string light = Switch("light-switch, Light switch"), dip = Switch("dimmer, Foot dimmer"), left = Part('E', "headlamp, 6 V, 45/35 W"), right = Part('E', "headlamp, 6 V, 45/35 W");
        Wire("X1", light + ".30");
        Wire(light + ".56", dip + ".56");
        foreach (string beam in new[] { "56a", "56b" })
        {
            Chain(dip + "." + beam, left + "." + beam);
            Wire(left + "." + beam, right + "." + beam);
        }
        Wire(left + ".31", "chassis");
        Wire(right + ".31", "chassis");
        Lamps(light + ".58", 5, 5);
    }

    private void Signals()
    {
        string flasher = Part('K', "thermal-flasher, Flasher, 6 V, 2x18 W"), lever = Switch("turn-switch, Turn switch");
        Wire(Fused("X2"), flasher + ".49");
        Wire(flasher + ".49a", lever + ".49a");
        Lamps(lever + ".L", 2, 18);
        Lamps(lever + ".R", 2, 18);
        string pilot = Part('E', "lamp, Turn pilot, 6 V, 2 W");
        Wire(lever + ".L", pilot + ".1");
        Wire(lever + ".R", pilot + ".2");
    }

    // A feed, a switch, lamps; half of them get a relay in the alteration.
    private void SwitchedLamps()
    {
        string feed = Fused(Rail()), lever = Switch(Pick("switch", "push-button", "stop-switch", "reverse-switch"));
        Chain(feed, lever + ".1");
        string first = Part('E', "lamp, 6 V, 10 W, 2 on chassis"), wire = Wire(lever + ".2", first + ".1");
        Lamps(first + ".1", numbers.Below(3), 10);
        if (numbers.Below(2) == 0) return;
        string relay = Next('K');
        Change($"fit {relay}: relay, 12 V, 20 A, coil 0.15 A");
        Change($"move {wire}: {first}.1 to {relay}.86");
        Change($"run w{++runCount}: {relay}.85 to chassis, 16 BK");
        Change($"run w{++runCount}: {feed} to {relay}.30, 14 RD");
        Change($"run w{++runCount}: {relay}.87 to {first}.1, 14 YE");
    }

    // Lamps on a steady feed, doors that ground them, each on its own or together.
    private void DoorLamps()
    {
        string lamp = Part('E', "roof-lamp, Roof lamp, 6 V, 5 W");
        Chain(Fused("X1"), lamp + ".30");
        switchCount++;
        int doors = 1 + numbers.Below(3);
        string last = lamp + ".D";
        for (int i = 0; i < doors; i++)
        {
            string door = Switch("door-switch, Door");
            Wire(last, door + ".1");
            last = door + ".1";
        }
    }

    private void TwoWayLamp()
    {
        string first = Switch("changeover-switch"), second = Switch("changeover-switch");
        Wire(Fused(Rail()), first + ".1");
        Wire(first + ".2", second + ".2");
        Wire(first + ".3", second + ".3");
        Lamps(second + ".1", 2, 5);
    }

    private void Fan()
    {
        string speed = Switch("changeover-switch, Fan speed"), lever = Switch("switch, Fan"), slow = Part('R', "resistor, 1 ohm"), motor = Part('M', "motor, Fan, 6 V, 6 A, wound");
        Wire(Fused("X2"), lever + ".1");
        Wire(lever + ".2", speed + ".1");
        Wire(speed + ".2", slow + ".1");
        Wire(slow + ".2", motor + ".1");
        Wire(speed + ".3", motor + ".1");
        Wire(motor + ".2", "chassis");
    }

    private void Wiper()
    {
        string motor = Part('M', "wiper, 6 V, 3 A"), lever = Switch("wiper-switch"), feed = Fused("X2");
        Wire(feed, lever + ".53a");
        Wire(feed, motor + ".53a");
        Wire(motor + ".53e", lever + ".53e");
        Wire(lever + ".53", motor + ".53");
    }

    private void Warning()
    {
        string lamp = Part('E', "lamp, Oil warning, 6 V, 2 W"), contact = Switch("oil-switch, case on engine");
        Chain(Fused("X2"), lamp + ".1");
        Chain(lamp + ".2", contact + ".1");
    }

    private void Gauge()
    {
        string gauge = Part('P', "gauge, 6 V, 20 ohm"), sender = Part('B', "sender, 10..180 ohm, case on engine");
        Wire(Fused("X2"), gauge + ".I");
        Chain(gauge + ".S", sender + ".1");
    }

    private void RelayedMotor()
    {
        string relay = Part('K', "relay, 6 V, 20 A, coil 0.3 A"), button = Switch("push-button"), motor = Part('M', "motor, 6 V, 8 A"), feed = Fused(Rail());
        Wire(feed, relay + ".86");
        Chain(relay + ".85", button + ".1");
        Wire(button + ".2", "chassis");
        Wire(feed, relay + ".30");
        Chain(relay + ".87", motor + ".1");
        Wire(motor + ".2", "chassis");
    }

    // A relay that keeps itself, with a button for on and one for off.
    private void HeldLamp()
    {
        string off = Switch("break-button"), on = Switch("push-button"), relay = Part('K', "relay, 6 V, 20 A, coil 0.3 A");
        Wire(Fused(Rail()), off + ".1");
        Wire(off + ".2", on + ".1");
        Wire(off + ".2", relay + ".30");
        Wire(on + ".2", relay + ".86");
        Wire(relay + ".87", relay + ".86");
        Wire(relay + ".85", "chassis");
        Lamps(relay + ".87", 1 + numbers.Below(2), 10);
    }

    private void PilotBetween()
    {
        string one = Switch("switch"), other = Switch("switch"), pilot = Part('E', "lamp, Pilot, 6 V, 2 W");
        Wire(Fused(Rail()), one + ".1");
        Wire(Fused(Rail()), other + ".1");
        Lamps(one + ".2", 1, 15);
        Lamps(other + ".2", 1, 15);
        Wire(one + ".2", pilot + ".1");
        Wire(other + ".2", pilot + ".2");
    }

    // Two switches, and a diode by which one of them lights the other's lamps too.
    private void CrossFeed()
    {
        string one = Switch("switch"), other = Switch("push-button"), diode = Part('V', "diode");
        Wire(Fused("X1"), one + ".1");
        Wire(Fused("X2"), other + ".1");
        Lamps(one + ".2", 2, 10);
        Lamps(other + ".2", 1, 10);
        Wire(one + ".2", diode + ".A");
        Wire(diode + ".K", other + ".2");
    }

    private void Lamps(string from, int count, int watts)
    {
        for (int i = 0; i < count; i++)
        {
            string lamp = Part('E', string.Create(CultureInfo.InvariantCulture, $"lamp, 6 V, {watts} W"));
            Chain(from, lamp + ".1");
            Wire(lamp + ".2", "chassis");
            from = lamp + ".1";
        }
    }

    private string Fused(string rail) => Part('F', $"fuse, 10 A, 1 on {rail}") + ".2";

    private string Rail() => Pick("X1", "X2");

    // A run through a plug, now and then.
    private void Chain(string from, string to)
    {
        if (numbers.Below(3) > 0)
        {
            Wire(from, to);
            return;
        }
        string plug = Part('X', "connector, 2 ways");
        Wire(from, plug + ".a1");
        Wire(plug + ".b1", to);
    }

    private string Wire(string from, string to)
    {
        string id = string.Create(CultureInfo.InvariantCulture, $"w{++wireCount}");
        wires.Append("  ").Append(id).Append(": ").Append(from).Append(" to ").Append(to).Append(", 16 BK, 1 m\n");
        return id;
    }

    private void Change(string line) => changes.Append("    - ").Append(line).Append('\n');

    private string Switch(string line)
    {
        switchCount++;
        return Part('S', line);
    }

    private string Part(char letter, string line)
    {
        string id = Next(letter);
        Add(id, line);
        return id;
    }

    private void Add(string id, string line) => parts.Append("  ").Append(id).Append(": ").Append(line).Append('\n');

    private string Next(char letter)
    {
        int number = ids.GetValueOrDefault(letter, letter == 'X' ? 2 : 0) + 1;
        ids[letter] = number;
        return string.Create(CultureInfo.InvariantCulture, $"{letter}{number}");
    }

    private string Pick(params string[] choices) => choices[numbers.Below(choices.Length)];
}
