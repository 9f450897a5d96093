using Hotside.Circuits;
using Hotside.Solving;
using Hotside.Solving.Relays;
using Hotside.Tests.Studies;

namespace Hotside.Tests.Solving;

/// <summary>Relays by the volts of their windings.</summary>
public class RelayTests
{
    private const string Latch = """
        12 V, negative
        G1 battery 12V
        S5 break-button
        S6 push-button
        K1 relay 12V 0.15A
        E1 lamp 12V 21W 2=chassis
        - G1.neg to chassis
        - G1.pos to S5.1
        - S5.2 to S6.1
        - S5.2 to K1.30
        - S6.2 to K1.86
        - K1.87 to K1.86
        - K1.86 to E1.1
        - K1.85 to chassis
        """;

    private static Setting At(params (string Part, string Actuator, string Position)[] set) => new("asked", [.. set.Select(s => new SetPosition(s.Part, s.Actuator, s.Position))], []);

    private static double Amperes(Solution solution, string part, string element) => solution.Element(part, element).Amperes;

    [Fact]
    public void A_relay_that_holds_itself_depends_on_its_history_and_falls_when_its_feed_is_opened()
    {
        CircuitSolver solver = new(TestCircuit.Read(Latch));
        var rest = solver.Solve();
        Assert.Equal(0, Amperes(rest, "E1", "lamp"), 1e-6);
        Assert.True(Amperes(rest.IfPulledBefore!, "E1", "lamp") > 1.7);
        var steps = solver.SolveSequence(At(), At(("S6", "button", "pressed")), At(), At(("S5", "button", "pressed")), At());
        Assert.Equal([false, true, true, false, false], steps.Select(s => Amperes(s, "E1", "lamp") > 1));
    }

    [Fact]
    public void A_relay_that_cuts_its_own_coil_never_settles()
    {
        var buzzer = new CircuitSolver(TestCircuit.Read("""
            12 V, negative
            G1 battery 12V
            K1 buzzer-relay 12V 0.15A 2=chassis
            - G1.neg to chassis
            - G1.pos to K1.1
            """)).Solve();
        Assert.Equal(RestKind.NeverSettles, buzzer.Rest);
        Assert.Equal(2, buzzer.Others.Length + 1);
    }

    [Fact]
    public void Two_relays_that_each_open_the_other_race()
    {
        var race = new CircuitSolver(TestCircuit.Read("""
            12 V, negative
            G1 battery 12V
            K2 relay-make-and-break 12V 0.15A
            K3 relay-make-and-break 12V 0.15A
            - G1.neg to chassis
            - G1.pos to K2.31
            - G1.pos to K3.31
            - K3.32 to K2.86
            - K2.32 to K3.86
            - K2.85 to chassis
            - K3.85 to chassis
            """)).Solve();
        Assert.Equal(RestKind.Race, race.Rest);
        Assert.Single(race.Others);
        Assert.NotEqual(Amperes(race, "K2", "coil") > 0.1, Amperes(race.Others[0], "K2", "coil") > 0.1);
    }

    [Theory]
    [InlineData(20, true)]    // 9.9 V of 12 reach the coil of 80 Ω
    [InlineData(60, false)]   // 7.2 V do not move it
    public void A_coil_behind_a_resistance_pulls_in_by_its_volts(double ohms, bool pulls)
    {
        var solution = new CircuitSolver(TestCircuit.Read($"""
            12 V, negative
            G1 battery 12V
            R1 resistor {ohms}ohm
            K1 relay 12V 0.15A
            E1 lamp 12V 21W 2=chassis
            - G1.neg to chassis
            - G1.pos to R1.1
            - R1.2 to K1.86
            - K1.85 to chassis
            - G1.pos to K1.30
            - K1.87 to E1.1
            """)).Solve();
        Assert.Equal(RestKind.Settled, solution.Rest);
        Assert.Equal(pulls, Amperes(solution, "E1", "lamp") > 1);
        // Once in, a coil holds with much less: both cases would have stayed in.
        Assert.Equal(!pulls, solution.IfPulledBefore is not null);
    }

    [Fact]
    public void A_solenoid_with_two_windings_pulls_in_through_the_motor_and_holds_without_it()
    {
        var cranking = new CircuitSolver(TestCircuit.Read("""
            12 V, negative
            G1 battery 12V
            S1 push-button
            K1 starter-solenoid 12V 10A
            M1 starter 12V 150A
            - G1.neg to chassis
            - G1.pos to S1.1
            - S1.2 to K1.S
            - G1.pos to K1.B
            - K1.M to M1.1
            """)).Solve(At(("S1", "button", "pressed")));
        Assert.True(Amperes(cranking, "M1", "motor") > 140);
        Assert.Equal(0, Amperes(cranking, "K1", "pull-in"), 0.01);
        Assert.True(Amperes(cranking, "K1", "hold-in") > 5);
    }
}
