using Hotside.Alterations;
using Hotside.Circuits;
using Hotside.Drawings.Marks;
using Hotside.Studies;
using Hotside.Symbols;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;
using Hotside.Wording;
using Change = Hotside.Alterations.PartState;
using Look = Hotside.Drawings.Marks.PartStyle;

namespace Hotside.Drawings.Plans;

/// <summary>Plans the parts of both circuits: symbol, text block, look.</summary>
internal sealed class PartPlanner(Alteration alteration, Study study, Lettering lettering, Vocabulary words, string? feedRail, PlanStyle style, LineFigures? figures = null)
{
    // Between a relay's axes where nothing asks for more.
    private const int Close = 11;

    // Half a symbol, the gap to its text, and the gap to the next wire.
    private const int BesideContact = 5;

    // Parts on whose terminals the list says what to do.
    private readonly HashSet<string> named = [.. alteration.Changes.SelectMany(c => c.Acts).SelectMany(a => a.Items)
        .SelectMany(i => new[] { alteration.Before.FindConductor(i), alteration.After.FindConductor(i) }).OfType<Conductor>().SelectMany(c => c.Ends).Select(e => e.Part).OfType<string>()];

    public IEnumerable<PlannedPart> All()
    {
        var ids = alteration.Before.Parts.Concat(alteration.After.Parts).Select(p => p.Id).Distinct();
        foreach (string id in ids)
        {
            Part? before = alteration.Before.FindPart(id), after = alteration.After.FindPart(id);
            var any = (after ?? before)!;
            // A box that only holds parts is told by its parts.
            if (any.Kind.Terminals.IsEmpty && !any.Kind.TakesAnyTerminal) continue;
            if (any.Kind.TakesAnyTerminal)
                foreach (var flag in Flags(id, before, after)) yield return flag;
            else yield return Aligned(new(id, id, View(before, true), View(after, false)) { Role = RoleOf(any) });
        }
    }

    private static PlannedPart Aligned(PlannedPart part)
    {
        if (part is not { Before: { } old, After: { } fresh, Role: PlannedRole.Symbol }) return part;
        var (before, after) = SymbolAlignment.Of(old.Symbol, fresh.Symbol);
        return part with
        {
            Before = old with { Symbol = before, Mirror = SymbolMirror.Aligned(old.Mirror, before) },
            After = fresh with { Symbol = after, Mirror = SymbolMirror.Aligned(fresh.Mirror, after) },
        };
    }

    private PlannedRole RoleOf(Part part) =>
        part.Id == feedRail ? PlannedRole.FeedRail
        : alteration.After.System.Return?.Part == part.Id || alteration.Before.System.Return?.Part == part.Id ? PlannedRole.ReturnRail
        : PlannedRoles.Of(part);

    // In either circuit, so that a part that stays keeps its size.
    private HashSet<string> Labelled(string part) =>
        [.. alteration.Before.Conductors.Concat(alteration.After.Conductors).Where(c => c.Wire.Label.Length > 0 || !alteration.NumbersOf(c.Id).IsEmpty).SelectMany(c => c.Ends).Where(e => e.Part == part).Select(e => e.Terminal)];

    private PartView? View(Part? part, bool isBefore)
    {
        if (part is null) return null;
        var circuit = isBefore ? alteration.Before : alteration.After;
        var change = alteration.StateOf(part.Id);
        bool reversed = change is Change.Reversed or Change.ReplacedReversed && !isBefore;
        SymbolOfPart? drawn = null;
        if (PlannedRoles.Of(part) == PlannedRole.Symbol && WayOrder.Of(part.Id, alteration, isBefore, lettering) is var (order, pitch))
            drawn = new(part, circuit, lettering) { IsReversed = reversed, Spread = SpreadOf(part.Id), LeastPitch = pitch, Order = order, Labelled = Labelled(part.Id), IsNamed = named.Contains(part.Id) };
        var symbol = drawn?.Draw() ?? new("", 0, 0, [], []);
        if (RoleOf(part) == PlannedRole.Rail && Rail.InnerLabel(words.Rail(part), RailPotential.Of(part.Id, circuit), NumberOf(part.Id), lettering) is var name) return new(part, symbol, name, name, LookOf(change, isBefore), false);
        return new(part, symbol, Text(part, isBefore, false), Text(part, isBefore, true), LookOf(change, isBefore), change == Change.Reversed)
        {
            Mirror = drawn is null ? null : SymbolMirror.Of(symbol, drawn),
        };
    }

    // Between a relay's contact and its coil hangs what the contact feeds, with its text: the coil stands far enough away, in both views alike.
    // In a close drawing that text goes to the left.
    private int SpreadOf(string id) => style.HasCloseRelays ? Close :
        new[] { (alteration.Before, true), (alteration.After, false) }.SelectMany(v => Fed(id, v.Item1).Select(p => (int)Math.Ceiling(Text(p, v.Item2, false).Width / Symbol.Module) + BesideContact)).Append(Close).Max();

