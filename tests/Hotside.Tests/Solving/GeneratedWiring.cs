using System.Globalization;
using Hotside.Circuits;
using Hotside.Kinds;
using Hotside.Solving;
using UnitsNet;

namespace Hotside.Tests.Solving;

/// <summary>
/// A vehicle's wiring made from a seed, with the kinds of the catalogue and lengths on most conductors: lamps, motors, relays, diodes, gauges behind regulators, machines
/// that charge; some grounds lost or bad, some shorts, both polarities.
/// </summary>
internal sealed class GeneratedWiring
{
    private static readonly WireSize[] Sizes = [.. new[] { 18, 16, 14, 12, 10, 8 }.Select(WireSize.Awg), .. new[] { 0.75, 1, 1.5, 2.5, 4, 6 }.Select(WireSize.SquareMillimetres)];

    private const int ConductorsARail = 150;

    private readonly CircuitBuilder builder;
    private readonly bool isPositive, isForBoth;
    private readonly int volts;
    private readonly List<string> points = [];
    private ulong state;
    private readonly int least;
    private bool isSmooth;
    private string steady = "X1", switched = "X2", metal = "engine";
    private int parts, wires;

    private GeneratedWiring(int seed, Ground? ground = null, int least = 0)
    {
        this.least = least;
        state = ((ulong)seed * 0x9E3779B97F4A7C15) + 0x7654321;
        volts = Pick(6, 12, 12, 12, 24);
        isPositive = Below(2) == 0;
        if (ground is { } asked) (isPositive, isForBoth) = (asked == Ground.Positive, true);
        builder = new(ElectricPotential.FromVolts(volts), isPositive ? Ground.Positive : Ground.Negative);
    }

    /// <summary>The circuit of a seed.</summary>
    public static Circuit Of(int seed) => new GeneratedWiring(seed).Make();

    /// <summary>The circuit of a seed with one or the other pole grounded, and nothing in it that stands only one of them.</summary>
    public static Circuit Of(int seed, Ground ground) => new GeneratedWiring(seed, ground).Make();

    /// <summary>
    /// A circuit of a seed with so many conductors at least and a supply that bears them all: with two regulators, a converter and everything else, or of such things alone as
    /// have laws without corners, which any program takes easily.
    /// </summary>
    public static Circuit OfSize(int seed, int conductors, bool isSmooth) => new GeneratedWiring(seed, Ground.Negative, conductors) { isSmooth = isSmooth }.Make();

    /// <summary>A setting of a circuit: each switch and condition somewhere, most of them on.</summary>
    public static Setting SettingOf(int seed, Circuit circuit)
    {
        Random random = new(seed);
        return new("some", [.. circuit.Variables.Where(v => v.Actuator.Drive != ActuatorDrive.Driven)
            .Select(v => new SetPosition(v.Part, v.Actuator.Name, v.Actuator.Positions[random.Next(3) == 0 ? 0 : random.Next(v.Actuator.Positions.Length)]))], []);
    }

    /// <summary>Something unusual to work under.</summary>
    public static Surroundings SurroundingsOf(int seed, Circuit circuit)
    {
        Random random = new(seed);
        return new()
        {
            ConductorCelsius = random.Next(-20, 90), WindingCelsius = random.Next(20, 86), Charge = random.NextDouble(), AlternatorSpeed = random.Next(800, 8000),
            BadJoints = [.. circuit.Conductors.Where(_ => random.Next(12) == 0).Select(c => new BadJoint(c.Id, random.Next(1, 20) / 10.0))],
        };
    }

    private string Hot => isPositive ? "neg" : "pos";

    private string Cold => isPositive ? "pos" : "neg";

    private Circuit Make()
    {
        Supply();
        Action[] modules =
        [
            Lamps, Lamps, SwitchedLamps, Lights, Fan, SlowFan, SeriesMotor, MagnetMotor, RelayedLoad, RelayedLoad, HeldRelay, Changeover, Horn, Gauges, Limited, Reduced, Pilot, CrossFeed, Ignition,
            Solenoid, Device, Latch, Converter,
        ];
        if (least > 0)
        {
            // However large, a vehicle has a handful of these.
            Action[] few = [RelayedLoad, RelayedLoad, HeldRelay, Changeover, Latch, .. isSmooth ? Array.Empty<Action>() : [Limited, Reduced, Converter]];
            foreach (var module in few) module();
            modules = isSmooth ? [Lamps, SwitchedLamps, Fan, Horn, Gauges, Pilot, Ignition] : [.. modules.Except([.. few, Limited, Reduced, Converter, Solenoid])];
        }
        for (int i = 3 + Below(14), before = wires; i > 0 || wires < least; i--)
        {
            modules[Below(modules.Length)]();
            if (least == 0 || wires - before < ConductorsARail) continue;
            AddRails();
            before = wires;
        }
        if (least > 0) return builder.Build();
        if (Below(4) == 0) Wire(points[Below(points.Count)], points[Below(points.Count)]);
        if (Below(10) == 0) Wire(points[Below(points.Count)], "chassis");
        return builder.Build();
    }

