namespace Hotside.Tests.Studies;

/// <summary>Twelve invented circuits whose verdicts were worked out by hand, state by state; the second witness is a nodal solution of every state.</summary>
internal static class TwelveCircuits
{
    public const string RelayBehindBallast = """
        12 V, negative
        G1 battery 12V
        R1 resistor 2ohm
        K1 relay-changeover 12V 0.15A
        S1 push-button
        E1 lamp 12V 21W 2=chassis
        E2 lamp 12V 21W 2=chassis
        - G1.neg to chassis
        - G1.pos to R1.1
        - R1.2 to K1.86
        - K1.85 to S1.1
        - S1.2 to chassis
        - G1.pos to K1.30
        - K1.87 to E1.1
        - K1.87a to E2.1
        """;

    public const string PilotBetweenTwoFeeds = """
        12 V, negative
        G1 battery 12V
        S1 turn-switch
        E1 lamp 12V 21W 2=chassis
        E2 lamp 12V 21W 2=chassis
        E3 lamp 12V 2W
        - G1.neg to chassis
        - G1.pos to S1.49a
        - S1.L to E1.1
        - S1.R to E2.1
        - S1.L to E3.1
        - S1.R to E3.2
        """;

    public const string ChargeLamp = """
        12 V, negative
        G1 battery 12V
        G2 generator-own 14V
        S1 switch
        E1 lamp 12V 2W
        V1 diode
        T1 coil 12V 4A
        B1 closed-switch
        - G1.neg to chassis
        - G1.pos to S1.1
        - S1.2 to E1.1
        - E1.2 to V1.A
        - V1.K to G2.A
        - S1.2 to T1.15
        - T1.1 to B1.1
        - B1.2 to chassis
        """;

    public static readonly string ChargeLampWithoutDiode = ChargeLamp.Replace("V1 diode", "V1 fuse", StringComparison.Ordinal)
        .Replace("V1.A", "V1.1", StringComparison.Ordinal).Replace("V1.K", "V1.2", StringComparison.Ordinal);

    public const string GaugeAndOilLamp = """
        12 V, negative
        G1 battery 12V
        S1 switch
        N1 limiter
        P1 gauge 5V 0.1A
        R1 sender 45ohm
        E1 lamp 12V 2W
        B2 oil-switch
        - G1.neg to chassis
        - G1.pos to S1.1
        - S1.2 to N1.in
        - N1.out to P1.I
        - P1.S to R1.1
        - S1.2 to E1.1
        - E1.2 to B2.1
        """;

    public const string SolenoidWithTwoWindings = """
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
        """;

    public const string WiperThatParks = """
        12 V, negative
        G1 battery 12V
        S1 wiper-switch
        M1 wiper 12V 3A
        - G1.neg to chassis
        - G1.pos to S1.53a
        - G1.pos to M1.53a
        - M1.53e to S1.53e
        - S1.53 to M1.53
        """;

    public const string RelayThatHoldsItself = """
        12 V, negative
        G1 battery 12V
        S5 break-button
        S6 push-button
        K1 relay-two-makes 12V 0.15A
        E1 lamp 12V 21W 2=chassis
        - G1.neg to chassis
        - G1.pos to S5.1
        - S5.2 to S6.1
        - S6.2 to K1.86
        - S5.2 to K1.13
        - K1.14 to S6.2
        - K1.85 to chassis
        - G1.pos to K1.23
        - K1.24 to E1.1
        """;

    public const string Buzzer = """
        12 V, negative
        G1 battery 12V
        S1 push-button
        K1 buzzer-relay 12V 0.15A
        - G1.neg to chassis
        - G1.pos to S1.1
        - S1.2 to K1.1
        - K1.2 to chassis
        """;

    public const string Race = """
        12 V, negative
        G1 battery 12V
        S2 switch
        K2 relay-make-and-break 12V 0.15A
        K3 relay-make-and-break 12V 0.15A
        E1 lamp 12V 21W 2=chassis
        - G1.neg to chassis
        - G1.pos to S2.1
        - S2.2 to K3.31
        - K3.32 to K2.86
        - K2.85 to chassis
        - S2.2 to K2.31
        - K2.32 to K3.86
        - K3.85 to chassis
        - G1.pos to K2.23
        - K2.24 to E1.1
        """;

