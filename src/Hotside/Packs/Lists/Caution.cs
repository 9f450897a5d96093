using Hotside.Alterations;
using Hotside.Circuits;
using Hotside.Wording;

namespace Hotside.Packs.Lists;

/// <summary>A caution that holds for this job.</summary>
/// <param name="Head">What it is about, in a word or two.</param>
/// <param name="Text">What may happen and how to avoid it.</param>
internal sealed record Caution(string Head, string Text)
{
    /// <summary>
    /// The cautions whose condition holds here, gravest first. Sources: TM 10-3930-671-24 (grounded cable first off and last on, alternators), 29 CFR 1926.441 (eyes and
    /// drenching water at batteries), 29 CFR 1910.178(g)(12) (metal kept from battery tops), 33 CFR 183.410 (ignition protection on gasoline boats); the rest common
    /// practice, no source.
    /// </summary>
    public static IEnumerable<Caution> All(PackSource source)
    {
        var (alteration, words) = (source.Alteration, source.Words);
        yield return new("Comes first", "The workshop manual, local codes and licensed practice come before anything in this pack. It is an aid: it knows what the job file says, not what the vehicle is.");
        var batteries = Parts(alteration, p => p.IsStandingSource);
        if (batteries.Length > 0) yield return new("Battery gas", "A battery gives off hydrogen, which explodes: air the place, no flame, no smoking, no spark near it. Face shield and gloves on, water for drenching within reach.");
        if (batteries.Length > 0) yield return new("Metal and skin", "Rings, watch and chains off; no tool across the posts, no loose sleeve near a belt. A ring between a hot post and metal burns to the bone.");
        if (batteries.Length > 1) yield return new("All batteries", $"{Ids(batteries)} are all off before work begins: one that is left on feeds what looks dead.");
        // Which post, and what a wrong polarity destroys, is told of this vehicle.
        if (Cautions.OfPosts(alteration, words) is { } posts) yield return new("Which post", Loud(posts));
        foreach (var (index, polarity) in Cautions.OfPolarity(alteration, words).Index()) yield return new(index == 0 ? "Polarity" : "", Loud(polarity));
        if (Bare(source) is { Length: > 0 } bare) yield return new("No fuse", $"No fuse guards {Some(bare)}: a slipped {(words.IsBritish ? "spanner" : "wrench")} or a chafed spot there draws all that the battery can give. Cap free ends at once, boot the posts.");
        if (Parts(alteration, IsEngine) is { Length: > 0 }) yield return new("Fuel", alteration.After.System.Ground == Ground.Isolated
            ? "Fuel lines and tank closed, extinguisher at hand. With a gasoline engine aboard blow the bilge before power, and fit ignition-protected parts only (33 CFR 183.410)."
            : $"Fuel lines and tank vents closed, vapor aired out, extinguisher at hand before the first power.".Replace("vapor", words.IsBritish ? "vapour" : "vapor", StringComparison.Ordinal));
        if (Parts(alteration, p => p.Kind.Elements.Any(p.IsStarter)) is { Length: > 0 } starters) yield return new("It may move", $"{(alteration.After.System.Ground == Ground.Isolated ? "Out of gear, moorings or wheels held" : "Wheels chocked, out of gear, brake on")} before {Ids(starters)} can turn; ignition disabled for cranking tests.");
        if (Parts(alteration, p => p.Kind.Id is "ignition-coil" or "magneto") is { Length: > 0 } coils) yield return new("High tension", $"{Ids(coils)}: thousands of volts while the engine turns, and a charge left in the condenser after it: hands off the leads.");
        if (Hot(source) is { Length: > 0 } hot) yield return new("Hot parts", $"{hot} Mount on bare metal in air, nothing that burns within a hand's width, and let them cool before touching.");
        if (Cautions.OfBulbs(alteration, Parts(alteration, p => alteration.StateOf(p.Id) is not PartState.Left).Select(p => p.Id)) is { } bulbs) yield return new("Hot glass", bulbs);
        if (Old(alteration) is { Length: > 0 } old) yield return new("Old insulation", $"{old} Do not bend it live, and renew what cracks.");
        if (alteration.Changes.Any(c => c.Acts.Any(a => a is TakeOut))) yield return new("Dust", "Old lagging may hold asbestos, old paint and solder lead: take it off damp, do not blow it out.");
        yield return new("First power", "First through a small fuse or a lamp in series, every fuse out; prove the meter on a known source before and after. What glows or blows is found before the next step.");
    }

    // The sign of a post is not to be overlooked.
    private static string Loud(string text) => text.Replace("positive post", "POSITIVE post", StringComparison.Ordinal).Replace("negative post", "NEGATIVE post", StringComparison.Ordinal);

    private static Part[] Parts(Alteration alteration, Func<Part, bool> which) =>
        [.. alteration.After.Parts.Concat(alteration.Before.Parts.Where(p => alteration.After.FindPart(p.Id) is null)).Where(which)];

    private static string Ids(IEnumerable<Part> parts) => PartWords.And([.. parts.Select(p => p.Id)]);

    private static string Some(string[] ids) => FigureText.Some(ids);

    private static bool IsEngine(Part part) =>
        part.Kind.Elements.Any(part.IsStarter) || part.Kind.Id is "ignition-coil" or "distributor" or "magneto" or "spark-plug" || part.Kind.Id.StartsWith("fuel-pump", StringComparison.Ordinal) || part.Kind.Elements.Any(e => e is { IsSource: true, When: not null });

    private static string[] Bare(PackSource source) => [.. source.Job.Sizes.After.Conductors.Where(c => c.IsHot && c.IsUnprotected).Select(c => c.Conductor.Id)];

    // What turns more than two watts into heat while everything is on.
    private static string Hot(PackSource source)
    {
        var study = source.Job.Study.After;
        var parts = study.Circuit.Parts.Where(p => p.Kind.Id is "dropping-resistor" or "ballast" or "blower-resistor" or "reducer" or "resistor" or "load-resistor").ToArray();
        if (parts.Length == 0) return "";
        var figures = study.ProposedSettings.Contains("everything on") ? study.Setting("everything on").Figures : null;
        string Heat(Part part)
        {
            double watts = (double?)figures?.Elements.Where(e => e.Part.Id == part.Id && e.Element.Type is ElementType.Resistor or ElementType.Dropper).Sum(e => (double)Math.Abs(e.Power.Watts)) ?? 0;
            return watts >= 2 ? $"{PartWords.Named(part, source.Words)} sheds {Numbers.ThreeFigures(watts)} W" : $"{PartWords.Named(part, source.Words)} gets warm";
        }
        return PartWords.And([.. parts.Select(Heat)]) + " with everything on.";
    }

    private static string Old(Alteration alteration)
    {
        var bad = alteration.After.Conductors.Where(c => c.Wire.Condition is WireCondition.Brittle or WireCondition.Burnt && alteration.StateOfConductor(c.Id) is ConductorState.LeftAsIs or ConductorState.Moved).ToArray();
        return bad.Length == 0 ? "" : $"{Some([.. bad.Select(c => $"{c.Id} ({c.Wire.Condition!.Value.ToString().ToLowerInvariant()})")])} {(bad.Length == 1 ? "stays" : "stay")}.";
    }
}