    private void Supply()
    {
        Part("engine", "metal");
        Part("X1", "feed-rail");
        Part("X2", "feed-rail");
        Part("G1", "battery", least > 0 ? FormattableString.Invariant($"V={volts} ohm={1.0 / least}") : Below(4) switch
        {
            0 => $"V={volts} Ah={40 + Below(80)}",
            1 => $"V={volts} A={200 + Below(300)}",
            2 => $"V={volts} ohm=0.01",
            _ => $"V={volts}",
        });
        double? strong = least > 0 ? 0.1 / least : null;
        Wire("G1." + Cold, "chassis", strong);
        // The engine's strap is bad or lost now and then.
        if (Below(12) > 0 || least > 0) Wire("engine", "chassis", strong ?? (Below(8) == 0 ? 0.5 : null));
        string meter = Part('P', "ammeter"), key = Part('S', "switch");
        Wire("G1." + Hot, meter + ".1", strong);
        Wire(meter + ".2", "X1", strong);
        Wire("X1", key + ".1", strong);
        Wire(key + ".2", "X2", strong);
        points.AddRange(["X1", "X2"]);
        if (isSmooth) return;
        switch (Below(5))
        {
            case 0: Charged(); break;
            case 1: Alternator(); break;
            case 2: Second(); break;
        }
    }

    // What is large has several fuse boxes, and metal in several places.
    private void AddRails()
    {
        double strong = 0.1 / least;
        string first = Part('X', "feed-rail"), second = Part('X', "feed-rail"), place = Part('X', "metal");
        Wire(steady, first, strong);
        Wire(switched, second, strong);
        Wire(place, "chassis", strong);
        (steady, switched, metal) = (first, second, place);
    }

    private void Charged()
    {
        string machine = Part('G', "generator", $"V={volts} A={15 + Below(30)}", "engine"), regulator = Part('K', "regulator", $"V={volts}", "chassis");
        Wire(machine + ".A", regulator + ".GEN");
        Wire(machine + ".F", regulator + ".FLD");
        Wire(regulator + ".BAT", "X1");
        string lamp = Part('E', "charge-lamp", $"V={volts} W=2");
        Wire("X2", lamp + ".15");
        Wire(lamp + ".61", machine + ".A");
    }

    private void Alternator()
    {
        if (isPositive || isForBoth) return;
        string machine = Part('G', "alternator", $"V={volts} A={25 + Below(40)}", "engine"), lamp = Part('E', "charge-lamp", $"V={volts} W=2");
        Wire(machine + ".B+", "X1");
        Wire("X2", lamp + ".15");
        Wire(lamp + ".61", machine + ".D+");
    }

    private void Second()
    {
        string battery = Part('G', Below(2) == 0 ? "battery" : "solar-panel", $"V={volts} A={5 + Below(200)}"), diode = Part('V', "diode");
        Wire(battery + "." + Cold, "chassis");
        Wire(battery + "." + Hot, diode + (isPositive ? ".K" : ".A"));
        Wire(diode + (isPositive ? ".A" : ".K"), "X2");
    }

    private void Lamps() => Lamps(Fused(), 1 + Below(4));

    private void SwitchedLamps() => Lamps(Switched(Fused()), 1 + Below(4));

    private void Lamps(string from, int count)
    {
        for (int i = 0; i < count; i++)
        {
            string lamp = Part('E', "lamp", Pick($"V={volts} W=21", $"V={volts} W=5", $"V={volts} W=55", $"V={volts} A=0.3", ""));
            Wire(from, lamp + ".1");
            Return(lamp + ".2");
            from = lamp + ".1";
            points.Add(from);
        }
    }

    private void Lights()
    {
        string from = Switched(Fused()), led = Part('E', Below(2) == 0 ? "led-lamp" : "led-lamp-bridge", $"V={volts} W={1 + Below(8)}");
        bool isTurned = isPositive;
        Wire(from, led + (isTurned ? ".2" : ".1"));
        Return(led + (isTurned ? ".1" : ".2"));
        string tail = Part('E', "tail-stop-lamp", $"V={volts}");
        Wire(from, tail + ".58");
        Wire(Switched(Fused()), tail + ".54");
        Return(tail + ".31");
    }

    private void Fan() => Turn(Part('M', "motor", Below(2) == 0 ? $"V={volts} A={2 + Below(8)}" : ""), Switched(Fused()));