    public const string Isolator = """
        12 V, negative
        G1 battery 12V
        Q1 switch
        S1 switch
        E1 lamp 12V 21W
        P1 gauge 12V 0.1A
        - G1.neg to Q1.1
        - Q1.2 to chassis
        - G1.pos to S1.1
        - S1.2 to E1.1
        - E1.2 to chassis
        - G1.pos to P1.I
        - P1.S to G1.neg
        """;

    public const string TwoBatteries = """
        12 V, negative
        G2 battery 12V
        G3 battery 12V
        S2 selector
        E2 lamp 12V 21W
        P2 gauge 12V 0.1A
        - G2.neg to chassis
        - G3.neg to chassis
        - G2.pos to S2.1
        - G3.pos to S2.2
        - S2.C to E2.1
        - E2.2 to chassis
        - G2.pos to P2.I
        - P2.S to G3.pos
        """;

    public const string TappedBank = """
        12 V, positive
        G1 battery 6V
        G2 battery 6V
        S1 switch
        S2 switch
        E1 lamp 12V 21W 2=chassis
        E2 lamp 6V 21W 2=chassis
        E3 lamp 6V 21W
        - G1.pos to chassis
        - G2.pos to G1.neg
        - G2.neg to E1.1
        - G1.neg to S1.1
        - S1.2 to E2.1
        - G2.neg to E3.1
        - E3.2 to S2.1
        - S2.2 to G1.neg
        """;

    public const string LampsInSeries = """
        12 V, negative
        G1 battery 12V
        E1 lamp 6V 5W
        E2 lamp 6V 5W
        S1 switch
        - G1.neg to chassis
        - G1.pos to E1.1
        - E1.2 to E2.1
        - E2.2 to S1.1
        - S1.2 to chassis
        """;

    public const string ShortedLamp = """
        12 V, negative
        G1 battery 12V
        R1 resistor 2ohm
        E3 lamp 12V 10W
        S2 switch-open-closed
        - G1.neg to chassis
        - G1.pos to R1.1
        - R1.2 to E3.1
        - E3.2 to chassis
        - R1.2 to S2.1
        - S2.2 to chassis
        """;

    public const string ReversingMotor = """
        12 V, negative
        G1 battery 12V
        S2 changeover
        S3 changeover
        M1 motor 12V 5A
        S4 switch
        E1 led-lamp 12V 1W
        E2 lamp 12V 21W
        S5 switch-open-closed
        - G1.neg to chassis
        - S2.0 to M1.1
        - S2.r to chassis
        - S2.p to G1.pos
        - S3.0 to M1.2
        - S3.r to chassis
        - S3.p to G1.pos
        - G1.pos to S4.1
        - S4.2 to E1.2
        - E1.1 to chassis
        - G1.pos to E2.1
        - E2.2 to chassis
        - G1.pos to S5.1
        - S5.2 to chassis
        """;

    public static readonly (string Name, string Text)[] All =
    [
        (nameof(RelayBehindBallast), RelayBehindBallast), (nameof(PilotBetweenTwoFeeds), PilotBetweenTwoFeeds), (nameof(ChargeLamp), ChargeLamp),
        (nameof(ChargeLampWithoutDiode), ChargeLampWithoutDiode), (nameof(GaugeAndOilLamp), GaugeAndOilLamp), (nameof(SolenoidWithTwoWindings), SolenoidWithTwoWindings),
        (nameof(WiperThatParks), WiperThatParks), (nameof(RelayThatHoldsItself), RelayThatHoldsItself), (nameof(Buzzer), Buzzer), (nameof(Race), Race),
        (nameof(Isolator), Isolator), (nameof(TwoBatteries), TwoBatteries), (nameof(TappedBank), TappedBank), (nameof(LampsInSeries), LampsInSeries),
        (nameof(ShortedLamp), ShortedLamp), (nameof(ReversingMotor), ReversingMotor),
    ];
}
