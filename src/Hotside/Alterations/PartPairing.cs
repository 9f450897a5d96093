using Hotside.Circuits;

namespace Hotside.Alterations;

/// <summary>What became of one part that both circuits have, told from what stands on its terminals.</summary>
/// <param name="Before">The part before.</param>
/// <param name="After">The part after.</param>
/// <param name="IsReplaced">Whether it is another part: another kind, rating or option.</param>
/// <param name="IsReversed">Whether its leads are swapped.</param>
/// <param name="Map">Where its terminals' conductors went by that.</param>
internal sealed record PartPairing(Part Before, Part After, bool IsReplaced, bool IsReversed, TerminalMap Map)
{
    /// <summary>Pairs a part.</summary>
    /// <param name="before">The part before.</param>
    /// <param name="after">The part after.</param>
    /// <param name="stood">For each conductor end and joint that stayed on the part, its terminal before and after.</param>
    public static PartPairing Of(Part before, Part after, IReadOnlyList<(string Old, string New)> stood)
    {
        var straight = new TerminalMap(before.Kind, after.Kind, [], reversed: false);
        var crossed = new TerminalMap(before.Kind, after.Kind, [], reversed: true);
        int stayed = stood.Count(s => straight[s.Old] == s.New), traded = stood.Count(s => crossed[s.Old] == s.New);
        // One wire on the other terminal is a moved wire; two that traded places are a part turned round.
        bool isReversed = before.Kind.Terminals.Length == 2 && after.Kind.Terminals.Length == 2 && traded > stayed && traded >= 2;
        var said = from s in stood
                   where straight[s.Old] is null
                   group s.New by s.Old into terminal
                   select (terminal.Key, terminal.GroupBy(t => t, StringComparer.Ordinal).MaxBy(g => g.Count())!.Key);
        return new(before, after, IsAnother(before, after), isReversed, new(before.Kind, after.Kind, isReversed ? [] : [.. said], isReversed));
    }

    /// <summary>Whether a part is another one after: of another kind, rating or option.</summary>
    public static bool IsAnother(Part before, Part after) =>
        before.Kind.Id != after.Kind.Id
        || !before.Kind.Terminals.Select(t => t.Own).SequenceEqual(after.Kind.Terminals.Select(t => t.Own))
        || !Texts(before).SequenceEqual(Texts(after));

    private static IEnumerable<string> Texts(Part part) =>
        part.Ratings.Select(r => r.Name + " " + r.Quantity).Concat(part.Spec.Options).Order(StringComparer.Ordinal);
}
