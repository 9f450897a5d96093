namespace Hotside.Tests.Studies;

/// <summary>Circuits of small jobs, with their verdicts as their author wrote them beside the wiring.</summary>
internal static class JobCircuits
{
    public const string LostGround = """
        12 V, negative
        G1 battery
        F1 fuse
        S1 push-button
        S2 switch
        E3 tail-stop-lamp 12V
        E4 tail-stop-lamp 12V 31=chassis
        w1: G1.pos to F1.1
        w2: G1.neg to chassis
        w3: F1.2 to S1.1
        w4: F1.2 to S2.1
        w5: S1.2 to E3.54
        w6: E3.54 to E4.54
        w7: S2.2 to E3.58
        w8: E3.58 to E4.58
        # expect before E3.tail: in-series through E3.stop, when S2 on and S1 released, or S1 pressed and S2 off
        # expect before E3.stop: in-series through E3.tail, when S2 on and S1 released, or S1 pressed and S2 off
        # expect before E4.tail: hot-switched, when S2 on
        # expect before E4.stop: hot-switched, when S1 pressed
        """;

    public const string SelfHolding = """
        12 V, negative
        G1 battery
        F1 fuse
        S1 push-button
        S2 break-button
        K1 relay 12V
        E1 lamp 12V 21W 2=chassis
        w1: G1.pos to F1.1
        w2: G1.neg to chassis
        w3: F1.2 to S2.1
        w5: S2.2 to S1.1
        w4: S1.2 to K1.86
        w6: K1.85 to chassis
        w7: S1.1 to K1.30
        w8: K1.87 to K1.86
        w9: K1.86 to E1.1
        # expect before K1.coil: hot-switched, when S1 pressed and S2 released, holds by K1.contact until S2 pressed
        # expect before E1.lamp: hot-switched, when S1 pressed and S2 released, holds by K1.contact until S2 pressed
        """;

    public const string WiperPark = """
        12 V, negative
        G1 battery
        F1 fuse
        S1 ignition-switch
        S2 wiper-switch
        M3 wiper-plain 12V 3A case=chassis
        w1: G1.pos to F1.1
        w2: G1.neg to chassis
        w3: F1.2 to S1.30
        w4: S1.15 to M3.53a
        w5: M3.53a to S2.53a
        w6: M3.53e to S2.53e
        w7: S2.53 to M3.53
        # expect before M3.motor: hot-switched, when S1 run and S2 on, or S1 start and S2 on, or S1 run and S2 off and M3 away, or S1 start and S2 off and M3 away
        """;

    public const string TwoWindingSolenoid = """
        12 V, negative
        G1 battery
        S1 ignition-switch
        F1 fuse
        K1 starter-solenoid 12V case=engine
        M1 starter 12V case=engine
        K2 relay 12V
        F2 fuse
        engine metal
        w1: G1.pos to K1.B
        w2: G1.neg to engine
        w3: engine to chassis
        w4: K1.M to M1.1
        w5: K1.B to F1.1
        w6: F1.2 to S1.30
        w7: S1.50 to K2.86
        w8: K2.85 to engine
        w9: K1.B to F2.1
        w10: F2.2 to K2.30
        w11: K2.87 to K1.S
        # expect before K1.pull-in: in-series through M1, when S1 start, only until K1 plunger pulled
        # expect before K1.hold-in: hot-switched by K2, when S1 start
        # expect before K2.coil: hot-switched, when S1 start
        # expect before M1.motor: hot-switched by K1, when S1 start
        """;

    public const string Latching = """
        12 V, negative
        G1 battery
        F1 fuse
        S1 push-button
        S2 push-button
        E1 lamp 12V 21W 2=chassis
        K1 latching-relay 12V
        w1: G1.pos to F1.1
        w2: G1.neg to chassis
        w3: F1.2 to S1.1
        w4: F1.2 to S2.1
        w5: S1.2 to K1.S
        w6: S2.2 to K1.R
        w7: K1.C to chassis
        w8: F1.2 to K1.30
        w9: K1.87 to E1.1
        # expect before K1.set: hot-switched, when S1 pressed
        # expect before K1.reset: hot-switched, when S2 pressed
        # expect before E1.lamp: hot-switched by K1, when S1 pressed, holds by K1.armature until S2 pressed
        """;

    public const string Overdrive = """
        12 V, negative
        G1 battery
        F1 fuse
        S1 switch
        S2 condition
        K1 relay 12V
        Y1 overdrive-solenoid 12V case=gearbox
        gearbox metal
        w1: G1.pos to F1.1
        w2: G1.neg to chassis
        w3: F1.2 to K1.30
        w4: K1.87 to Y1.1
        w5: F1.2 to S1.1
        w6: S1.2 to K1.86
        w7: K1.85 to S2.1
        w9: S2.2 to chassis
        w8: gearbox to chassis
        # expect before K1.coil: both-sides, when S1 on and S2 closed
        # expect before Y1.hold: hot-switched by K1, when S1 on and S2 closed
        # expect before Y1.pull: hot-switched by K1, when S1 on and S2 closed, only until Y1 plunger in
        """;

