using Hotside.Solving;
using Hotside.Tests.Studies;

namespace Hotside.Tests.Solving;

/// <summary>Regulators within circuits.</summary>
public class RegulatorTests
{
    [Fact]
    public void A_regulator_with_no_way_back_behind_it_passes_nothing_and_its_output_floats()
    {
        var solution = new CircuitSolver(TestCircuit.Read("""
            12 V, negative
            G1 battery 12V
            N1 limiter
            E1 lamp 12V 5W
            - G1.neg to chassis
            - G1.pos to N1.in
            - N1.out to E1.1
            """)).Solve();
        Assert.True(solution.IsExact);
        Assert.Equal(0, solution.Element("E1", "lamp").Amperes, 1e-6);
        Assert.Equal(0, solution.Element("N1", "drop").Amperes, 1e-6);
        Assert.Null(solution.VoltsAt("E1.2"));
    }

    private const string Turned = """
        kinds:
          reducer-positive:
            like: reducer
            summary: voltage reducer for vehicles whose plus is grounded
            elements:
              drop: dropper, out to in, against case, holds first end
              own: electronics, case to in, one way

        """;

    // One reducer for each ground: its output has the same volts against its case, only the sign differs.
    [Theory]
    [InlineData("negative", "reducer", "G1.neg", "G1.pos", 1)] [InlineData("positive", "reducer-positive", "G1.pos", "G1.neg", -1)]
    public void A_reducer_of_either_ground_holds_its_output(string ground, string kind, string grounded, string hot, int sign)
    {
        var circuit = Job.Read($"hotside: 1\ntitle: One\nsystem: 12 V, {ground} ground\n{Turned}parts:\n  G1: battery, 12 V, 60 Ah\n  N1: {kind}, 12 V, out 6 V\n  P1: gauge, 6 V, 0.3 A, I on N1.out, S on chassis\n"
            + $"wires:\n  w1: {grounded} to chassis\n  w2: {hot} to N1.in\n").OrThrow().Alteration.After;
        var solution = new CircuitSolver(circuit).Solve();
        double amperes = solution.Element("P1", "heater").Amperes * sign;
        Assert.Equal(0.3, amperes, 0.01);
        // 20 mΩ behind the set-point (Droppers).
        Assert.Equal(6 - (0.02 * amperes), sign * solution.VoltsAt("N1.out")!.Value, 1e-6);
        Assert.Equal(amperes, solution.Element("N1", "drop").Amperes, 1e-6);
    }

    // Fed the wrong way round it passes nothing.
    [Fact]
    public void A_reducer_for_the_other_ground_passes_nothing()
    {
        var circuit = Job.Read($"hotside: 1\ntitle: One\nsystem: 12 V, negative ground\n{Turned}parts:\n  G1: battery, 12 V, 60 Ah, neg on chassis\n  N1: reducer-positive, 12 V, out 6 V, in on G1.pos\n"
            + "  P1: gauge, 6 V, 0.3 A, S on chassis\nwires:\n  w1: N1.out to P1.I\n").OrThrow().Alteration.After;
        Assert.Equal(0, new CircuitSolver(circuit).Solve().Element("P1", "heater").Amperes, 1e-6);
    }

    // A panel gives what its regulator lets through: what is left of 14.4 V behind a battery's resistance, never more than it can, none to a battery at its limit.
    [Theory]
    [InlineData(14.4)] [InlineData(15)] [InlineData(14.3)] [InlineData(14.0)]
    public void A_solar_regulator_ends_the_charge_at_its_set_point(double volts)
    {
        var circuit = Job.Read(FormattableString.Invariant($"hotside: 1\ntitle: One\nsystem: 12 V, negative ground\nparts:\n  G1: battery, {volts} V, 0.2 ohm, neg on chassis\n  G2: solar-panel, 12 V, 5 A, neg on chassis\n")
            + "  N1: solar-regulator, 12 V, 31 on chassis, own 1 mA\nwires:\n  w1: G2.pos to N1.in\n  w2: N1.out to G1.pos\nsettings:\n  day: daylight bright\n").OrThrow().Alteration.After;
        var solution = new CircuitSolver(circuit).Solve(circuit.Settings.Single());
        // Ohm's law, with the 0.02 ohm that a regulator's output is taken to have (own choice).
        double charging = Math.Max(0, (14.4 - volts) / (0.2 + 0.02));
        Assert.Equal(charging, solution.Element("G1", "cells").Amperes, 0.01);
        if (charging > 0) Assert.Equal(volts + (0.2 * charging), solution.VoltsAt("N1.out")!.Value, 0.01);
    }
}