    private static IEnumerable<Part> Fed(string id, Circuit circuit)
    {
        if (circuit.FindPart(id) is not { } relay || relay.Kind.Elements.All(e => e.Type != ElementType.Coil)) return [];
        var outs = relay.Kind.Elements.Where(e => e.Type == ElementType.Contact).Select(e => End.At(id, e.To)).ToHashSet();
        return circuit.Conductors.SelectMany(c => outs.Contains(c.From) ? [c.To] : outs.Contains(c.To) ? new[] { c.From } : [])
            .Select(e => e.Part).OfType<string>().Select(circuit.FindPart).OfType<Part>().Where(p => PlannedRoles.Of(p) == PlannedRole.Symbol && !p.Kind.TakesAnyTerminal);
    }

    // What lies elsewhere is a flag at each of its terminals.
    private IEnumerable<PlannedPart> Flags(string id, Part? before, Part? after)
    {
        var terminals = new[] { alteration.Before, alteration.After }.SelectMany(c => c.Conductors).SelectMany(c => c.Ends).Where(e => e.Part == id).Select(e => e.Terminal).Distinct();
        foreach (string terminal in terminals)
            yield return new(CircuitEnds.FlagBox(id, terminal), id, Flag(before, alteration.Before, terminal), Flag(after, alteration.After, terminal));
    }

    private PartView? Flag(Part? part, Circuit circuit, string terminal)
    {
        if (part is null || !circuit.ConductorsAt(End.At(part.Id, terminal)).Any()) return null;
        // What the list names has its reference, wires that end there too.
        string text = $"{(NumberOf(part.Id) is not null || named.Contains(part.Id) ? part.Id + "." : "")}{terminal} · {words.Title(part)}";
        bool feeds = study.Before.Loads.Concat(study.After.Loads).Any(l => l.FedFrom.Contains(End.At(part.Id, terminal)));
        var symbol = FlagSymbol.Of(text, text, isPinAbove: !feeds, isOut: !feeds, lettering);
        // What is to be done there is found by its number alone.
        var number = NumberOf(part.Id) is { } told ? Triangle.Of(told, lettering) : Piece.Empty;
        return new(part, symbol, number, number, Look.Kept, false);
    }

    /// <summary>A part that is in both circuits as the overlay shows it: as it will be, with what it was in words.</summary>
    public PartView Overlaid(PartView before, PartView after)
    {
        if (after.Text.Shapes.IsEmpty) return after;
        var caption = Caption(after.Part, false).Over(Caption(before.Part, true));
        return after with { Text = Text(caption, false), TextLeft = Text(caption, true) };
    }

    /// <summary>A part with its reference alone.</summary>
    public PartView Referenced(PartView view) => view with { Text = Text(Bare(view.Part.Id), false), TextLeft = Text(Bare(view.Part.Id), true) };

    private static PartCaption Bare(string id) => new(id, "", "", "", []);

    // What is marked stands in the place of what is done to a part.
    private PartCaption Caption(Part part, bool isBefore) =>
        PartCaption.Of(part, isBefore, alteration, isBefore ? study.Before : study.After, words) is var caption && figures?.TextOf(part, isBefore) is { Length: > 0 } mark ? caption with { State = mark } : caption;

    private Piece Text(Part part, bool isBefore, bool left) => Text(Caption(part, isBefore), left);

    private Piece Text(PartCaption caption, bool left)
    {
        string[] ratings = [caption.Was, caption.Rating];
        TextBlock block = new()
        {
            Reference = caption.Reference,
            Number = NumberOf(caption.Reference),
            Name = caption.Name,
            Ratings = [.. ratings.Where(r => r.Length > 0)],
            StateWord = caption.State,
            RightAligned = left,
            Lettering = lettering,
        };
        return (caption.Verdicts.IsEmpty ? block : style.HasSwitchTable ? block with { Signs = [.. caption.Verdicts.Select(v => v.Side).Distinct()] } : block with
        {
            Side = caption.Verdicts[0].Side,
            SideText = SideText.Badge(caption.Verdicts[0].Side, words),
            By = string.Join("; ", Before(caption).Concat(caption.Verdicts.Select(v => v.Beside(caption.Verdicts[0], words))).Where(b => b.Length > 0)),
        }).Measure();
    }

    private IEnumerable<string> Before(PartCaption caption) => caption.SideBefore is { } side ? ["before " + SideText.Of(side, words)] : [];

    private ChangeNumber? NumberOf(string id) => ChangeLook.NumberOf(id, alteration);

    /// <summary>The look by which a state shows in a view.</summary>
    public static Look LookOf(Change state, bool isBefore) => state switch
    {
        Change.TakenOut => Look.TakenOut,
        Change.Fitted => Look.New,
        Change.Replaced or Change.ReplacedReversed => isBefore ? Look.ToBeReplaced : Look.New,
        Change.Reversed or Change.Remounted => Look.Moved,
        _ => Look.Kept,
    };
}
