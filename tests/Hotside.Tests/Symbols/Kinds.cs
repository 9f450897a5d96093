using Hotside.Symbols;
using static Hotside.Symbols.SymbolSide;

namespace Hotside.Tests.Symbols;

/// <summary>Each symbol with terminals as parts of our trade have them.</summary>
internal static class Kinds
{
    private static readonly SymbolTerminal[] Two = [T("1", Top), T("2", Bottom)];

    public static SymbolTerminal T(string name, SymbolSide side, params string[] also) => SymbolTerminal.Of(name, side, also);

    public static SymbolTerminal[] TerminalsOf(string symbol) => symbol switch
    {
        "battery" => [T("pos", Top, "+"), T("neg", Bottom, "-")],
        "lamp-two-filaments" => [T("56a", Top), T("56b", Top), T("31", Bottom)],
        "generator" or "generator-field-inside" => [T("A", Top), T("F", Left)],
        "gauge" => [T("I", Top), T("S", Bottom), T("G", Bottom)],
        "shunt" => [T("1", Top), T("2", Bottom), T("s1", Right), T("s2", Right)],
        "diode" or "led" => [T("A", Top), T("K", Bottom)],
        "change-over" or "change-over-pedal" or "change-over-centre-off" => [T("56", Top), T("56a", Bottom), T("56b", Bottom)],
        "switch-light" or "switch-key" or "switch-column" or "switch-knob" => [T("30", Top), T("58", Bottom), T("56", Bottom), T("15", Bottom)],
        "relay" or "relay-latching" or "relay-diode" or "relay-resistor" => FourTerminals,
        "relay-break" => [T("86", Top), T("85", Bottom), T("30", Top), T("87a", Bottom)],
        "relay-two-coils" => [T("S", Top), T("R", Top), T("C", Bottom), T("30", Top), T("87", Bottom)],
        "rotary" => [T("1", Top), T("L", Bottom), T("H", Bottom)],
        "isolator" => [T("A", Top), T("1", Bottom), T("2", Bottom)],
        "battery-tapped" => [T("pos", Top), T("mid", Right), T("neg", Bottom)],
        "fuse-block" => [T("30", Top), T("1", Bottom), T("2", Bottom), T("3", Bottom)],
        "relay-change-over" => [.. FourTerminals, T("87a", Bottom)],
        "relay-coil-to-case" => [T("BAT", Top, "30"), T("MOT", Bottom, "87"), T("S", Left, "50"), T("I", Right, "15a")],
        "solenoid-two-windings" => [T("B", Top), T("M", Bottom), T("S", Left), T("R", Right), T("case", Bottom)],
        "flasher" => [T("49", Top), T("49a", Bottom), T("31", Bottom)],
        "reducer" => [T("in", Top), T("out", Bottom), T("case", Left)],
        "regulator" => [T("D+", Top), T("DF", Top), T("31", Bottom)],
        "alternator" => [T("B+", Top), T("D+", Top), T("31", Bottom)],
        "cut-out" => [T("51", Top), T("61", Bottom), T("31", Bottom)],
        "ignition-coil" => [T("15", Top), T("1", Bottom), T("4", Bottom)],
        "distributor" => [T("1", Top), T("4", Top), T("31", Bottom), T("4a", Bottom)],
        "connector" or "terminal-block" => [T("a1", Top), T("a2", Top), T("b1", Bottom), T("b2", Bottom)],
        "splice" or "stud" or "rail" or "metal" => [T("1", Any)],
        "chassis" or "elsewhere" => [T("1", Top)],
        _ => Two,
    };

    public static SymbolTerminal[] FourTerminals => [T("86", Top), T("85", Bottom), T("30", Top), T("87", Bottom)];

    public static SymbolTerminal[] FedInside => [T("BAT", Top, "30"), T("MOT", Bottom, "87"), T("S", Right, "50")];
}
