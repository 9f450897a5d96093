using System.Collections.Immutable;
using Hotside.Alterations;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Wording;

namespace Hotside.Packs.Lists;

/// <summary>What was decided of parts, and why: parts that are changed alike under one number together, parts that stay for one reason together.</summary>
/// <param name="Parts">The parts, as a list names them.</param>
/// <param name="Decision">What becomes of them: <c>goes</c>, <c>replaced</c>, <c>stays</c>.</param>
/// <param name="Why">The reason.</param>
internal sealed record DecisionEntry(ImmutableArray<string> Parts, string Decision, string Why)
{
    /// <summary>The parts with what they are.</summary>
    public required string Named { get; init; }

    /// <summary>What they become, with ratings; empty where they stay.</summary>
    public string Becomes { get; private init; } = "";

    /// <summary>Whether they stay as they are.</summary>
    public bool Stays { get; private init; }

    /// <summary>The numbers of the changes.</summary>
    public ImmutableArray<int> Numbers { get; private init; } = [];

    /// <summary>What is not settled: findings about these parts, gravest first.</summary>
    public ImmutableArray<Diagnostic> Open { get; private init; } = [];

    /// <summary>All parts that current meets: what changes in the order of the changes, then what stays.</summary>
    public static ImmutableArray<DecisionEntry> All(PackSource source)
    {
        var alteration = source.Alteration;
        Part[] all = [.. alteration.After.Parts.Concat(alteration.Before.Parts.Where(p => alteration.After.FindPart(p.Id) is null)).Where(p => p.Kind.Elements.Length > 0 || !alteration.NumbersOf(p.Id).IsEmpty)];
        var changed = all.Where(p => alteration.StateOf(p.Id) != PartState.Left || !alteration.NumbersOf(p.Id).IsEmpty)
            .GroupBy(p => (State: alteration.StateOf(p.Id), Numbers: string.Join(",", alteration.NumbersOf(p.Id)), Becomes: BecomesOf(p, source)))
            .OrderBy(g => alteration.NumbersOf(g.First().Id).FirstOrDefault()).Select(g => Changed([.. g], source));
        var kept = all.Where(p => alteration.StateOf(p.Id) == PartState.Left && alteration.NumbersOf(p.Id).IsEmpty)
            .GroupBy(p => WhyItStays(p, source)).Select(g => Kept(g.Key, [.. g], source));
        return [.. changed, .. kept];
    }

    private static DecisionEntry Changed(Part[] parts, PackSource source)
    {
        var alteration = source.Alteration;
        var state = alteration.StateOf(parts[0].Id);
        var numbers = alteration.NumbersOf(parts[0].Id);
        var changes = alteration.Changes.Where(c => numbers.Contains(c.Number)).ToArray();
        string[] reasons = [.. changes.Select(c => c.Reason).OfType<string>().Distinct().Select(r => "because " + r), .. changes.SelectMany(c => c.Acts).OfType<Work>().Where(w => w.Items.Contains(parts[0].Id)).Select(w => w.Sentence).Distinct()];
        return new([.. parts.Select(p => p.Id)], Word(state), string.Join("; ", reasons))
        {
            Named = string.Join(", ", parts.Select(p => PartWords.Named(p, source.Words))), Becomes = BecomesOf(parts[0], source), Numbers = numbers, Open = OpenOf(parts, source),
        };
    }

    private static DecisionEntry Kept(string why, Part[] parts, PackSource source) => new([.. parts.Select(p => p.Id)], "stays", why)
    {
        Named = string.Join(", ", parts.Select(p => PartWords.Named(p, source.Words))), Stays = true, Open = OpenOf(parts, source),
    };

    private static string Word(PartState state) => state switch
    {
        PartState.TakenOut => "goes",
        PartState.Fitted => "new",
        PartState.Replaced => "replaced",
        PartState.ReplacedReversed => "replaced, turned round",
        PartState.Reversed => "leads swapped",
        PartState.Remounted => "mounted anew",
        _ => "stays, with work",
    };

    private static string BecomesOf(Part part, PackSource source) => source.Alteration.StateOf(part.Id) is PartState.Fitted or PartState.Replaced or PartState.ReplacedReversed
        ? string.Join(", ", new[] { source.Words.Noun(part.Kind) }.Concat(QuantityWords.Of(part.Ratings))) : "";

    // What its kind minds, where the supply changes.
    private static string WhyItStays(Part part, PackSource source)
    {
        var (before, after) = (source.Alteration.Before.System, source.Alteration.After.System);
        bool otherVolts = !before.Volts.AsSpan().SequenceEqual(after.Volts.AsSpan()), otherGround = before.Ground != after.Ground;
        if (!otherVolts && !otherGround) return "the supply stays as it is";
        bool mindsNoVolts = part.Kind.Voltage == "indifferent", mindsNoPolarity = part.Kind.Polarity == "indifferent";
        if (!otherGround) return VoltsText(part.Kind.Voltage);
        if (!mindsNoPolarity) return string.Join("; ", new[] { otherVolts ? VoltsText(part.Kind.Voltage) : "", $"mind its polarity: {part.Kind.Polarity}" }.Where(t => t.Length > 0));
        return !otherVolts ? "the polarity does not matter to it" : mindsNoVolts ? "neither volts nor polarity matter to it" : VoltsText(part.Kind.Voltage) + "; the polarity does not matter to it";
    }

    private static string VoltsText(string voltage) => voltage switch
    {
        "indifferent" => "the volts do not matter to it",
        "contact" => "a contact minds its current alone",
        "brief" => "it stands the other volts for seconds at a time",
        "selfregulating" => "its reading holds at other volts",
        _ => "its volts are still right",
    };

    private static ImmutableArray<Diagnostic> OpenOf(Part[] parts, PackSource source) =>
    [
        .. source.Findings.Where(f => f is { Severity: >= Severity.Warning, Accepted: null } && f.Items.Length > 0 && parts.Any(p => p.Id == f.Items[0])).OrderByDescending(f => f.Severity).DistinctBy(f => (f.Code, f.Items[0])),
    ];
}
