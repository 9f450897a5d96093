using System.Collections.Immutable;

namespace Hotside.Diagnoses;

/// <summary>What is wrong, as the owner says it. Each load by its name, such as <c>H1</c> or <c>E3.tail</c>, with the setting behind <c>@</c> where it matters: <c>E1.low @ low beam</c>.</summary>
public sealed record Complaint
{
    /// <summary>Loads that do nothing though they should be on.</summary>
    public ImmutableArray<string> Dead { get; init; } = [];

    /// <summary>Loads that do less than they should.</summary>
    public ImmutableArray<string> Dim { get; init; } = [];

    /// <summary>Loads that do more than they should.</summary>
    public ImmutableArray<string> Strong { get; init; } = [];

    /// <summary>Loads that work though they should be off.</summary>
    public ImmutableArray<string> OnThoughOff { get; init; } = [];

    /// <summary>Loads that work as they should.</summary>
    public ImmutableArray<string> Works { get; init; } = [];

    /// <summary>Fuses that are blown.</summary>
    public ImmutableArray<string> Blown { get; init; } = [];

    /// <summary>Readings taken, such as <c>H1.1 = 3.1 V @ horn pressed</c>, <c>F2.2 = 0.4 ohm</c>, <c>E1 = dim @ low beam</c>.</summary>
    public ImmutableArray<string> Readings { get; init; } = [];

    /// <summary>Whether it smokes or smells: then nothing is measured under power.</summary>
    public bool IsSmoking { get; init; }

    /// <summary>What is taken for likely and for troublesome.</summary>
    public DiagnosisLists Lists { get; init; } = DiagnosisLists.Standard;

    /// <summary>Whether nothing is said.</summary>
    internal bool IsEmpty => Dead.IsEmpty && Dim.IsEmpty && Strong.IsEmpty && OnThoughOff.IsEmpty && Works.IsEmpty && Blown.IsEmpty && Readings.IsEmpty;
}
