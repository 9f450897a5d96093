using System.Collections.Immutable;

namespace Hotside.Solving.Relays;

/// <summary>Where the relays of a circuit come to rest.</summary>
/// <param name="Kind">Whether they do.</param>
/// <param name="Points">The states of rest; of relays that never settle, the states of a cycle. At least one.</param>
internal sealed record RelayRest(RestKind Kind, ImmutableArray<StatePoint> Points);

/// <summary>Whether relays come to rest.</summary>
internal enum RestKind
{
    /// <summary>In one state.</summary>
    Settled,

    /// <summary>Which of several states depends on which relay is quicker.</summary>
    Race,

    /// <summary>Never, as a buzzer does.</summary>
    NeverSettles,

    /// <summary>There are too many states to look at; the one given is at rest, or passed.</summary>
    NotSearchedOut,
}
