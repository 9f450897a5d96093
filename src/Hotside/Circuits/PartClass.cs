using System.Collections.Immutable;

namespace Hotside.Circuits;

/// <summary>A class of parts: those whose references begin with one letter (IEC 60750, partly from memory).</summary>
/// <param name="Letter">The class letter.</param>
/// <param name="Name">What the class is called.</param>
public sealed record PartClass(string Letter, string Name)
{
    private static readonly PartClass other = new("", "Others");

    /// <summary>All classes, in the order in which current meets them: sources, what guards and switches, what consumes, what shows, what joins.</summary>
    public static ImmutableArray<PartClass> All { get; } =
    [
        new("G", "Batteries, generators and other sources"),
        new("N", "Regulators and electronics"),
        new("Q", "Battery disconnects and selectors"),
        new("F", "Fuses and breakers"),
        new("S", "Switches"),
        new("K", "Relays and flashers"),
        new("E", "Lamps and glow plugs"),
        new("H", "Horns, tell-tales and what sounds"),
        new("M", "Motors"),
        new("Y", "Plunger magnets"),
        new("T", "Ignition coils"),
        new("P", "Gauges and instruments"),
        new("B", "Senders"),
        new("R", "Resistors and heaters"),
        new("V", "Diodes"),
        new("C", "Capacitors"),
        new("W", "Cables and straps"),
        new("X", "Connectors, rails and points"),
        new("A", "Assemblies"),
        other,
    ];

    /// <summary>The class of a kind, by its letter.</summary>
    /// <param name="kind">The kind.</param>
    /// <returns>One of <see cref="All"/>; the last one where the letter is none of theirs.</returns>
    public static PartClass Of(PartKind kind)
    {
        ArgumentNullException.ThrowIfNull(kind);
        return All.FirstOrDefault(c => c.Letter == kind.Letter) ?? other;
    }
}
