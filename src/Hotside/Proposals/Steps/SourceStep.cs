using Hotside.Circuits;
using Hotside.Proposals.Drafts;
using Hotside.Proposals.Rules;

namespace Hotside.Proposals.Steps;

/// <summary>Batteries first: other volts are another battery, another ground is one turned round.</summary>
internal static class SourceStep
{
    // Sizes that are sold (common practice, no source); a fifth more than equal energy, for reserve.
    private static readonly double[] Hours = [36, 45, 60, 75, 100, 120, 150, 180, 220];
    private const double Reserve = 1.2;

    /// <summary>Changes the sources of a draft; says nothing.</summary>
    public static void Apply(Draft draft, TargetSupply target)
    {
        if (target.IsSame) return;
        foreach (var part in draft.Before.Parts.Where(p => p.IsStandingSource))
        {
            if (target.Factor != 1) draft.Replace(part.Id, Stronger(part, draft, target), "");
            var sources = part.Kind.Elements.Where(e => e.IsSource).ToArray();
            if (target.Turns) draft.Swap(part.Id, Terminal(part, sources[0].From), Terminal(part, sources[^1].To));
        }
    }

    /// <summary>Changes the sources of the proposal, and says why and what is asked.</summary>
    public static void Run(Workbench work)
    {
        if (work.Target.IsSame) return;
        Apply(work.Draft, work.Target);
        var rule = DecisionTable.Standard[work.Target.Factor != 1 ? "battery" : "battery-turned"];
        foreach (var part in work.Draft.Before.Parts.Where(p => p.IsStandingSource))
        {
            string reason = work.ReasonOf(rule, null);
            work.Draft.Note(part.Id).Reason = reason;
            work.Decide(part.Id, rule.Decision, reason, rule);
            work.Draft.Note(part.Id).Works.Add($"prove its polarity with a meter before a cable goes on, and mark its tray {work.Draft.System.ToString().ToUpperInvariant().Replace(",", "", StringComparison.Ordinal)}");
            if (work.Target.Factor == 1) continue;
            double? was = part.Rated(part.Kind.Elements.First(e => e.IsSource).Name, Unit.AmpereHour);
            double? taken = work.Draft.Part(part.Id).Rated(part.Kind.Elements.First(e => e.IsSource).Name, Unit.AmpereHour);
            work.Ask(part.Id, was is { } hours ? $"ampere-hours? equal energy is {Numbers.Brief(hours / work.Target.Factor)} Ah; reserve and tray decide; {Numbers.Brief(taken!.Value)} Ah taken" : "ampere-hours? the file states none");
        }
    }

    private static PartSpec Stronger(Part part, Draft draft, TargetSupply target)
    {
        var ratings = Equivalent.Of(part, 1, target.Factor).Spec.Ratings.Select(r => r.Quantity.Unit switch
        {
            Unit.AmpereHour => new Rating(r.Name, new(Hours.FirstOrDefault(h => h >= Reserve * r.Quantity.Value / target.Factor - 1e-9, r.Quantity.Value), Unit.AmpereHour)),
            Unit.Ohm or Unit.Ampere => null,
            _ => r,
        }).OfType<Rating>();
        var spec = part.Spec with { Ratings = [.. ratings] };
        return part.Rated(part.Kind.Elements.First(e => e.IsSource).Name, Unit.Volt) is not null ? spec
            : spec with { Ratings = [new("V", new(draft.Before.System.Volts.Max() * target.Factor, Unit.Volt)), .. spec.Ratings.Where(r => r.Name != "V")] };
    }

    private static string Terminal(Part part, string name) => part.Kind.TerminalNamed(name) ?? name;
}
