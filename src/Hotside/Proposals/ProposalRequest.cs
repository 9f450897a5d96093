using System.Collections.Immutable;

namespace Hotside.Proposals;

/// <summary>What is to be proposed.</summary>
public sealed record ProposalRequest
{
    /// <summary>
    /// The supply to come, such as <c>12 V negative</c>, <c>24 V</c> or <c>negative ground</c>: volts no lower than the present ones and 60 V at most, the pole that is grounded, or both;
    /// what is left out stays. <see langword="null"/> or empty: the present one, for a job of its own (<see cref="Only"/>).
    /// </summary>
    public string? To { get; init; }

    /// <summary>Single jobs at the present supply: <c>horn</c>, <c>lamps-led</c>, <c>fuses</c>, or ids of parts; empty: the whole vehicle.</summary>
    public ImmutableArray<string> Only { get; init; } = [];

    /// <summary>Choices, each with a name and a value: <c>relay</c>, <c>always</c>. What is not named takes the default.</summary>
    public ImmutableArray<(string Name, string Value)> Options { get; init; } = [];

    /// <summary>Which circuit of the job is altered.</summary>
    public ProposalBase From { get; init; }
}

/// <summary>Which circuit of a job a proposal begins with.</summary>
public enum ProposalBase
{
    /// <summary>The circuit as it was; an alteration of the job is left out.</summary>
    Before,

    /// <summary>The circuit as it is after the job's alteration.</summary>
    After,
}
