using Hotside.Circuits;
using Hotside.Kinds;
using Hotside.Solving;
using Hotside.Solving.Laws;

namespace Hotside.Tests.Solving;

/// <summary>Temperature, charge, speed, cold starts and converters, each by a figure that is known from elsewhere.</summary>
public class SurroundingsTests
{
    private static Circuit Read(string parts, string wires, string system = "12 V, negative ground, sizes in AWG") =>
        Job.Read($"hotside: 1\ntitle: One\nsystem: {system}\nparts:\n  G1: battery, {system.Split(' ')[0]} V, 10 mohm\n{Lines(parts)}wires:\n  w1: G1.neg to chassis\n{Lines(wires)}").OrThrow().Alteration.After;

    private static string Lines(string text) => string.Concat(text.Split('\n').Select(l => "  " + l + "\n"));

    private static Setting At(params (string? Part, string Actuator, string Position)[] set) => new("asked", [.. set.Select(s => new SetPosition(s.Part, s.Actuator, s.Position))], []);

    // TM 5-3805-262-20, battery of 12 V at rest; half of it for 6 V.
    [Theory]
    [InlineData(12, 1, 12.6)] [InlineData(12, 0.75, 12.4)] [InlineData(12, 0.5, 12.2)] [InlineData(12, 0.25, 12.0)] [InlineData(12, 0, 11.7)] [InlineData(6, 0.5, 6.1)] [InlineData(12, 0.875, 12.5)]
    public void A_battery_at_rest_has_the_volts_of_its_charge(double nominal, double charge, double volts)
    {
        Assert.Equal(volts, SourceLaws.RestVolts(nominal, charge), 1e-9);
        string system = nominal == 6 ? "6 V, negative ground, sizes in AWG" : "12 V, negative ground, sizes in AWG";
        var solution = new CircuitSolver(Read("E1: lamp, 2 W, 2 on chassis", "w2: G1.pos to E1.1", system), new() { Charge = charge }).Solve();
        Assert.Equal(volts + (0.01 * solution.Element("G1", "cells").Amperes), solution.Element("G1", "cells").Volts, 1e-6);
    }

    // The curve through 25 A at 1500 and 55 A at 6000 turns is 65 − 60 000 / n by two equations.
    [Theory]
    [InlineData(1500, 25)] [InlineData(6000, 55)] [InlineData(3000, 45)] [InlineData(12000, 60)] [InlineData(900, 0)]
    public void An_alternator_gives_what_its_two_marks_say_at_each_speed(double speed, double amperes)
    {
        Assert.Equal(amperes, Alternators.OutputAt(speed, 25, 55), 1e-9);
        // A great load takes all that the machine has; the battery gives the rest.
        var circuit = Read("G2: alternator-one-wire, 12 V, 55 A, low 25 A\nR1: heater, 12 V, 6000 W, 2 on chassis", "w2: G1.pos to R1.1\nw3: G2.B+ to R1.1");
        var solution = new CircuitSolver(circuit, new() { AlternatorSpeed = speed }).Solve(At((null, "engine", "running")));
        Assert.Equal(-amperes, solution.Element("G2", "output").Amperes, 1e-6);
        var hot = new CircuitSolver(circuit, new() { AlternatorSpeed = speed, WindingCelsius = 85 }).Solve(At((null, "engine", "running")));
        Assert.Equal(-0.85 * amperes, hot.Element("G2", "output").Amperes, 1e-6);
    }

    [Fact]
    public void An_alternator_never_gives_less_when_it_turns_faster()
    {
        for (double speed = 100; speed < 20_000; speed += 37) Assert.True(Alternators.OutputAt(speed + 37, 25, 55) >= Alternators.OutputAt(speed, 25, 55));
    }

    // 85 °C against 20 °C: 1.2554 times the resistance (NBS Handbook 100, 0.00393 a kelvin).
    [Fact]
    public void A_hot_winding_draws_less_and_pulls_in_later()
    {
        var circuit = Read("R1: resistor, 34 ohm\nK1: relay, 12 V, coil 85 ohm\nE1: lamp, 12 V, 5 W, 2 on chassis",
            "w2: G1.pos to R1.1\nw3: R1.2 to K1.86\nw4: K1.85 to chassis\nw5: G1.pos to K1.30\nw6: K1.87 to E1.1");
        Solution Solved(double celsius) => new CircuitSolver(circuit, new() { WindingCelsius = celsius }).Solve();
        var (cold, hot) = (Solved(20), Solved(85));
        // Cold 85 Ω behind 34 Ω have 9.0 V of 12.6 V, more than 8 V; hot 106.7 Ω have 9.55 V, less than 10.04 V.
        Assert.Equal(12.6 * 85 / 119, cold.Element("K1", "coil").Volts, 0.01);
        Assert.True(cold.Element("E1", "lamp").Amperes > 0.3);
        Assert.Equal(1 + (0.00393 * 65), hot.Element("K1", "coil").Volts / hot.Element("K1", "coil").Amperes / 85, 1e-9);
        Assert.Equal(0, hot.Element("E1", "lamp").Amperes, 1e-6);
    }

