using System.Collections.Immutable;
using Hotside.Alterations;
using Hotside.Diagnoses;
using Hotside.Studies;

namespace Hotside.CheckSheets;

/// <summary>Parts a circuit into pieces that have a dictionary each: the whole where it is small, else one a fuse way.</summary>
internal static class SheetPieces
{
    // Parts and wires; beyond it pieces are quicker than the whole (own choice).
    private const int MostItems = 70;

    /// <summary>The benches of a circuit.</summary>
    /// <param name="study">The circuit.</param>
    /// <param name="alteration">The alteration, where the circuit is the altered one.</param>
    /// <param name="loads">The loads asked for; none for all.</param>
    public static IEnumerable<DiagnosisBench> Of(CircuitStudy study, Alteration? alteration, ImmutableArray<LoadStudy> loads)
    {
        if (!loads.IsEmpty || study.Circuit.Parts.Length + study.Circuit.Conductors.Length <= MostItems)
        {
            yield return DiagnosisBench.Of(study, alteration, loads);
            yield break;
        }
        HashSet<string> covered = new(StringComparer.Ordinal);
        foreach (var load in study.Loads.Where(l => !l.Element.IsInternal))
        {
            if (covered.Contains(load.Part.Id)) continue;
            var bench = DiagnosisBench.Of(study, alteration, [load]);
            covered.UnionWith(bench.Dictionary.Bench.Circuit.Parts.Select(p => p.Id));
            yield return bench;
        }
    }
}
