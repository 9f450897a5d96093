using Hotside.Alterations;
using Hotside.Circuits;
using Hotside.Sizing;
using Hotside.Studies;

namespace Hotside.Checks;

/// <summary>What a check of an alteration is given: both circuits and what changes between them.</summary>
internal sealed class CheckedAlteration
{
    /// <summary>The alteration of a study.</summary>
    public CheckedAlteration(Study study, Lazy<SizeStudy> sizes)
    {
        Alteration = study.Alteration;
        After = new(study.After, new(() => sizes.Value.After), [.. Alteration.Changes.SelectMany(c => c.Acts).OfType<Work>()]);
        Before = study.IsAltered ? new(study.Before, new(() => sizes.Value.Before), []) : After;
    }

    /// <summary>The alteration.</summary>
    public Alteration Alteration { get; }

    /// <summary>The circuit as it was.</summary>
    public CheckedCircuit Before { get; }

    /// <summary>The circuit as it will be.</summary>
    public CheckedCircuit After { get; }

    /// <summary>Whether the feed is of another polarity than it was.</summary>
    public bool TurnsPolarity => PlusIsFeed(Before) is { } was && PlusIsFeed(After) is { } now && was != now;

    /// <summary>Whether the system has other volts than it had.</summary>
    public bool ChangesVolts => Before.Circuit.System.Volts[0] != After.Circuit.System.Volts[0];

    /// <summary>The parts that stay as they are, though perhaps on another mount, as both circuits have them.</summary>
    public IEnumerable<(Part Before, Part After)> Kept =>
        from now in After.Circuit.Parts
        let was = Before.Circuit.FindPart(now.Id)
        where was is not null && Alteration.StateOf(now.Id) is PartState.Left or PartState.Remounted
        select (was, now);

    /// <summary>Whether the list says some work to be done to a part, and with that what becomes of it.</summary>
    public bool HasWorkFor(string part) => WorkFor(part).Any();

    /// <summary>What the list says is to be done to a part.</summary>
    public IEnumerable<string> WorkFor(string part) => After.WorkFor(part);

    private static bool? PlusIsFeed(CheckedCircuit circuit) => circuit.Circuit.Sources.FirstOrDefault(s => s.Element.When is null)?.PlusIsFeed;
}
