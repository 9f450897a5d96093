using System.Collections.Immutable;
using Hotside.Diagnoses;
using Hotside.Studies;

namespace Hotside.CheckSheets;

/// <summary>Parts a circuit into pieces that have a dictionary each: the whole where it is small, else one a fuse way.</summary>
internal static class SheetPieces
{
    // Parts and wires; beyond it pieces are quicker than the whole (own choice).
    private const int MostItems = 70;

    /// <summary>The loads of each piece of a circuit; none for the whole circuit.</summary>
    /// <param name="study">The circuit.</param>
    /// <param name="loads">The loads asked for; none for all.</param>
    public static IEnumerable<ImmutableArray<LoadStudy>> Of(CircuitStudy study, ImmutableArray<LoadStudy> loads)
    {
        if (!loads.IsEmpty || study.Circuit.Parts.Length + study.Circuit.Conductors.Length <= MostItems)
        {
            yield return loads;
            yield break;
        }
        var loose = LooseJoints.Of(study.Circuit);
        HashSet<string> covered = new(StringComparer.Ordinal);
        foreach (var load in study.Loads.Where(l => !l.Element.IsInternal && !covered.Contains(l.Part.Id)))
        {
            covered.UnionWith(ConnectedPiece.Of(study, loose, [load]).Parts.Select(p => p.Id));
            yield return [load];
        }
    }
}
