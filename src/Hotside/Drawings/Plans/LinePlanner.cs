using System.Collections.Immutable;
using Hotside.Alterations;
using Hotside.Circuits;
using Hotside.Drawings.Marks;
using Hotside.Layouts;
using Hotside.Symbols;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;
using Change = Hotside.Alterations.ConductorState;
using Look = Hotside.Drawings.Marks.LineStyle;

namespace Hotside.Drawings.Plans;

/// <summary>Plans the lines of both circuits: conductors, joints without a conductor, leads of cases. What lies alike in both is one line.</summary>
internal sealed class LinePlanner
{
    /// <summary>Ends the name of a joint that lies at a second place.</summary>
    public const string Again = " (new)";

    /// <summary>Begins the name of the place where a spare ends.</summary>
    public const string FreeBox = "free ";

    // How symbols mark the terminal of a case.
    private const string Case = "case";

    private readonly Alteration alteration;
    private readonly Lettering lettering;
    private readonly LineFigures? figures;
    private readonly CircuitEnds before, after;
    private readonly IReadOnlyDictionary<string, PlannedPart> parts;
    private readonly List<PlannedLine> lines = [];
    private readonly List<LayoutWire> wires = [];
    private readonly List<PlannedPart> free = [];

    public LinePlanner(Alteration alteration, string? feedRail, IReadOnlyList<PlannedPart> parts, Lettering lettering, LineFigures? figures = null)
    {
        this.alteration = alteration;
        this.lettering = lettering;
        this.figures = figures;
        this.parts = parts.ToDictionary(p => p.Box, StringComparer.Ordinal);
        before = new(alteration.Before, feedRail, Symbols(parts, p => p.Before));
        after = new(alteration.After, feedRail, Symbols(parts, p => p.After));
    }

    public ImmutableArray<LayoutWire> Wires => [.. wires];

    /// <summary>The places where spares end.</summary>
    public IReadOnlyList<PlannedPart> FreeEnds => free;

    public IReadOnlyList<PlannedLine> All()
    {
        foreach (string id in alteration.Before.Conductors.Concat(alteration.After.Conductors).Select(c => c.Id).Distinct())
            Conductor(id, alteration.Before.FindConductor(id), alteration.After.FindConductor(id));
        Leads(Joints(alteration.Before), Joints(alteration.After));
        return lines;
    }

    private static Dictionary<string, Symbol> Symbols(IEnumerable<PlannedPart> parts, Func<PlannedPart, PartView?> view) =>
        parts.Where(p => p.Role == PlannedRole.Symbol && view(p) is { } v && !v.Part.Kind.TakesAnyTerminal).ToDictionary(p => p.PartId, p => view(p)!.Symbol, StringComparer.Ordinal);

    private void Conductor(string id, Conductor? was, Conductor? now)
    {
        var state = alteration.StateOfConductor(id);
        var old = was is null ? null : View(was, alteration.Before, state, true);
        var fresh = now is null ? null : View(now, alteration.After, state, false);
        (LayoutEnd, LayoutEnd)? oldEnds = was is null ? null : Ends(was, before, true), newEnds = now is null ? null : Ends(now, after, false);
        if (oldEnds is { } a && newEnds is { } b && (a == b || a == (b.Item2, b.Item1))) Add(id, id, a, old, a == b ? fresh : fresh! with { Ends = (fresh.Ends.To, fresh.Ends.From) });
        else
        {
            if (oldEnds is { } first) Add(newEnds is null ? id : id + " (was)", id, first, old, null);
            if (newEnds is { } second) Add(id, id, second, null, fresh);
        }
    }

    private (LayoutEnd, LayoutEnd) Ends(Conductor conductor, CircuitEnds ends, bool isBefore)
    {
        foreach (var end in conductor.Ends.Where(e => e.IsFree)) FreeEnd(conductor.Id, isBefore);
        return (InBox(ends.Of(conductor.From, conductor.To, conductor.Id), isBefore), InBox(ends.Of(conductor.To, conductor.From, conductor.Id), isBefore));
    }

