using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Drawings.Plans;
using Hotside.Layouts;
using Hotside.Symbols;
using Hotside.Symbols.Shapes;
using Hotside.Wording;

namespace Hotside.Drawings.Sets;

/// <summary>Finds the flags of a set of sheets: two for each line that is cut, and for each rail on several sheets one where it begins and one where it goes on.</summary>
/// <param name="plan">The whole.</param>
/// <param name="sheets">What stands on each sheet.</param>
/// <param name="falls">For each line whether its first end is the hotter one.</param>
/// <param name="leastZones">For how many zones a rail's flag has room at least.</param>
/// <param name="widestZone">The widest zone that a flag may have to name.</param>
internal sealed class SetFlags(DrawingPlan plan, IReadOnlyList<Block> sheets, IReadOnlyDictionary<string, bool> falls, int leastZones, string widestZone)
{
    // A flag of one line is about so many modules wide, with the gap to the next.
    private const int OneLine = 10;

    private readonly Dictionary<string, LayoutBox> boxes = plan.Input.Boxes.ToDictionary(b => b.Id, StringComparer.Ordinal);
    private readonly Dictionary<string, LayoutWire> wires = plan.Input.Wires.ToDictionary(w => w.Id, StringComparer.Ordinal);
    private readonly Dictionary<string, PlannedPart> parts = plan.Parts.ToDictionary(p => p.Box, StringComparer.Ordinal);

    /// <summary>The flags of each sheet.</summary>
    public ImmutableArray<SheetFlag>[] All()
    {
        List<SheetFlag>[] flags = [.. sheets.Select(_ => new List<SheetFlag>())];
        for (int sheet = 0; sheet < sheets.Count; sheet++)
            foreach (var cut in sheets[sheet].Cuts)
                flags[sheet].Add(OfCut(cut, sheets[sheet].Cuts, Enumerable.Range(0, sheets.Count).FirstOrDefault(s => sheets[s].Cuts.Contains(cut with { KeepsFrom = !cut.KeepsFrom }), -1)));
        foreach (var shared in plan.Parts.Where(Block.IsShared)) AddShared(shared, flags);
        return [.. flags.Select(InOneForm)];
    }

    // One with two lines beside one with one looks like another kind of flag; those of rails name several sheets in a row.
    private static ImmutableArray<SheetFlag> InOneForm(List<SheetFlag> flags) =>
        flags.Exists(f => f.IsStacked) ? [.. flags.Select(f => f with { IsStacked = f.End is null })] : [.. flags];

    // The half with the hotter end goes out, its flag hanging below; at the other it comes in from above.
    private SheetFlag OfCut(CutLine cut, IEnumerable<CutLine> all, int other)
    {
        var wire = wires[cut.Line];
        bool isOut = falls[cut.Line] == cut.KeepsFrom;
        var far = cut.KeepsFrom ? wire.To : wire.From;
        return new(BoxOf(cut), cut.Line, NameOf(cut.Line, far, plan.Alteration.After) ?? NameOf(cut.Line, far, plan.Alteration.Before) ?? "", wire.Seen, null, isOut, isOut)
        {
            NameBefore = NameOf(cut.Line, far, plan.Alteration.Before),
            KeepsFrom = cut.KeepsFrom, WidestZone = widestZone, IsStacked = PinOf(cut) is { } pin && all.Any(c => IsClose(pin, PinOf(c))), Partners = other < 0 ? [] : [(other, BoxOf(cut with { KeepsFrom = !cut.KeepsFrom }))],
        };
    }

    // Where a line leaves a part on this sheet.
    private (string Box, LayoutPin Pin)? PinOf(CutLine cut)
    {
        var end = cut.KeepsFrom ? wires[cut.Line].From : wires[cut.Line].To;
        return end.Kind == EndKind.Pin && boxes.TryGetValue(end.Box, out var box) && box.Pins.FirstOrDefault(p => p.Name == end.Pin) is { } pin ? (end.Box, pin) : null;
    }

    // Flags at neighbouring pins are narrow, so that their lines run straight; ways of a connector may come to be neighbours wherever they were given.
    private bool IsClose((string Box, LayoutPin Pin) one, (string Box, LayoutPin Pin)? other) =>
        other is { } next && next.Box == one.Box && next.Pin.Side == one.Pin.Side && next.Pin.X != one.Pin.X && (boxes[one.Box].Ways.Length > 1 || Math.Abs(next.Pin.X - one.Pin.X) <= OneLine);

    private static string BoxOf(CutLine cut) => $"flag {cut.Line} {(cut.KeepsFrom ? "from" : "to")}";

