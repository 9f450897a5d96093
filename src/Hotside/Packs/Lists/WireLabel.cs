using System.Collections.Immutable;

namespace Hotside.Packs.Lists;

/// <summary>A label for one end of a wire: it reads without the drawing.</summary>
/// <param name="Wire">The wire's id.</param>
/// <param name="At">The end that it goes on.</param>
/// <param name="Far">The other end.</param>
internal sealed record WireLabel(string Wire, string At, string Far)
{
    /// <summary>What is printed on it.</summary>
    public string Text => $"{Wire} → {Far}";

    /// <summary>Two for each wire that will be in the vehicle, wire by wire.</summary>
    public static ImmutableArray<WireLabel> All(IEnumerable<WireEntry> wires) =>
        [.. wires.Where(w => w.IsThere).OrderBy(w => w.Id, NaturalOrder.Instance).SelectMany(w => new WireLabel[] { new(w.Id, w.Ends.From, w.Ends.To), new(w.Id, w.Ends.To, w.Ends.From) })];
}
