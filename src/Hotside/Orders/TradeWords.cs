using Hotside.Alterations;
using Hotside.Circuits;

namespace Hotside.Orders;

/// <summary>The words by which the rules of order know an act: what is done, to what, for what.</summary>
internal static class TradeWords
{
    /// <summary>The words of a part: what stands in it, whatever it is called.</summary>
    public static IEnumerable<string> Of(Part part)
    {
        var elements = part.Kind.Elements;
        if (part.IsStandingSource) yield return "battery";
        if (elements.Length > 0 && elements.All(e => e.Type is ElementType.Fuse or ElementType.Breaker)) yield return "fuse";
        if (elements.Any(e => e is { Type: ElementType.Lamp, IsInternal: false })) yield return "lamp";
        if (elements.Any(e => e.Type == ElementType.Gauge)) yield return "gauge";
        if (elements.Any(e => e.Type == ElementType.Dropper)) yield return "reducer";
        if (elements.Any(e => e.IsMachine)) yield return "machine";
        if (elements.Any(part.IsStarter)) yield return "starter";
        if (elements.Any(e => e.Type == ElementType.Coil) && part.Kind.Actuators.Any(a => a.Drive == ActuatorDrive.Driven)) yield return "relay";
        yield return part.Kind.Polarity == "destroyed" && !part.IsStandingSource ? "electronics" : "ordinary";
    }

    /// <summary>The words of a terminal within its part: control or contact of a relay.</summary>
    public static IEnumerable<string> Of(Part part, string terminal)
    {
        if (!part.Kind.Actuators.Any(a => a.Drive == ActuatorDrive.Driven)) yield break;
        bool Touches(Element e) => part.Kind.TerminalNamed(e.From) == terminal || part.Kind.TerminalNamed(e.To) == terminal;
        if (part.Kind.Elements.Any(e => e.Type == ElementType.Coil && Touches(e))) yield return "control";
        if (part.Kind.Elements.Any(e => e.Type == ElementType.Contact && Touches(e))) yield return "contact";
    }

    /// <summary>The words of what every act of a type is.</summary>
    public static string Of(HandAct act) => act.Type switch
    {
        WorkActType.Record => "record",
        WorkActType.Measure => "measure",
        WorkActType.CableOff => "cable-off",
        WorkActType.BatteryOut => "battery-out",
        WorkActType.MarkPolarity => "mark",
        WorkActType.Unplug => "unplug",
        WorkActType.PlugIn => "plug-in",
        WorkActType.WireOff => "off touch",
        WorkActType.Pull => "pull touch",
        WorkActType.PartOut => "out touch",
        WorkActType.Fit => "fit touch",
        WorkActType.Swap => "swap touch",
        WorkActType.Turn => "turn touch",
        WorkActType.Remount => "remount touch",
        WorkActType.Cut => "cut off touch",
        WorkActType.Lay => "lay touch",
        WorkActType.WireOn => "on touch",
        WorkActType.Work => PolariseWork.IsSaidBy(act.Said) ? "work polarise" : "work",
        WorkActType.DeadTest => act.Said == "fuses-out" ? "fuses-out" : "dead-test",
        WorkActType.CableOn => "cable-on",
        WorkActType.Close => "close",
        _ => act.Said,
    };

    /// <summary>Whether a piece of metal and no more.</summary>
    public static bool IsMetal(Circuit circuit, End end) => end.IsChassis || (end.Part is { } id && circuit.FindPart(id) is { } part && part.Kind.Elements.IsEmpty && part.Kind.OnlyTerminal is not null && part.Kind.Symbol != "rail");
}
