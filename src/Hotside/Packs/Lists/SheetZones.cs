using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Drawings.Sheets;

namespace Hotside.Packs.Lists;

/// <summary>On which sheet and in which zone of the schematics a part or a wire is drawn.</summary>
internal sealed class SheetZones
{
    /// <summary>No schematics, no zones.</summary>
    public static readonly SheetZones None = new([], 0);

    private readonly Dictionary<string, string> zones = new(StringComparer.Ordinal);

    /// <summary>Reads the zones off finished pictures.</summary>
    /// <param name="drawings">The sheets, in order.</param>
    /// <param name="first">The number of the first of them.</param>
    public SheetZones(ImmutableArray<Drawing> drawings, int first)
    {
        // As it will be comes first; what is gone is only where it was.
        foreach (var views in new[] { new[] { View.After, View.Overlay }, [View.Before] })
            for (int i = 0; i < drawings.Length; i++)
            {
                SheetFrame frame = new(new("", drawings[i].Scene.Width, drawings[i].Scene.Height));
                foreach (var box in drawings[i].Boxes.Where(b => views.Contains(b.View)))
                    zones.TryAdd(box.Id, $"{Numbers.Whole(first + i)}.{frame.ZoneAt((box.Left + (box.Width / 2)) * 4, (box.Top + (box.Height / 2)) * 4)}");
            }
    }

    /// <summary>Whether there are schematics.</summary>
    public bool AreKnown => zones.Count > 0;

    /// <summary>Where something is, such as <c>3.C4</c>; empty where no sheet shows it.</summary>
    public string Of(string id) => zones.GetValueOrDefault(id, "");

    /// <summary>Where some things are, each zone once, three at most.</summary>
    public string OfAll(IEnumerable<string> ids)
    {
        string[] all = [.. ids.Select(Of).Where(z => z.Length > 0).Distinct()];
        return all.Length <= 3 ? string.Join(", ", all) : string.Join(", ", all.Take(2)) + " …";
    }
}
