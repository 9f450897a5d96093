using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Diagnoses;

/// <summary>A setting in which readings are taken.</summary>
/// <param name="Name">As the job names it, else its positions; <see cref="Rest"/> where all rests.</param>
/// <param name="Positions">What does not rest.</param>
/// <param name="Values">Senders that are given a value.</param>
internal sealed record BenchSetting(string Name, ImmutableArray<SetPosition> Positions, ImmutableArray<SetValue> Values)
{
    /// <summary>The name of the setting in which nothing is moved.</summary>
    public const string Rest = "all at rest";

    /// <summary>Its positions and values in words, where its name does not say them; else empty.</summary>
    public string Stands { get; init; } = "";

    /// <summary>Whether somebody has to hold something while another measures: a pedal, a button, the starter.</summary>
    public bool NeedsTwo { get; init; }

    /// <summary>Whether a starter turns in it; known once the setting is solved.</summary>
    public bool Cranks { get; init; }

    /// <summary>Whether an engine or a machine runs.</summary>
    public bool Runs { get; init; }
}
