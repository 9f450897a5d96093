using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Proposals.Exposures;

/// <summary>What each part would get with the new sources in the old circuit: no cases, the solver says.</summary>
/// <param name="before">The circuit as it was.</param>
/// <param name="thought">The same with the new sources.</param>
internal sealed class ExposureTable(Bench before, Bench thought)
{
    /// <summary>What the elements of a part would get that draw, or that volts are stated for.</summary>
    public ImmutableArray<Exposure> Of(Part part) =>
        [.. part.Kind.Elements.Where(e => !e.IsSource && (e.IsConsumer || e.Type == ElementType.Shunt || part.Kind.Current == "timed" && e.Type == ElementType.Contact)).Select(e => Of(part, e)).OfType<Exposure>()];

    private Exposure? Of(Part part, Element element)
    {
        if (thought.Circuit.FindPart(part.Id) is not { } there) return null;
        if (part.Kind.Current == "timed") return Across(part, element);
        // What states no volts is made for those that it had: the nearest that the system has.
        var (was, wasAmperes) = before.Greatest(part, element);
        var (volts, amperes) = thought.Greatest(there, element);
        return new(part, element, part.Rated(element.Name, Unit.Volt) ?? before.Circuit.System.Nearest(was)) { VoltsBefore = was, Volts = volts, AmperesBefore = wasAmperes, Amperes = amperes };
    }

    // A flasher's volts are those of its feed: what it passes on, its lamps need.
    private Exposure Across(Part part, Element element)
    {
        double was = Feed(before, part, element), volts = Feed(thought, part, element);
        return new(part, element, part.Rated(element.Name, Unit.Volt) ?? before.Circuit.System.Nearest(was)) { VoltsBefore = was, Volts = volts };
    }

    private static double Feed(Bench bench, Part part, Element element)
    {
        string end = End.At(part.Id, part.Kind.TerminalNamed(element.From) ?? element.From).ToString();
        return bench.Checked.Points.All.Where(p => !p.IsRunning).Select(p => p.Solution.VoltsAt(end) ?? 0).DefaultIfEmpty(0).MaxBy(Math.Abs);
    }
}