    private void SlowFan()
    {
        string resistor = Part('R', "blower-resistor", Below(2) == 0 ? "ohm=0.8" : ""), from = Switched(Fused());
        Wire(from, resistor + (Below(2) == 0 ? ".L" : ".M"));
        Turn(Part('M', "motor", $"V={volts} A=8 stall~A=20"), resistor + ".2");
    }

    private void SeriesMotor() => Turn(Part('M', "motor-series", $"V={volts} A={3 + Below(20)}", null, Below(2) == 0 ? "fan" : null), Switched(Fused()));

    private void MagnetMotor()
    {
        string motor = Part('M', "motor-magnet", $"V={volts} A={2 + Below(10)}", null, Below(3) == 0 ? "fan" : null), from = Switched(Fused());
        // Behind a resistor it stalls now and then.
        if (Below(3) == 0)
        {
            string resistor = Part('R', "resistor", $"ohm={Pick("0.5", "2", "8", "30")}");
            Wire(from, resistor + ".1");
            from = resistor + ".2";
        }
        Turn(motor, from);
    }

    private void Turn(string motor, string from)
    {
        Wire(from, motor + ".1");
        Return(motor + ".2");
        points.Add(motor + ".1");
    }

    private void RelayedLoad()
    {
        string relay = Part('K', Pick("relay", "relay", "relay-diode", "relay-resistor"), Pick("", $"V={volts}", $"V={Pick(6, 12)}")), button = Part('S', Pick("push-button", "switch"));
        // The diode across a coil wants its ends in order.
        Wire(Fused(), relay + (isPositive ? ".85" : ".86"));
        Wire(relay + (isPositive ? ".86" : ".85"), button + ".1");
        Return(button + ".2");
        Wire(Fused(), relay + ".30");
        Lamps(relay + ".87", 1 + Below(3));
    }

    private void HeldRelay()
    {
        string off = Part('S', "break-button"), on = Part('S', "push-button"), relay = Part('K', "relay", $"V={volts}");
        Wire(Fused(), off + ".1");
        Wire(off + ".2", on + ".1");
        Wire(off + ".2", relay + ".30");
        Wire(on + ".2", relay + ".86");
        Wire(relay + ".87", relay + ".86");
        Return(relay + ".85");
        Lamps(relay + ".87", 1 + Below(2));
    }

    private void Changeover()
    {
        string relay = Part('K', "relay-changeover", $"V={volts}"), coil = Switched(points[Below(points.Count)]);
        Wire(coil, relay + ".86");
        Return(relay + ".85");
        Wire(Fused(), relay + ".30");
        Lamps(relay + ".87", 1);
        Lamps(relay + ".87a", 1);
    }

    private void Horn()
    {
        string horn = Part('H', "horn", Pick("", $"V={volts} A=5")), button = Part('S', "push-button");
        Wire(Fused(), horn + ".1");
        Wire(horn + ".2", button + ".1");
        Return(button + ".2");
    }

    private void Gauges() => Gauges(Fused(), volts);

    private void Gauges(string from, int rated)
    {
        for (int i = 1 + Below(3); i > 0; i--)
        {
            string gauge = Part('P', "gauge", Below(3) == 0 ? "" : $"V={rated} ohm=20"), sender = Part('B', "sender", Pick("", "ohm=10", "ohm=180"), Below(8) == 0 ? "insulated" : "engine");
            Wire(from, gauge + ".I");
            Wire(gauge + ".S", sender + ".1");
        }
    }

    private void Limited()
    {
        string limiter = Part('N', "gauge-limiter", Pick("", "out~V=5", "out~V=7"), "chassis");
        Wire(Fused(), limiter + ".in");
        Gauges(limiter + ".out", 5);
    }

    private void Reduced()
    {
        if (isPositive || isForBoth) return;
        string reducer = Part('N', "reducer", Pick("out~V=6", "out~V=6 out~A=0.5", "out~V=5 out~A=2"), Below(10) == 0 ? "engine" : "chassis");
        Wire(Fused(), reducer + ".in");
        Gauges(reducer + ".out", 6);
        if (Below(2) == 0) Lamps(reducer + ".out", 1);
    }

    private void Pilot()
    {
        string one = Switched(Fused()), other = Switched(Fused()), pilot = Part('E', "lamp", $"V={volts} W=2");
        Lamps(one, 1);
        Lamps(other, 1);
        Wire(one, pilot + ".1");
        Wire(other, pilot + ".2");
    }

    private void CrossFeed()
    {
        string one = Switched(Fused()), other = Switched(Fused()), diode = Part('V', "diode");
        Lamps(one, 1 + Below(2));
        Lamps(other, 1);
        Wire(one, diode + (isPositive ? ".K" : ".A"));
        Wire(diode + (isPositive ? ".A" : ".K"), other);
    }