    // The terminals of what is replaced may have other names. One that is not drawn is not named: the flag there shows on which side of the part the line lies.
    private string? NameOf(string line, LayoutEnd far, Circuit circuit)
    {
        var farPart = parts.GetValueOrDefault(BoxPlanner.OwnerOf(far.Box));
        if (plan.Lines.First(l => l.Line == line) is not { Conductor: { } id } planned) return farPart?.PartId ?? "";
        bool isBefore = circuit == plan.Alteration.Before;
        if ((isBefore ? planned.Before : planned.After) is null) return null;
        if (circuit.FindConductor(id) is not { } conductor) return farPart?.PartId ?? "";
        var end = conductor.From.Part == farPart?.PartId ? conductor.From : conductor.To;
        return farPart?.In(isBefore ? SeenIn.Before : SeenIn.After) is { } view && !IsDrawn(end.Terminal, view.Symbol) ? farPart.PartId : EndWords.Of(end, circuit);
    }

    // What has no symbol, or ends in a flag, names itself.
    private static bool IsDrawn(string terminal, Symbol symbol) =>
        symbol.Shapes.IsEmpty || symbol.Name == "flag" || symbol.Shapes.OfType<TextShape>().Any(t => t.Text == terminal);

    // A rail goes out where it is fed, metal comes in where its strap is.
    private void AddShared(PlannedPart shared, List<SheetFlag>[] flags)
    {
        SeenIn[] seen = [.. sheets.Select(s => SeenOn(shared, s))];
        int[] on = [.. Enumerable.Range(0, sheets.Count).Where(s => seen[s] != 0)];
        if (on.Length < 2) return;
        bool isMetal = shared.Role == PlannedRole.Symbol;
        int home = on.FirstOrDefault(s => isMetal ? EndsOn(shared, sheets[s]).Any(e => e.End.Pin == CircuitEnds.Below) : EndsOn(shared, sheets[s]).Any(e => e.IsFed), on[0]);
        int[] others = [.. on.Where(s => s != home && (seen[s] & seen[home]) != 0)];
        if (others.Length == 0) return;
        // The rail itself has its name as well.
        string name = shared.PartId;
        SheetFlag Flag(int sheet, SeenIn where, bool isOut, int[] partners) => new(RailBox(shared, sheet), shared.Box, name, where, End(shared, isOut), IsPinAbove(shared, isOut), isOut)
        {
            Partners = [.. partners.Select(p => (p, RailBox(shared, p)))], Zones = Math.Max(leastZones, partners.Length), WidestZone = widestZone,
        };
        flags[home].Add(Flag(home, seen[home] & others.Aggregate((SeenIn)0, (all, s) => all | seen[s]), !isMetal, others));
        foreach (int sheet in others) flags[sheet].Add(Flag(sheet, seen[sheet] & seen[home], isMetal, [home]));
    }

    private static LayoutEnd End(PlannedPart shared, bool isOut) => shared.Role switch
    {
        PlannedRole.FeedRail => LayoutEnd.Feed,
        PlannedRole.ReturnRail => LayoutEnd.Chassis,
        PlannedRole.Rail => LayoutEnd.At(shared.Box, CircuitEnds.Point),
        _ => LayoutEnd.At(shared.Box, isOut ? CircuitEnds.Below : CircuitEnds.Above),
    };

    // Nothing stands above the feed, nothing hangs below the return.
    private static bool IsPinAbove(PlannedPart shared, bool isOut) => shared.Role == PlannedRole.FeedRail || (isOut && shared.Role != PlannedRole.ReturnRail);

    private static string RailBox(PlannedPart rail, int sheet) => $"flag {rail.Box} {Numbers.Whole(sheet + 1)}";

    // Which circuits show it on a sheet: those of the lines that end on it there.
    private SeenIn SeenOn(PlannedPart shared, Block sheet) => EndsOn(shared, sheet).Aggregate((SeenIn)0, (all, e) => all | e.Seen);

    // The ends of a sheet's lines on it, and whether the line brings its feed.
    private IEnumerable<(LayoutEnd End, bool IsFed, SeenIn Seen)> EndsOn(PlannedPart shared, Block sheet)
    {
        bool IsOn(LayoutEnd end) => shared.Role switch
        {
            PlannedRole.FeedRail => end.Kind == EndKind.Feed,
            PlannedRole.ReturnRail => end.Kind == EndKind.Chassis,
            _ => end.Kind == EndKind.Pin && end.Box == shared.Box,
        };
        foreach (var (line, kept) in sheet.Lines.Select(l => (l, (bool?)null)).Concat(sheet.Cuts.Select(c => (c.Line, (bool?)c.KeepsFrom))))
        {
            var wire = wires[line];
            if (kept != false && IsOn(wire.From)) yield return (wire.From, !falls[line], wire.Seen);
            if (kept != true && IsOn(wire.To)) yield return (wire.To, falls[line], wire.Seen);
        }
    }
}
