using Hotside.Alterations;
using Hotside.Circuits;

namespace Hotside.Wording;

/// <summary>What stands at the top of a view and beside its rails, and the head of a change list.</summary>
internal static class SheetText
{
    /// <summary>The heading of a view.</summary>
    public static string Heading(Moment moment) => moment.ToString();

    /// <summary>The supply: <c>6 V, positive ground</c>.</summary>
    public static string Supply(ElectricalSystem system, Words words) =>
        $"{Listing.And([.. system.Volts.Select(v => Numbers.Plain(v) + " V")])}, {system.Ground.ToString().ToLowerInvariant()} {words.Say("ground")}";

    /// <summary>What the feed stands at against the return when nothing draws current: <c>−6 V</c>; <see langword="null"/> where the
    /// circuit has no source.</summary>
    public static string? FeedPotential(Circuit circuit)
    {
        var source = circuit.Sources.FirstOrDefault(s => s.Element.When is null) ?? circuit.Sources.FirstOrDefault();
        return source is null ? null : AmountText.Potential(circuit.System.Volts.Max() * (source.PlusIsFeed ? 1 : -1));
    }

    /// <summary>The head of the change list: what the numbers mean, when the battery is off, and what takes precedence.</summary>
    public static string ListHead(Alteration alteration)
    {
        if (alteration.Changes.IsEmpty) return "No changes.";
        bool hasBattery = alteration.Before.Parts.Concat(alteration.After.Parts).Any(p =>
            p.Kind.Elements.Any(e => e is { IsSource: true, When: null }));
        string battery = hasBattery ? $" Battery off before 1, back on after {Numbers.Whole(alteration.Changes[^1].Number)}." : "";
        return $"Changes, in order of work.{battery} The workshop manual and local rules take precedence.";
    }
}