    private void Ignition()
    {
        string ballast = Part('R', "ballast", Pick("", "ohm=1.5", "ohm=1.6 cold~ohm=0.4")), coil = Part('T', "ignition-coil", Pick("", $"V={volts} ohm=1.5")), points = Part('S', "switch");
        Wire("X2", ballast + ".15");
        Wire(ballast + ".15a", coil + ".15");
        Wire(coil + ".1", points + ".1");
        Return(points + ".2");
    }

    private void Solenoid()
    {
        string solenoid = Part('K', "starter-solenoid", $"V={volts} pull-in~A=15 hold-in~A=5", "engine"), starter = Part('M', "starter", $"V={volts} A={80 + Below(150)}", "engine");
        Wire(Switched(Fused()), solenoid + ".S");
        Wire("G1." + Hot, solenoid + ".B");
        Wire(solenoid + ".M", starter + ".1");
    }

    private void Device()
    {
        string radio = Part('P', "radio", Pick("", $"V={volts} W=30")), from = Switched(Fused());
        Wire(from, radio + (isPositive ? ".neg" : ".pos"));
        Return(radio + (isPositive ? ".pos" : ".neg"));
    }

    private void Converter()
    {
        string led = Part('E', Below(2) == 0 ? "led-lamp" : "led-lamp-bridge", $"V={volts} W={4 + Below(40)}", null, "converter"), from = Switched(Fused());
        // Behind some resistances it starts, behind others it cannot.
        if (Below(2) == 0)
        {
            string resistor = Part('R', "resistor", $"ohm={Pick("0.3", "1", "4")}");
            Wire(from, resistor + ".1");
            from = resistor + ".2";
        }
        Wire(from, led + (isPositive ? ".2" : ".1"));
        Return(led + (isPositive ? ".1" : ".2"));
    }

    private void Latch()
    {
        string relay = Part('K', "latching-relay", $"V={volts}");
        Wire(Switched(Fused()), relay + ".S");
        Wire(Switched(Fused()), relay + ".R");
        Return(relay + ".C");
        Wire(Fused(), relay + ".30");
        Lamps(relay + ".87", 1);
    }

    private string Switched(string from)
    {
        string lever = Part('S', Pick("switch", "push-button", "break-button"));
        Wire(from, lever + ".1");
        return lever + ".2";
    }

    private string Fused()
    {
        string fuse = Part('F', "fuse", "A=" + Pick("5", "10", "20", "40"));
        Wire(Pick(steady, switched), fuse + ".1");
        points.Add(fuse + ".2");
        return fuse + ".2";
    }

    // Grounds are bad or lost now and then, or shared with another that may be so.
    private void Return(string end)
    {
        int kind = Below(24);
        if (kind > 0) Wire(end, Pick("chassis", "chassis", metal), kind == 1 ? 0.5 : null);
        else if (Below(2) == 0) Wire(end, points[Below(points.Count)]);
    }

    private void Wire(string from, string to, double? ohms = null)
    {
        if (from == to) return;
        Wire wire = ohms is not null || Below(20) == 0 ? new() { ResistanceInOhms = ohms ?? 0.003 }
            : Below(12) == 0 ? new()
            : new() { Size = Sizes[Below(Sizes.Length)], LengthInMetres = (1 + Below(40)) / 10.0 };
        builder.Wire(FormattableString.Invariant($"w{++wires}"), from, to, wire);
    }

    private string Part(char letter, string kind, string ratings = "", string? on = null, string? option = null)
    {
        string id = FormattableString.Invariant($"{letter}{100 + ++parts}");
        Part(id, kind, ratings, on, option);
        return id;
    }

    private void Part(string id, string kind, string ratings = "", string? on = null, string? option = null)
    {
        PartDetails details = new() { Case = on, Options = option is null ? [] : [option] };
        foreach (string word in ratings.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            string[] sides = word.Split('=');
            string name = sides[0].Replace('~', ' ');
            var unit = name[(name.LastIndexOf(' ') + 1)..] switch { "V" => Unit.Volt, "A" => Unit.Ampere, "W" => Unit.Watt, "Ah" => Unit.AmpereHour, _ => Unit.Ohm };
            details = details with { Ratings = details.Ratings.Add(name, new(double.Parse(sides[1], CultureInfo.InvariantCulture), unit)) };
        }
        builder.Part(id, Catalogue.Standard.Find(kind)!, details);
    }

    private T Pick<T>(params T[] choices) => choices[Below(choices.Length)];

    // A linear congruential generator (Knuth's MMIX constants), so that a seed means the same circuit everywhere.
    private int Below(int limit)
    {
        state = (state * 6364136223846793005) + 1442695040888963407;
        return (int)((state >> 33) % (ulong)limit);
    }
}
