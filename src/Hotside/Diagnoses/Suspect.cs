using System.Collections.Immutable;
using UnitsNet;

namespace Hotside.Diagnoses;

/// <summary>A fault, or several that no reading within reach tells apart.</summary>
/// <param name="Text">What may be wrong: <c>w7 open, or off a terminal</c>.</param>
/// <param name="Share">How likely it is after what is known, from 0 to 1; from weights of common practice, not from counted repairs.</param>
public sealed record Suspect(string Text, Ratio Share)
{
    /// <summary>The ids of the parts and conductors concerned, the culprit first; empty where nothing known explains it.</summary>
    public ImmutableArray<string> Items { get; init; } = [];

    /// <summary>Other faults that no reading within reach tells from this one, likeliest first.</summary>
    public ImmutableArray<string> Others { get; init; } = [];

    /// <summary>How to mend it and what reading then proves it; empty where there is nothing to mend.</summary>
    public string Repair { get; init; } = "";
}
