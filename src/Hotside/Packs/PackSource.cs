using System.Collections.Immutable;
using Hotside.Alterations;
using Hotside.CheckSheets;
using Hotside.Diagnostics;
using Hotside.Packs.Lists;
using Hotside.Packs.Papers;
using Hotside.Wording;

namespace Hotside.Packs;

/// <summary>What the pages of a pack are made from: the job, what was asked for, and the lists that several pages share, each made when first asked for.</summary>
internal sealed class PackSource
{
    private readonly Lazy<ImmutableArray<WireEntry>> wires;
    private readonly Lazy<ImmutableArray<FuseEntry>> fuses;
    private readonly Lazy<ImmutableArray<LoadEntry>> loads;
    private readonly Lazy<ImmutableArray<DecisionEntry>> decisions;
    private readonly Lazy<ImmutableArray<Diagnostic>> findings, stops;
    private readonly Lazy<CheckSheet> sheet;

    /// <summary>From a job.</summary>
    public PackSource(Job job, PackOptions options)
    {
        (Job, Options, Words, Lettering) = (job, options, Vocabulary.Of(options.Words), options.Lettering);
        wires = new(() => WireEntry.All(Alteration));
        fuses = new(() => FuseEntry.All(this));
        loads = new(() => LoadEntry.All(this));
        decisions = new(() => DecisionEntry.All(this));
        (findings, stops) = (new(() => job.Findings), new(() => job.Stops));
        sheet = new(() => job.CheckSheet(words: options.Words));
    }

    /// <summary>The job.</summary>
    public Job Job { get; }

    /// <summary>What was asked for.</summary>
    public PackOptions Options { get; }

    /// <summary>Whose words.</summary>
    public Vocabulary Words { get; }

    /// <summary>The letters.</summary>
    public PackLettering Lettering { get; }

    /// <summary>Width of what is written.</summary>
    public double Width => Options.Paper.TextWidth;

    /// <summary>Width of what is written where tables are wide: in large letters their sheets lie.</summary>
    public double WideWidth => IsWideLying ? Options.Paper.Lying.TextWidth : Width;

    /// <summary>Whether sheets with wide tables lie.</summary>
    public bool IsWideLying => Options.Text == TextSize.Large;

    /// <summary>Both circuits and what changes.</summary>
    public Alteration Alteration => Job.Alteration;

    /// <summary>Whether anything changes.</summary>
    public bool IsAltered => !Alteration.Changes.IsEmpty;

    /// <summary>The wires, those of the after circuit first.</summary>
    public ImmutableArray<WireEntry> Wires => wires.Value;

    /// <summary>The fuses of the after circuit.</summary>
    public ImmutableArray<FuseEntry> Fuses => fuses.Value;

    /// <summary>The loads of both circuits.</summary>
    public ImmutableArray<LoadEntry> Loads => loads.Value;

    /// <summary>What is decided of each part.</summary>
    public ImmutableArray<DecisionEntry> Decisions => decisions.Value;

    /// <summary>The readings to take on the finished vehicle.</summary>
    public CheckSheet CheckSheet => sheet.Value;

    /// <summary>What is wrong or doubtful.</summary>
    public ImmutableArray<Diagnostic> Findings => findings.Value;

    /// <summary>The findings that forbid the work.</summary>
    public ImmutableArray<Diagnostic> Stops => stops.Value;

    /// <summary>Where things stand on the schematics; empty where the pack has none.</summary>
    public SheetZones Zones { get; set; } = SheetZones.None;

    /// <summary>A field of the title block; empty when there is none.</summary>
    public string Field(string key) => Job.TitleBlock.FirstOrDefault(f => f.Key == key).Value?.Trim() ?? "";
}
