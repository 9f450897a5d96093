using Hotside.Circuits;

namespace Hotside.Wording;

/// <summary>
/// Ends as lists name them: with the terminal where the part bears its mark. What has but a 1 and a 2 bears none, goes in either way round, and the
/// drawing shows on which side of it the wire lies.
/// </summary>
internal static class EndWords
{
    public static string Of(End end, Circuit circuit)
    {
        if (end.Part is not { } id || circuit.FindPart(id) is not { } part) return end.ToString();
        if (part.Kind.TakesAnyTerminal) return $"{part.Title} ({end.Terminal})";
        if (end.Terminal == "case") return id + " case";
        return AreMarked(part) ? $"{id}.{end.Terminal}" : id;
    }

    /// <summary>Whether a part's terminals bear marks.</summary>
    public static bool AreMarked(Part part)
    {
        var terminals = part.Kind.Terminals.Where(t => t.Name != "case").ToArray();
        return terminals.Length > 2 || terminals.Any(t => t.Name is not ("1" or "2"));
    }
}