    // A source of E behind R gives P at U = (E + √(E² − 4·P·R)) / 2 (Ohm's law), and at most E² / 4R.
    [Theory]
    [InlineData(20, 0.5)] [InlineData(5, 2)] [InlineData(-20, 0.5)]
    public void A_converter_draws_its_power_at_the_higher_of_two_voltages(double watts, double ohms)
    {
        string kind = watts < 0 ? "led-lamp-bridge" : "led-lamp";
        var circuit = Read($"R1: resistor, {ohms} ohm\nE1: {kind}, 12 V, {Math.Abs(watts)} W, converter, {(watts < 0 ? "1" : "2")} on chassis", $"w2: G1.pos to R1.1\nw3: R1.2 to E1.{(watts < 0 ? "2" : "1")}");
        var lamp = new CircuitSolver(circuit).Solve().Element("E1", "lamp");
        double all = ohms + 0.01 + 3e-6, expected = (12.6 + Math.Sqrt((12.6 * 12.6) - (4 * Math.Abs(watts) * all))) / 2;
        Assert.Equal(Math.Sign(watts) * expected, lamp.Volts, 1e-5);
        Assert.Equal(Math.Abs(watts), lamp.Watts, 1e-6);
        Assert.False(lamp.IsLockedOut);
    }

    [Fact]
    public void A_converter_that_asks_for_more_than_its_feed_can_give_is_locked_out_and_one_without_feed_is_just_off()
    {
        Circuit Fed(string wire) => Read("R1: resistor, 2 ohm\nS1: switch\nE1: led-lamp, 12 V, 40 W, converter, 2 on chassis", $"w2: G1.pos to R1.1\nw3: {wire} to S1.1\nw4: S1.2 to E1.1");
        var weak = new CircuitSolver(Fed("R1.2")).Solve(At(("S1", "lever", "on"))).Element("E1", "lamp");
        Assert.Equal(0, weak.Amperes, 1e-6);
        Assert.True(weak.IsLockedOut);
        Assert.False(new CircuitSolver(Fed("R1.2")).Solve().Element("E1", "lamp").IsLockedOut);
        Assert.Equal(40, new CircuitSolver(Fed("G1.pos")).Solve(At(("S1", "lever", "on"))).Element("E1", "lamp").Watts, 1e-6);
    }

    // The worked example of two lamps: 0.5 Ω in w2 (confirmed with ngspice).
    [Fact]
    public void A_bad_joint_drops_what_its_resistance_says()
    {
        var lights = WorkedExampleTests.Lights(new() { BadJoints = [new("w2")] });
        Assert.Equal(9.58494, lights.Element("E1", "lamp").Volts, 1e-4);
        Assert.Equal(2.57757, lights.Element("E1", "lamp").Amperes, 1e-4);
    }

    // The same example, lamps cold: 12 V / 2.91667 A / 12 = 0.34286 Ω each, 49.16 A (confirmed with ngspice).
    [Fact]
    public void Cold_lamps_draw_their_inrush()
    {
        var circuit = WorkedExampleTests.Circuit;
        var inrush = new CircuitSolver(circuit).SolveInrush(circuit.Settings.Single());
        Assert.Equal(-49.16, inrush.Element("G1", "cells").Amperes, 0.005);
        Assert.Equal(0.34286, inrush.Element("E1", "lamp").Volts / inrush.Element("E1", "lamp").Amperes, 1e-5);
    }

    [Fact]
    public void A_ballast_is_cold_in_the_first_moment_and_hot_afterwards_and_a_motor_begins_stalled()
    {
        var circuit = Read("R1: ballast, 1.6 ohm, cold 0.4 ohm\nT1: ignition-coil, 12 V, 1.5 ohm\nM1: motor-magnet, 12 V, 5 A, stall 15 A, 2 on chassis",
            "w2: G1.pos to R1.15\nw3: R1.15a to T1.15\nw4: T1.1 to chassis\nw5: G1.pos to M1.1");
        CircuitSolver solver = new(circuit);
        var (first, later) = (solver.SolveInrush(At()), solver.Solve());
        Assert.Equal(0.4, first.Element("R1", "resistor").Volts / first.Element("R1", "resistor").Amperes, 1e-6);
        Assert.Equal(1.6, later.Element("R1", "resistor").Volts / later.Element("R1", "resistor").Amperes, 1e-6);
        Assert.Equal(0.8, first.Element("M1", "motor").Volts / first.Element("M1", "motor").Amperes, 1e-6);
        Assert.Equal(5, later.Element("M1", "motor").Amperes, 1e-6);
    }

    [Fact]
    public void What_a_motor_draws_when_it_stands_is_not_its_rated_current()
    {
        var kind = Catalogue.Standard.Find("motor-magnet")!;
        var part = new PartSpec(kind) { Ratings = [new("stall A", new(15, Unit.Ampere))] }.As("M1");
        Assert.Null(part.Rated("motor", Unit.Ampere));
        Assert.Equal(15, part.RatedAside(RatingRule.Stall, "motor", Unit.Ampere));
    }
}
