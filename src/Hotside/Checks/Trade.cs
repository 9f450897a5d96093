using System.Text.RegularExpressions;
using Hotside.Alterations;
using Hotside.Circuits;

namespace Hotside.Checks;

/// <summary>What the trade calls a part, told from its kind's data.</summary>
internal static partial class Trade
{
    /// <summary>Whether an element gives current only while an engine turns it.</summary>
    public static bool IsMachine(Element element) => element.IsMachine;

    /// <summary>Whether an element gives current only now and then: a machine, or a panel by day.</summary>
    public static bool Charges(Element element) => element is { IsSource: true, When: not null };

    /// <summary>The condition that all machines share.</summary>
    public const string Engine = Element.Engine;

    /// <summary>Whether a part is an alternator: a machine with diodes, which another polarity destroys.</summary>
    public static bool IsAlternator(Part part) => part.Kind.Polarity == "destroyed" && part.Kind.Elements.Any(IsMachine);

    /// <summary>Whether a part is a generator that must be magnetised for its polarity.</summary>
    public static bool IsGenerator(Part part) => part.Kind.Polarity == "polarise" && part.Kind.Elements.Any(IsMachine);

    private const string Still = "with the engine stopped,";

    /// <summary>How the field of a generator is reached at its regulator while the machine stands, by the marks of that regulator; nothing where its wiring does not tell.</summary>
    public static string? WayToPolarise(Circuit circuit, Part machine)
    {
        // A field that begins at the armature has no terminal of its own.
        if (machine.Kind.Elements.FirstOrDefault(e => e.Name == "field") is not { } field) return null;
        string? own = field.From == "case" ? field.To : field.To == "case" ? field.From : null;
        if (own is not null && machine.Kind.Elements.Any(e => e.IsSource && (e.From == own || e.To == own))) return null;
        var regulator = circuit.Parts.FirstOrDefault(p => p.Kind.TerminalNamed("FLD") is not null && circuit.Conductors.Any(c => c.Ends.Any(e => e.Part == p.Id) && c.Ends.Any(e => e.Part == machine.Id)));
        string Mark(string name) => regulator?.Kind.TerminalNamed(name) ?? name;
        return own is not null ? $"its field is grounded inside: {Still} take {Mark("FLD")} off the regulator and touch it to {Mark("BAT")} for a moment"
            : $"its field is grounded at the regulator: {Still} join {Mark("GEN")} and {Mark("BAT")} of the regulator for a moment";
    }

    /// <summary>Whether a part flashes by heat, timed by its lamps.</summary>
    public static bool IsThermalFlasher(Part part) => part.Kind.Current == "timed";

    /// <summary>Whether a part makes lamps flash.</summary>
    public static bool IsFlasher(Part part) => part.Kind.Actuators.Any(a => a is { Name: "flash", Cycles: true });

    /// <summary>Whether a part is an ammeter that lies in the main feed.</summary>
    public static bool IsAmmeter(Part part) => part.Kind.Current == "scale" && part.Kind.Elements.Any(e => e.Type == ElementType.Shunt);

    /// <summary>Whether an element makes the sparks: without it the engine stops.</summary>
    public static bool IsIgnition(Part part, Element element) =>
        element.IsConsumer && part.Kind.Id.StartsWith("ignition-", StringComparison.Ordinal);

    /// <summary>Whether a part is a headlamp.</summary>
    public static bool IsHeadlamp(Part part) => part.Kind.Id.StartsWith("headlamp", StringComparison.Ordinal) && part.Kind.Elements.Any(e => e.Type == ElementType.Lamp);

    /// <summary>Whether a lamp of any kind is called a headlamp.</summary>
    public static bool IsCalledHeadlamp(Part part) => HeadlampTitle().IsMatch(part.Title);

    /// <summary>Whether an element is a light that lets current through one way only.</summary>
    public static bool IsLed(Element element) => element.Type == ElementType.Lamp && (element.IsOneWay || element.Traits.HasFlag(ElementTraits.Bridge));

    /// <summary>Whether the circuit has no metal as its return, as a boat has none.</summary>
    public static bool IsIsolated(Circuit circuit) => circuit.System.Ground == Ground.Isolated;

    /// <summary>Whether a work says to polarise a machine, or to flash its field, which is the same.</summary>
    public static bool SaysToPolarise(string work) => PolariseWork.IsSaidBy(work);

    /// <summary>Whether a work says for how long something may be used that stands it for seconds only.</summary>
    public static bool SaysHowLong(string work) => HowLong().IsMatch(work);

    /// <summary>Whether a work says when a disconnect may be opened, or what else opens with it.</summary>
    public static bool SaysWhenToOpen(string work) => WhenToOpen().IsMatch(work);

    [GeneratedRegex(@"\bhead[ -]?(lamp|light)s?\b", RegexOptions.IgnoreCase)]
    private static partial Regex HeadlampTitle();

    [GeneratedRegex(@"\bcrank|\b\d+ ?s\b|\bseconds?\b|\bbursts?\b|\bbrief", RegexOptions.IgnoreCase)]
    private static partial Regex HowLong();

    [GeneratedRegex(@"\bopen|\brun(s|ning)\b|\bfield\b|\blabel", RegexOptions.IgnoreCase)]
    private static partial Regex WhenToOpen();
}
