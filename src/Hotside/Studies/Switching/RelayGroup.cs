using System.Collections.Immutable;

namespace Hotside.Studies.Switching;

/// <summary>
/// Relays that influence each other. Those that act back on themselves, or on one that does, are the core; the others follow: where they come to rest is known from the core.
/// </summary>
internal sealed class RelayGroup
{
    private readonly ImmutableArray<int> members;
    private readonly bool[,] reaches;

    /// <summary>Some of a circuit's relays, all that influence each other.</summary>
    /// <param name="relays">The circuit's relays.</param>
    /// <param name="members">Which of them.</param>
    /// <param name="reaches">Whether the first relay influences the second, by others or at once.</param>
    public RelayGroup(ImmutableArray<Relay> relays, ImmutableArray<int> members, bool[,] reaches)
    {
        (this.members, this.reaches) = (members, reaches);
        Relays = [.. members.Select(m => relays[m])];
        bool IsCore(int m) => members.Any(k => reaches[k, k] && (k == m || reaches[m, k]));
        Core = [.. members.Where(IsCore).Select(m => relays[m])];
        // Whoever has more before it comes later: what acts on a relay has less before it.
        int[] following = [.. members.Where(m => !IsCore(m))];
        Followers = [.. following.OrderBy(m => following.Count(k => reaches[k, m])).ThenBy(m => m).Select(m => relays[m])];
    }

    /// <summary>All of them.</summary>
    public ImmutableArray<Relay> Relays { get; }

    /// <summary>The core.</summary>
    public ImmutableArray<Relay> Core { get; }

    /// <summary>The others, each behind all that act on it.</summary>
    public ImmutableArray<Relay> Followers { get; }

    /// <summary>The relays on which a condition depends and all that act on these: they depend on no others.</summary>
    /// <param name="support">The variables on which the condition depends.</param>
    public ImmutableArray<Relay> Behind(ImmutableArray<int> support)
    {
        int[] concerned = [.. members.Where((_, i) => support.Contains(Relays[i].Number))];
        return [.. Relays.Where((_, i) => concerned.Any(c => c == members[i] || reaches[members[i], c]))];
    }
}