    // A replacement of another size has a box of its own.
    private LayoutEnd InBox(LayoutEnd end, bool isBefore) =>
        !isBefore && end.Kind == EndKind.Pin && parts.TryGetValue(end.Box, out var part) && !BoxPlanner.Share(part) ? end with { Box = end.Box + BoxPlanner.Replacement } : end;

    private void FreeEnd(string conductor, bool isBefore)
    {
        string box = FreeBox + conductor;
        var symbol = SymbolBook.Of("stud", [SymbolTerminal.Of(CircuitEnds.Point, SymbolSide.Any)], new() { Lettering = lettering }) with { Width = 2, Height = 2 };
        symbol = symbol with { Pins = [new(CircuitEnds.Point, 1, 0, SymbolSide.Top)], Shapes = [.. symbol.Shapes.Select(s => s.Shifted(10, 3))] };
        var part = (isBefore ? alteration.Before : alteration.After).Parts[0];
        var view = new PartView(part, symbol, Piece.Empty, Piece.Empty, PartStyle.Kept, false);
        int known = free.FindIndex(f => f.Box == box);
        if (known < 0) free.Add(new(box, "", isBefore ? view : null, isBefore ? null : view));
        else free[known] = isBefore ? free[known] with { Before = view } : free[known] with { After = view };
    }

    private LineView View(Conductor conductor, Circuit circuit, Change state, bool isBefore)
    {
        var look = LookOf(state, isBefore);
        var number = ChangeLook.NumberOf(conductor.Id, alteration);
        string label = conductor.Wire.Label.Length > 0 ? conductor.Wire.Label : conductor.Wire.Name ?? "";
        // An end that hangs bears a tag, and so does the drawing.
        if (conductor.Wire.Role != WireRole.Spare && conductor.Ends.Any(e => e.IsFree)) label = $"{conductor.Id}: {label}";
        string title = string.Join(", ", new[] { conductor.Id, label, $"{circuit.TextOf(conductor.From)} to {circuit.TextOf(conductor.To)}" }.Where(t => t.Length > 0));
        if (figures is null) return new(label, number, look, title) { Ends = (NameOf(conductor.From), NameOf(conductor.To)) };
        string figure = figures.TextOf(conductor, isBefore);
        return new(figure, number, look, figure.Length > 0 ? $"{title}: {figure}" : title) { IsLive = figures.IsLive(conductor.Id, isBefore) };

        // The part is enough: its terminal need not be printed.
        string NameOf(End end) => end.Part ?? circuit.TextOf(end);
    }

    /// <summary>The line by which a state shows in a view.</summary>
    public static Look LookOf(Change state, bool isBefore) => state switch
    {
        Change.TakenOut => Look.TakenOut,
        Change.RunNew => Look.New,
        Change.Moved or Change.UsedElsewhere => Look.Moved,
        Change.MovedAndRenewed => isBefore ? Look.Moved : Look.Renewed,
        Change.Renewed => Look.Renewed,
        _ => Look.Kept,
    };

    private void Add(string line, string? conductor, (LayoutEnd From, LayoutEnd To) ends, LineView? old, LineView? fresh)
    {
        var seen = (old is null ? 0 : SeenIn.Before) | (fresh is null ? 0 : SeenIn.After);
        Piece[] labels = [.. new[] { old, fresh }.OfType<LineView>().Select(v => WireLabel.Of(v.Label, v.Number, LabelSide.Along, lettering))];
        lines.Add(new(line, conductor, old, fresh));
        wires.Add(new(line, conductor ?? line, ends.From, ends.To, seen)
        {
            LabelWidth = labels.Max(l => l.Width) / Symbol.Module,
            LabelHeight = labels.Max(l => l.Width == 0 ? 0 : l.Height) / Symbol.Module,
            EndWidths = (NamingWidth([old, fresh], NamedEnd.From, lettering), NamingWidth([old, fresh], NamedEnd.To, lettering)),
            LabelFoot = new[] { old, fresh }.OfType<LineView>().Max(v => WireLabel.Foot(v.Number, lettering)) / Symbol.Module,
            Short = conductor is null,
            IfLong = conductor is null && labels.All(l => l.Width > 0) && new[] { old, fresh }.OfType<LineView>().All(v => v.Label.Length == 0),
        });
    }

