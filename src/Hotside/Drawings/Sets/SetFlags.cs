using System.Collections.Immutable;
using Hotside.Drawings.Plans;
using Hotside.Layouts;
using Hotside.Symbols;
using Hotside.Symbols.Texts;

namespace Hotside.Drawings.Sets;

/// <summary>Finds the flags of a set of sheets: two for each line that is cut, and for each rail on several sheets one where it begins and one where it goes on.</summary>
internal sealed class SetFlags(DrawingPlan plan, IReadOnlyList<Block> sheets)
{
    private const double WidestName = 110;

    private readonly Dictionary<string, LayoutWire> wires = plan.Input.Wires.ToDictionary(w => w.Id, StringComparer.Ordinal);
    private readonly Dictionary<string, PlannedPart> parts = plan.Parts.ToDictionary(p => p.Box, StringComparer.Ordinal);

    /// <summary>The flags of each sheet.</summary>
    public ImmutableArray<SheetFlag>[] All()
    {
        List<SheetFlag>[] flags = [.. sheets.Select(_ => new List<SheetFlag>())];
        for (int sheet = 0; sheet < sheets.Count; sheet++)
            foreach (var cut in sheets[sheet].Cuts)
                flags[sheet].Add(OfCut(cut, Enumerable.Range(0, sheets.Count).FirstOrDefault(s => sheets[s].Cuts.Contains(cut with { KeepsFrom = !cut.KeepsFrom }), -1)));
        foreach (var rail in plan.Parts.Where(p => p.Role is PlannedRole.Rail or PlannedRole.FeedRail or PlannedRole.ReturnRail)) AddRail(rail, flags);
        return [.. flags.Select(f => f.ToImmutableArray())];
    }

    private SheetFlag OfCut(CutLine cut, int other)
    {
        var wire = wires[cut.Line];
        var (near, far) = cut.KeepsFrom ? (wire.From, wire.To) : (wire.To, wire.From);
        Side nearSide = SideOf(near), farSide = SideOf(far);
        // A flag hangs below a lower terminal; of two alike the first goes out.
        bool isPinAbove = nearSide == Side.Bottom || (nearSide != Side.Top && farSide != Side.Bottom);
        bool isOut = nearSide == farSide || (nearSide != Side.Bottom && farSide != Side.Bottom && nearSide != Side.Top && farSide != Side.Top) ? cut.KeepsFrom : isPinAbove;
        return new(BoxOf(cut), cut.Line, NameOf(cut.Line, far), wire.Seen, isPinAbove, isOut) { KeepsFrom = cut.KeepsFrom, Partners = other < 0 ? [] : [(other, BoxOf(cut with { KeepsFrom = !cut.KeepsFrom }))] };
    }

    private static string BoxOf(CutLine cut) => $"flag {cut.Line} {(cut.KeepsFrom ? "from" : "to")}";

    private Side SideOf(LayoutEnd end) => end.Kind != EndKind.Pin ? Side.Centre : plan.Input.Boxes.First(b => b.Id == end.Box).Pins.FirstOrDefault(p => p.Name == end.Pin)?.Side ?? Side.Centre;

    private string NameOf(string line, LayoutEnd far)
    {
        string? farPart = parts.GetValueOrDefault(Block.OwnerOf(far.Box))?.PartId;
        if (plan.Lines.First(l => l.Line == line) is not { Conductor: { } id } planned) return farPart ?? "";
        var circuit = planned.After is not null ? plan.Alteration.After : plan.Alteration.Before;
        return circuit.FindConductor(id) is { } conductor ? SheetFlag.NameOf(conductor, farPart, circuit) : farPart ?? "";
    }

    private void AddRail(PlannedPart rail, List<SheetFlag>[] flags)
    {
        SeenIn[] seen = [.. sheets.Select(s => SeenOn(rail, s))];
        int[] on = [.. Enumerable.Range(0, sheets.Count).Where(s => seen[s] != 0)];
        if (on.Length < 2) return;
        string name = TextMeasure.Shorten(plan.Words.Title((rail.After ?? rail.Before)!.Part), plan.Lettering.SmallBold, WidestName * plan.Lettering.Factor);
        bool hangs = rail.Role != PlannedRole.ReturnRail;
        int home = on[0];
        int[] others = [.. on.Skip(1).Where(s => (seen[s] & seen[home]) != 0)];
        if (others.Length == 0) return;
        SheetFlag Flag(int sheet, SeenIn where, bool isOut, IEnumerable<int> partners) =>
            new(RailBox(rail, sheet), rail.Box, name, where, hangs, isOut) { IsRail = true, Partners = [.. partners.Select(p => (p, RailBox(rail, p)))] };
        flags[home].Add(Flag(home, seen[home] & others.Aggregate((SeenIn)0, (all, s) => all | seen[s]), true, others));
        foreach (int sheet in others) flags[sheet].Add(Flag(sheet, seen[sheet] & seen[home], false, [home]));
    }

    private static string RailBox(PlannedPart rail, int sheet) => $"flag {rail.Box} {Circuits.Numbers.Whole(sheet + 1)}";

    // Which circuits show the rail on a sheet: those of the lines that end on it there.
    private SeenIn SeenOn(PlannedPart rail, Block sheet)
    {
        bool Touches(LayoutEnd end) => rail.Role switch
        {
            PlannedRole.FeedRail => end.Kind == EndKind.Feed,
            PlannedRole.ReturnRail => end.Kind == EndKind.Chassis,
            _ => end.Kind == EndKind.Pin && end.Box == rail.Box,
        };
        var whole = sheet.Lines.Select(l => wires[l]).Where(w => Touches(w.From) || Touches(w.To));
        var cut = sheet.Cuts.Where(c => Touches(c.KeepsFrom ? wires[c.Line].From : wires[c.Line].To)).Select(c => wires[c.Line]);
        return whole.Concat(cut).Aggregate((SeenIn)0, (all, w) => all | w.Seen);
    }
}
