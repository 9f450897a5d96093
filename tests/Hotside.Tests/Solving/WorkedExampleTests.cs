using Hotside.Circuits;
using Hotside.Solving;

namespace Hotside.Tests.Solving;

/// <summary>
/// Two lamps behind one fuse and one switch, worked by hand figure by figure: an invented circuit, 1/58 Ω·mm²/m (IEC 60028) times 1.02 for copper, and the lamp exponent of
/// Fink and Beaty, page 22-8. The figures were confirmed with ngspice.
/// </summary>
public class WorkedExampleTests
{
    internal const string Text = """
        hotside: 1
        title: Two lamps
        system: 12 V, negative ground, sizes in AWG
        kinds:
          measured-switch:
            like: switch
            ratings:
              ohm: contact
        parts:
          G1: battery, 12 V, 8 mohm
          F1: fuse, 10 A
          S1: measured-switch, 10 mohm
          J1: splice
          E1: lamp, 12 V, 35 W
          E2: lamp, 12 V, 35 W
        wires:
          w1: G1.pos to F1.1, 10 RD, 0.4 m
          w2: F1.2 to S1.1, 14 RD, 2.6 m
          w3: S1.2 to J1, 14 RD, 3.1 m
          w4: J1 to E1.1, 16 RD, 0.9 m
          w5: J1 to E2.1, 16 RD, 0.9 m
          w6: E1.2 to chassis, 16 BK, 0.5 m
          w7: E2.2 to chassis, 16 BK, 0.5 m
          w8: chassis to G1.neg, 4 BK, 0.3 m
        settings:
          lights: S1 on
        """;

    /// <summary>The circuit.</summary>
    internal static Circuit Circuit => Job.Read(Text).OrThrow().Alteration.After;

    /// <summary>The lights on, under something unusual.</summary>
    internal static Solution Lights(Surroundings around) => new CircuitSolver(Circuit, around).Solve(Circuit.Settings.Single());

    private static Solution Lights(string text, double celsius = 20)
    {
        var circuit = Job.Read(text).OrThrow().Alteration.After;
        return new CircuitSolver(circuit, new() { ConductorCelsius = celsius }).Solve(circuit.Settings.Single());
    }

    [Fact]
    public void Every_drop_of_the_worked_example_comes_out()
    {
        var lights = Lights(Text);
        var lamp = lights.Element("E1", "lamp");
        // The hand's iteration ends within a hundredth of a millivolt.
        Assert.Equal(12.10264, lamp.Volts, 2e-5);
        Assert.Equal(2.93036, lamp.Amperes, 1e-5);
        Assert.Equal(35.465, lamp.Watts, 1e-3);
        Assert.Equal(-5.86072, lights.Element("G1", "cells").Amperes, 1e-5);
        (string Wire, double Volts)[] drops = [("w1", 0.00784), ("w2", 0.12878), ("w3", 0.15354), ("w4", 0.03544), ("w6", 0.01969), ("w8", 0.00146)];
        Assert.All(drops, d => Assert.Equal(d.Volts, lights.Conductor(d.Wire).Volts, 1e-5));
        Assert.Equal(0.04513, lights.Element("F1", "fuse").Volts, 1e-5);
        Assert.Equal(0.05861, lights.Element("S1", "contact").Volts, 1e-5);
        (string End, double Volts)[] terminals = [("G1.pos", 12.55165), ("J1", 12.15777), ("E1.1", 12.12233), ("E1.2", 0.01969), ("G1.neg", -0.00146)];
        Assert.All(terminals, t => Assert.Equal(t.Volts, lights.VoltsAt(t.End)!.Value, 2e-5));
        Assert.Empty(lights.Assumptions);
        Assert.True(lights.IsExact);
    }