    public const string PumpBefore = """
        12 V, isolated, X2
        G2 battery
        Q1 switch
        X2 rail
        X3 rail
        F1 fuse
        F3 fuse 1=X3
        F4 fuse 1=X3
        S3 switch
        S4 switch
        E1 lamp 12V 10W
        M2 motor 12V 5A
        w1: G2.pos to Q1.1
        w2: Q1.2 to F1.1
        w3: F1.2 to X3
        w4: G2.neg to X2
        w5: F4.2 to S3.1
        w6: S3.2 to E1.1
        w7: E1.2 to X2
        w8: F3.2 to S4.1
        w9: S4.2 to M2.1
        w10: M2.2 to X2
        # expect before E1.lamp: hot-switched, when Q1 on and S3 on
        # expect before M2.motor: hot-switched, when Q1 on and S4 on
        """;

    public const string PumpAfter = PumpBefore + """

        S5 switch
        F5 fuse
        w11: G2.pos to F5.1
        w12: F5.2 to S5.1
        w13: S5.2 to M2.1
        # expect after E1.lamp: hot-switched, when Q1 on and S3 on, or S3 on and S4 on and S5 on
        # expect after M2.motor: hot-switched, when S5 on, or Q1 on and S4 on
        """;

    public const string Generator = """
        6 V, positive
        G1 battery 6V
        G2 generator 6V case=engine
        K1 cut-out 6V
        P1 fuse
        X1 rail
        S1 ignition-switch
        F1 fuse 1=X1
        E1 lamp 6V 2W 2=chassis
        engine metal
        w1: G1.neg to P1.1
        w2: G1.pos to chassis
        w4: P1.2 to X1
        w5: X1 to K1.BAT
        w6: K1.GEN to G2.A
        w7: F1.2 to S1.30
        w8: S1.15 to E1.1
        w9: engine to chassis
        # expect before K1.voltage coil: hot-switched, when engine running
        # expect before E1.lamp: hot-switched, when S1 run or S1 start
        """;

    public const string Alternator = """
        12 V, negative
        G1 battery 12V
        G3 alternator 12V case=engine
        X1 rail
        S1 ignition-switch
        F1 fuse 1=X1
        F2 fuse 1=X1
        E1 lamp 12V 2W 2=chassis
        E2 lamp 12V 2W
        engine metal
        w1: G1.pos to X1
        w2: G1.neg to chassis
        w7: F1.2 to S1.30
        w8: S1.15 to E1.1
        w9: engine to chassis
        w10: F2.2 to G3.B+
        w11: S1.15 to E2.1
        w12: E2.2 to G3.D+
        # expect before E1.lamp: hot-switched, when S1 run or S1 start
        # expect before E2.lamp: in-series through G3, when S1 run and engine stopped, or S1 start and engine stopped, or S1 locked and engine running, or S1 acc and engine running
        # expect before G3.rotor: hot-switched, when engine running
        """;

    public const string Launch = """
        12 V, isolated, X2
        G1 battery 12V
        G2 battery 12V
        Q1 selector
        X1 rail
        X2 rail
        F1 fuse 1=X1
        X3 rail
        F3 fuse 1=X3
        G3 alternator 12V case=X2
        E9 lamp 12V 2W
        S2 switch
        S3 switch
        E1 lamp 12V 10W
        S4 switch
        S5 switch
        M2 motor 12V 5A
        w1: G1.pos to Q1.1
        w2: G2.pos to Q1.2
        w3: Q1.C to X1
        w4: G1.neg to X2
        w5: G2.neg to X2
        w9: F1.2 to X3
        w14: X3 to S3.1
        w15: S3.2 to E1.1
        w16: E1.2 to X2
        w18: F3.2 to S4.1
        w19: F3.2 to S5.1
        w20: S4.2 to M2.1
        w21: S5.2 to M2.1
        w22: M2.2 to X2
        w23: X3 to S2.1
        w24: S2.2 to E9.1
        w25: E9.2 to G3.D+
        w26: G3.B+ to X3
        # expect before E1.lamp: hot-switched, when Q1 one and S3 on, or Q1 all and S3 on, or Q1 other and S3 on
        # expect before M2.motor: hot-switched, when Q1 one and S4 on, or Q1 all and S4 on, or Q1 other and S4 on, or Q1 one and S5 on, or Q1 all and S5 on, or Q1 other and S5 on
        # expect before E9.lamp: in-series through G3, when Q1 one and S2 on and engine stopped, or Q1 all and S2 on and engine stopped, or Q1 other and S2 on and engine stopped
        # expect before G3.rotor: hot-switched, when engine running
        """;
}
