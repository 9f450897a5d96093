using Hotside.Circuits;

namespace Hotside.Wording;

/// <summary>Ends as lists name them: with the terminal wherever a part has more than one, so that no wire lands on the wrong side of a fuse or gauge.</summary>
internal static class EndWords
{
    public static string Of(End end, Circuit circuit)
    {
        if (end.Part is not { } id || circuit.FindPart(id) is not { } part) return end.ToString();
        if (part.Kind.TakesAnyTerminal) return $"{part.Title} ({end.Terminal})";
        return part.Kind.Terminals.Length > 1 && end.Terminal != "case" ? $"{id}.{end.Terminal}" : end.Terminal == "case" ? id + " case" : id;
    }
}