    [Fact]
    public void A_bad_joint_an_open_wire_and_a_short_come_out_as_worked()
    {
        var joint = Lights(Text.Replace("14 RD, 2.6 m", "521.9727 mohm", StringComparison.Ordinal)).Element("E1", "lamp");
        Assert.Equal(9.58494, joint.Volts, 1e-4);
        Assert.Equal(2.57757, joint.Amperes, 1e-4);
        var open = Lights(Text.Replace("  w5: J1 to E2.1, 16 RD, 0.9 m\n", "", StringComparison.Ordinal).Replace("E2: lamp, 12 V, 35 W", "E2: lamp, 12 V, 35 W, 1 free", StringComparison.Ordinal));
        Assert.Equal(12.32102, open.Element("E1", "lamp").Volts, 2e-5);
        Assert.Equal(2.95933, open.Element("E1", "lamp").Amperes, 1e-5);
        Assert.Equal(0, open.Element("E2", "lamp").Amperes, 1e-9);
        string shorted = Text.Replace("settings:", "  w9: J1 to chassis, 0 ohm\nsettings:", StringComparison.Ordinal);
        Assert.Equal(-166.98, Lights(shorted).Element("G1", "cells").Amperes, 0.01);
        Assert.Equal(-144.51, Lights(shorted, celsius: 80).Element("G1", "cells").Amperes, 0.01);
    }

    // Two motors that both draw their full current leave the point between them to their leaks: nothing says how they share the volts.
    [Fact]
    public void Between_two_motors_in_series_nothing_is_known_of_the_volts()
    {
        var circuit = Job.Read("hotside: 1\ntitle: One\nsystem: 12 V, negative ground\nparts:\n  G1: battery, 12 V, 60 Ah, neg on chassis\n  M1: motor-magnet, 12 V, 2 A\n  M2: motor-magnet, 12 V, 2 A, 2 on chassis\n"
            + "wires:\n  w1: G1.pos to M1.1\n  w2: M1.2 to M2.1\n").OrThrow().Alteration.After;
        var solution = new CircuitSolver(circuit).Solve();
        Assert.Equal(2, solution.Element("M1", "motor").Amperes, 1e-6);
        Assert.Null(solution.VoltsAt("M2.1"));
        Assert.NotNull(solution.VoltsAt("M1.1"));
    }

    [Fact]
    public void With_the_switch_open_the_lamps_are_dead_and_nothing_floats_that_a_filament_ties()
    {
        var circuit = Job.Read(Text).OrThrow().Alteration.After;
        var off = new CircuitSolver(circuit).Solve();
        Assert.Equal(0, off.VoltsAt("E1.1")!.Value, 1e-6);
        Assert.Equal(12.6, off.VoltsAt("S1.1")!.Value, 1e-4);
        var cut = Job.Read(Text.Replace("  w4: J1 to E1.1, 16 RD, 0.9 m\n  w5: J1 to E2.1, 16 RD, 0.9 m\n", "", StringComparison.Ordinal)
            .Replace("E1: lamp, 12 V, 35 W", "E1: lamp, 12 V, 35 W, 1 free", StringComparison.Ordinal).Replace("E2: lamp, 12 V, 35 W", "E2: lamp, 12 V, 35 W, 1 free", StringComparison.Ordinal)).OrThrow().Alteration.After;
        Assert.Null(new CircuitSolver(cut).Solve().VoltsAt("J1"));
        Assert.NotNull(new CircuitSolver(cut).Solve(cut.Settings.Single()).VoltsAt("J1"));
    }

    [Fact]
    public void Wires_without_length_are_named_and_parallel_ones_share_an_unknown_current()
    {
        var lights = Lights(Text.Replace("14 RD, 2.6 m", "14 RD", StringComparison.Ordinal).Replace("settings:", "  w9: F1.2 to S1.1, 14 RD\nsettings:", StringComparison.Ordinal));
        Assert.Equal(["w2", "w9"], lights.Assumptions.Select(a => a.Of));
        Assert.Equal(["w2", "w9"], lights.Conductors.Where(c => c.IsShared).Select(c => c.Conductor.Id));
        Assert.Equal(lights.Conductor("w2").Amperes, lights.Conductor("w9").Amperes, 1e-6);
        Assert.True(lights.Conductor("w9").IsAssumed && !lights.Conductor("w3").IsAssumed);
    }
}
