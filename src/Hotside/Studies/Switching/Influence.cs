using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Studies.Switching;

/// <summary>Which relays influence which, and in which groups the order of their moves may matter.</summary>
/// <remarks>It cannot matter where no relay depends on itself by way of others, nor where pulling in never lets another fall out.</remarks>
internal sealed class Influence
{
    public Influence(DecisionSpace space, ImmutableArray<Relay> relays)
    {
        int count = relays.Length;
        bool[,] reaches = new bool[count, count];
        DisjointSets groups = new(count);
        bool[] lets = new bool[count];
        for (int i = 0; i < count; i++)
        for (int j = 0; j < count; j++)
        {
            if (!relays[i].Next.Any(c => space.SupportOf(c).Contains(relays[j].Number))) continue;
            reaches[j, i] = true;
            groups.Join(i, j);
            lets[i] |= LetsFall(relays[i], relays[j]);
        }
        for (int k = 0; k < count; k++)
        for (int i = 0; i < count; i++)
        for (int j = 0; j < count; j++)
            reaches[i, j] |= reaches[i, k] && reaches[k, j];
        OnThemselves = [.. relays.Where((_, i) => reaches[i, i])];
        Unsure = [.. Enumerable.Range(0, count).GroupBy(groups.Find)
            .Where(g => g.Any(i => reaches[i, i]) && g.Any(i => lets[i]))
            .Select(g => new RelayGroup(relays, [.. g], reaches))];
    }

    /// <summary>The relays that influence themselves, by others or at once.</summary>
    public ImmutableArray<Relay> OnThemselves { get; }

    /// <summary>The groups in which the order may matter.</summary>
    public ImmutableArray<RelayGroup> Unsure { get; }

    private static bool LetsFall(Relay relay, Relay cause)
    {
        for (int position = 1; position < relay.Next.Length; position++)
        for (int moved = 1; moved < cause.Next.Length; moved++)
            if (!relay.Next[position].Given(cause.Number, 0).Implies(relay.Next[position].Given(cause.Number, moved)))
                return true;
        return false;
    }
}
