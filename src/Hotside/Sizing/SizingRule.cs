namespace Hotside.Sizing;

/// <summary>The rules that a conductor's size goes by.</summary>
public enum SizingRule
{
    /// <summary>It carries its greatest steady current without getting too hot (33 CFR 183.425, table 5).</summary>
    Ampacity,

    /// <summary>The fuse ahead opens before it gets too hot (33 CFR 183.455, AC 43.13-1B, 11-47).</summary>
    Fuse,

    /// <summary>The circuits that it belongs to do not lose too many volts.</summary>
    Drop,

    /// <summary>It stands being handled (33 CFR 183.425, ISO 10133).</summary>
    Strength,
}

/// <summary>What a rule says of a conductor or a fuse; the later, the graver.</summary>
public enum SizingOutcome
{
    /// <summary>It does not apply, or what it needs is not known.</summary>
    NotJudged,

    /// <summary>It is kept.</summary>
    Passed,

    /// <summary>It is kept, but not under all conditions.</summary>
    Note,

    /// <summary>It is kept as one authority has it and not as another: a loom's factor, a fuse between 100 % and 150 % of the wire's ampacity, a fuse that carries more than 80 % for long.</summary>
    Warning,

    /// <summary>It is broken.</summary>
    Failed,
}

/// <summary>Why nothing is said of a conductor's size.</summary>
public enum SizingRefusal
{
    /// <summary>It carries the high voltage of an ignition.</summary>
    IgnitionSecondary,

    /// <summary>Its stated resistance is that of a resistance wire.</summary>
    ResistanceWire,

    /// <summary>No table has its size.</summary>
    SizeOutsideTables,

    /// <summary>Its insulation stands less than the table's lowest column.</summary>
    InsulationBelowTables,

    /// <summary>Where it runs it is as hot as its insulation stands, or hotter.</summary>
    HotterThanInsulation,
}
