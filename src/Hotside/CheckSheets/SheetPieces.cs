using System.Collections.Immutable;
using Hotside.Diagnoses;
using Hotside.Studies;

namespace Hotside.CheckSheets;

/// <summary>Parts a circuit into pieces that have a dictionary each: the whole where it is small, else one a fuse way.</summary>
internal static class SheetPieces
{
    // Parts and wires; beyond it pieces are quicker than the whole. Pieces that have so much in common are one (own choices).
    private const int MostItems = 70;
    private const double MostlyOne = 0.9;

    /// <summary>The loads of each piece of a circuit; none for the whole circuit.</summary>
    /// <param name="study">The circuit.</param>
    /// <param name="loads">The loads asked for; none for all.</param>
    public static IEnumerable<ImmutableArray<LoadStudy>> Of(CircuitStudy study, ImmutableArray<LoadStudy> loads)
    {
        if (!loads.IsEmpty || study.Circuit.Parts.Length + study.Circuit.Conductors.Length <= MostItems) return [loads];
        var loose = LooseJoints.Of(study.Circuit);
        List<(HashSet<string> Items, List<LoadStudy> Loads)> pieces = [];
        foreach (var load in study.Loads.Where(l => !l.Element.IsInternal && !pieces.Exists(p => IsFedIn(l, p.Items))))
        {
            var piece = ConnectedPiece.Of(study, loose, [load]);
            HashSet<string> items = [.. piece.Parts.Select(p => p.Id), .. piece.Conductors.Select(c => c.Id)];
            if (pieces.Find(p => p.Items.Count(items.Contains) >= MostlyOne * Math.Max(p.Items.Count, items.Count)) is { Loads: not null } same)
            {
                same.Items.UnionWith(items);
                same.Loads.Add(load);
            }
            else pieces.Add((items, [load]));
        }
        return pieces.Select(p => p.Loads.ToImmutableArray());
    }

    // A piece may hold a load whose fuse it takes as pulled.
    private static bool IsFedIn(LoadStudy load, HashSet<string> items) => items.Contains(load.Part.Id) && load.Paths.All(p => p.HotWay.All(items.Contains) && p.GroundWay.All(items.Contains));
}
