using System.Collections.Immutable;

namespace Hotside.Diagnoses;

/// <summary>The reading that tells most for its trouble.</summary>
/// <param name="Setting">Where switches stand: a setting of the job by its name, or positions such as <c>S1 pressed</c>.</param>
/// <param name="RedOn">Where the red lead goes, or what is looked at.</param>
/// <param name="BlackOn">Where the black lead goes; empty where something is looked at.</param>
/// <param name="Asks">What is read: <c>volts</c>, <c>ohms, battery out</c>, <c>off, dim, right or strong</c>.</param>
/// <param name="Why">What it tells: <c>splits 12 suspects 6 / 4 / 2</c>.</param>
public sealed record NextReading(string Setting, string RedOn, string BlackOn, string Asks, string Why)
{
    /// <summary>The expected value with each of the leading suspects, in their order.</summary>
    public ImmutableArray<string> Expected { get; init; } = [];

    /// <summary>The reading as it is entered, the value left open: <c>H1.1 = ? V @ horn pressed</c>.</summary>
    public string Entry { get; init; } = "";

    /// <summary>What to mind before it.</summary>
    public ImmutableArray<string> Cautions { get; init; } = [];
}
