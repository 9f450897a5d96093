using Hotside.Circuits;

namespace Hotside.Wording;

/// <summary>Ends as lists name them: a terminal is named where the drawing shows its mark, which is on parts with more than two.</summary>
internal static class EndWords
{
    public static string Of(End end, Circuit circuit)
    {
        if (end.Part is not { } id || circuit.FindPart(id) is not { } part) return end.ToString();
        if (part.Kind.TakesAnyTerminal) return $"{part.Title} ({end.Terminal})";
        return part.Kind.Terminals.Length > 2 ? $"{id}.{end.Terminal}" : end.Terminal == "case" ? id + " case" : id;
    }
}
