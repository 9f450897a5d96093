using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnoses;
using Hotside.Studies;

namespace Hotside.CheckSheets;

/// <summary>A piece of a circuit that has a dictionary of its own.</summary>
/// <param name="Loads">Its loads; none for the whole circuit.</param>
internal sealed record SheetPiece(ImmutableArray<LoadStudy> Loads)
{
    /// <summary>The parts and wires whose faults an earlier piece shows: those of the common feed.</summary>
    public IReadOnlySet<string> Elsewhere { get; init; } = ImmutableHashSet<string>.Empty;
}

/// <summary>Parts a circuit into pieces: the whole where it is small, else one a fuse way.</summary>
internal static class SheetPieces
{
    // Parts and wires; beyond it pieces are quicker than the whole. Pieces that have so much in common are one (own choices).
    private const int MostItems = 70;
    private const double MostlyOne = 0.9;

    // As a way to the return ends.
    private static readonly string Chassis = End.Chassis.ToString();

    /// <summary>The pieces of a circuit, in the order of its loads.</summary>
    /// <param name="study">The circuit.</param>
    /// <param name="loads">The loads asked for; none for all.</param>
    public static ImmutableArray<SheetPiece> Of(CircuitStudy study, ImmutableArray<LoadStudy> loads)
    {
        if (!loads.IsEmpty || study.Circuit.Parts.Length + study.Circuit.Conductors.Length <= MostItems) return [new(loads)];
        var loose = LooseJoints.Of(study.Circuit);
        List<(HashSet<string> Items, List<LoadStudy> Loads)> pieces = [];
        foreach (var load in study.Loads.Where(l => !l.Element.IsInternal && !pieces.Exists(p => IsFedIn(l, p.Items))))
        {
            var items = Items(ConnectedPiece.Of(study, loose, [load]));
            if (pieces.Find(p => p.Items.Count(items.Contains) >= MostlyOne * Math.Max(p.Items.Count, items.Count)) is { Loads: not null } same)
            {
                same.Items.UnionWith(items);
                same.Loads.Add(load);
            }
            else pieces.Add((items, [load]));
        }
        return Parted(study, pieces);
    }

    // What lies on the way of a piece's loads is its own, unless it was on that of an earlier one; what lies on none is the first one's that holds it.
    private static ImmutableArray<SheetPiece> Parted(CircuitStudy study, List<(HashSet<string> Items, List<LoadStudy> Loads)> pieces)
    {
        Dictionary<string, int> owner = new(StringComparer.Ordinal);
        for (int p = 0; p < pieces.Count; p++)
            foreach (string item in study.Loads.Where(l => IsFedIn(l, pieces[p].Items)).SelectMany(l => l.Paths.SelectMany(w => w.HotWay.Concat(w.GroundWay)).Append(l.Part.Id))) owner.TryAdd(item, p);
        for (int p = 0; p < pieces.Count; p++)
            foreach (string item in pieces[p].Items) owner.TryAdd(item, p);
        return [.. pieces.Select((piece, p) => new SheetPiece([.. piece.Loads]) { Elsewhere = piece.Items.Where(i => owner[i] != p).ToHashSet(StringComparer.Ordinal) })];
    }

    private static HashSet<string> Items(Circuit piece) => [.. piece.Parts.Select(p => p.Id), .. piece.Conductors.Select(c => c.Id)];

    // A piece may hold a load whose fuse it takes as pulled.
    private static bool IsFedIn(LoadStudy load, HashSet<string> items) => items.Contains(load.Part.Id) && load.Paths.All(p => p.HotWay.Concat(p.GroundWay).All(i => i == Chassis || items.Contains(i)));
}