    /// <summary>By how much a label gets wider, in modules, that names an end; 0 where it has no room for that.</summary>
    public static double NamingWidth(IEnumerable<LineView?> views, NamedEnd end, Lettering lettering)
    {
        LineView[] shown = [.. views.OfType<LineView>()];
        if (shown.Any(v => v.Ends.From.Length == 0 || v.Label.Length == 0)) return 0;
        double Width(NamedEnd named) => shown.Max(v => WireLabel.Of(v.LabelNaming(named), v.Number, LabelSide.Along, lettering).Width);
        return (Width(end) - Width(NamedEnd.None)) / Symbol.Module;
    }

    // Terminals bolted to a node, and cases that stand on something.
    private static IEnumerable<(End From, End To)> Joints(Circuit circuit)
    {
        foreach (var part in circuit.Parts)
        {
            foreach (var joint in part.Joints) yield return (End.At(part.Id, joint.Terminal), joint.On);
            if (part.CaseOn is { } on && part.Kind.HasCaseTerminal) yield return (Nodes.CaseOf(part), on);
        }
    }

    private void Leads(IEnumerable<(End From, End To)> old, IEnumerable<(End From, End To)> fresh)
    {
        var planned = new List<(string Name, (LayoutEnd, LayoutEnd) Ends, SeenIn Seen, End Of)>();
        foreach (var (joints, ends, isBefore) in new[] { (old, before, true), (fresh, after, false) })
            foreach (var (from, to) in joints)
            {
                var place = (InBox(ends.Of(from, to, ""), isBefore), InBox(ends.Of(to, from, ""), isBefore));
                var view = isBefore ? SeenIn.Before : SeenIn.After;
                int known = planned.FindIndex(p => p.Ends == place);
                if (known >= 0) planned[known] = planned[known] with { Seen = planned[known].Seen | view };
                else planned.Add((Unused($"{from} on {to}"), place, view, from));
            }
        // One joint may lie at two places: where the part was, and where its replacement is.
        string Unused(string name) => planned.Any(p => p.Name == name) ? name + Again : name;
        foreach (var (name, ends, seen, of) in planned)
        {
            var look = LookOfLead(alteration.StateOf(of.Part!), seen);
            // Far from its part a lead says by which change it comes or goes; that of a case never does, since most are too short.
            var number = of.Terminal != Case && look != Look.Kept ? ChangeLook.NumberOf(of.Part!, alteration) : null;
            var view = new LineView(figures is null ? CaseWord(of, seen) : "", number, look, name);
            LineView? In(SeenIn which) => (seen & which) == 0 ? null : view with { IsLive = figures?.IsLive(of, which == SeenIn.Before) == true };
            Add(name, null, ends, In(SeenIn.Before), In(SeenIn.After));
        }
    }

    // Said once: at the pin, where the symbol has it, else at the lead.
    private string CaseWord(End of, SeenIn seen) =>
        of.Terminal == Case && !new[] { SeenIn.Before, SeenIn.After }.Where(v => (seen & v) != 0).Select(v => parts.GetValueOrDefault(of.Part!)?.In(v)).OfType<PartView>().Any(v => v.Symbol.Shapes.OfType<TextShape>().Any(t => t.Text == Case)) ? Case : "";

    // A lead comes and goes with its part.
    private static Look LookOfLead(PartState part, SeenIn seen) => (part, seen) switch
    {
        (PartState.Fitted, SeenIn.After) => Look.New,
        (PartState.TakenOut, SeenIn.Before) => Look.TakenOut,
        (PartState.Remounted, SeenIn.Before or SeenIn.After) => Look.Moved,
        _ => Look.Kept,
    };
}
