using System.Collections.Immutable;
using Hotside.Alterations;
using Hotside.Circuits;
using Hotside.Studies;

namespace Hotside.Wording;

/// <summary>What stands beside a part: name, ratings, state, verdicts.</summary>
/// <param name="Reference">The part's id.</param>
/// <param name="Name">Its name; empty where the symbol says enough.</param>
/// <param name="Rating">Its ratings in one line; empty when none.</param>
/// <param name="State">What is done to it, in a word or two; empty when nothing.</param>
/// <param name="Verdicts">A verdict for each load, alike ones together.</param>
internal sealed record PartCaption(string Reference, string Name, string Rating, string State, ImmutableArray<VerdictCaption> Verdicts)
{
    /// <summary>What it was, in an overlay; empty where it was the same.</summary>
    public string Was { get; init; } = "";

    /// <summary>On which side its first load was switched, in an overlay; <see langword="null"/> where that stays.</summary>
    public SwitchedSide? SideBefore { get; init; }

    // Where the kind is called as its symbol is, the symbol says it: a fuse needs no more than its amperes.
    private static readonly string[] Nameless = ["fuse", "breaker", "fusible link", "diode", "resistor"];

    public static PartCaption Of(Part part, bool isBefore, Alteration alteration, CircuitStudy study, Vocabulary words)
    {
        bool named = !Vocabulary.NamesItself(part) && (part.Name is not null || !Nameless.Contains(part.Kind.Noun) || part.Kind.Symbol?.Replace('-', ' ') != part.Kind.Noun);
        return new(
            part.Id,
            named ? words.Title(part) : "",
            string.Join(" · ", QuantityWords.Of(part.Ratings.Where(r => r.Name != "ways"))),
            StateWord(alteration.StateOf(part.Id), isBefore, part.IsStandingSource),
            VerdictCaption.Of(study.Loads.Where(l => l.Part.Id == part.Id && !l.Element.IsInternal), study));
    }

    /// <summary>This caption, of the part as it will be, with what is told of the part as it was.</summary>
    public PartCaption Over(PartCaption before)
    {
        string name = before.Name == Name ? "" : before.Name;
        string was = before.Rating == Rating ? name : string.Join(", ", new[] { name, before.Rating }.Where(t => t.Length > 0));
        bool turned = !Verdicts.IsEmpty && !before.Verdicts.IsEmpty && Verdicts[0].Side != before.Verdicts[0].Side;
        return this with { Was = was.Length == 0 ? "" : "was " + was, SideBefore = turned ? before.Verdicts[0].Side : null };
    }

    private static string StateWord(PartState state, bool isBefore, bool isBattery) => (state, isBefore) switch
    {
        (PartState.TakenOut, _) => "to be taken out",
        (PartState.Fitted, _) => "fitted",
        (PartState.Replaced or PartState.ReplacedReversed, true) => "to be replaced",
        (PartState.Replaced, false) => "replaced",
        (PartState.ReplacedReversed, false) => isBattery ? "new, poles turned" : "new, leads swapped",
        (PartState.Reversed, true) => "leads to be swapped",
        (PartState.Reversed, false) => "leads swapped",
        (PartState.Remounted, true) => "to be remounted",
        (PartState.Remounted, false) => "remounted",
        _ => "",
    };
}

/// <summary>A verdict as it is printed: the badge and the line below it.</summary>
/// <param name="Side">The side.</param>
/// <param name="Names">Which loads of its part it is of; empty where it is of all.</param>
/// <param name="By">By what, and what that carries; may be empty.</param>
internal sealed record VerdictCaption(SwitchedSide Side, string Names, string By)
{
    /// <summary>By what, without what that carries.</summary>
    private string Switched { get; init; } = "";

    /// <summary>The verdicts of a part's loads, alike ones together. The first has the badge: a winding that is fed by itself operates a solenoid, a filament that never comes on must not speak for the other.</summary>
    public static ImmutableArray<VerdictCaption> Of(IEnumerable<LoadStudy> loads, CircuitStudy study)
    {
        var all = loads.ToArray();
        var captions = all.Select(l => (Load: l, Line: ByLine(l, study))).GroupBy(c => (c.Load.Side, Switches(c.Load, study.Circuit)))
            .Select(g => Joined(g.ToArray(), study.Circuit) with { Switched = Through(g.First().Load, study.Circuit) }).OrderBy(c => Rank(c.Side));
        return [.. captions];
    }

    /// <summary>The side on the badge of a part.</summary>
    /// <param name="loads">The part's loads.</param>
    public static SwitchedSide BadgeOf(IEnumerable<LoadStudy> loads) => loads.Select(l => l.Side).MinBy(Rank);

    private static int Rank(SwitchedSide side) => side switch { SwitchedSide.InSeries => 1, SwitchedSide.Dead => 2, _ => 0 };

    /// <summary>By what a single load is switched, without its own name.</summary>
    public static string ByOf(LoadStudy load, CircuitStudy study) => Of([load], study)[0].By;

    /// <summary>What the line below a badge says of it: <c>coil by S1</c>; of a verdict that the badge does not tell, the side too: <c>tail: never on, no way to a feed</c>.</summary>
    /// <param name="badge">The verdict of the badge.</param>
    /// <param name="words">Whose words.</param>
    public string Beside(VerdictCaption badge, Vocabulary words)
    {
        if (Side == badge.Side) return $"{Names} {By}".Trim();
        // What switches both is said once.
        string by = Switched.Length > 0 && By.EndsWith(", " + Switched, StringComparison.Ordinal) && Switched == badge.Switched ? By[..^(Switched.Length + 2)] : By;
        string side = SideText.Of(Side, words), told = Side == SwitchedSide.Dead ? $"{side}, {by}" : $"{side} {by}";
        return (Names.Length == 0 ? told : $"{Names}: {told}").TrimEnd(' ', ',');
    }

    /// <summary>Amperes that a load draws at its rating; <see langword="null"/> when nothing states it.</summary>
    public static double? Amperes(LoadStudy load)
    {
        string element = load.Element.Name;
        if (load.Part.Rated(element, Unit.Ampere) is { } amperes) return amperes;
        double? volts = load.Part.Rated(element, Unit.Volt);
        if (load.Part.Rated(element, Unit.Watt) is { } watts && volts > 0) return watts / volts;
        return load.Part.Rated(element, Unit.Ohm) is > 0 and var ohms ? volts / ohms : null;
    }

    /// <summary>What a load draws, in words: as stated, or worked out and rounded; <c>at most</c> where something in its way takes a share. Empty when nothing states it.</summary>
    public static string AmperesText(LoadStudy load, Circuit circuit)
    {
        if (Amperes(load) is not { } amperes) return "";
        if (load.Part.Rated(load.Element.Name, Unit.Ampere) is not null) return QuantityWords.StatedAmperes(amperes);
        bool isShared = load.Paths.SelectMany(p => p.HotWay.Concat(p.GroundWay)).Any(id => id != load.Part.Id && circuit.FindPart(id) is { } part && part.Kind.Elements.Any(e => e.Type is ElementType.Sender or ElementType.Resistor));
        return (isShared ? "at most " : "") + QuantityWords.Amperes(amperes);
    }

    private static VerdictCaption Joined((LoadStudy Load, string Line)[] group, Circuit circuit)
    {
        // Named where the part has others, shown or not.
        bool areNamed = group[0].Load.Part.Kind.Elements.Count(e => e is { IsConsumer: true, IsInternal: false }) > group.Length || group.All(g => g.Load.Element.Type == ElementType.Coil);
        var side = group[0].Load.Side;
        string names = areNamed ? string.Join(", ", group.Select(g => g.Load.Element.Name)) : "";
        if (group.Select(g => g.Line).Distinct().Count() == 1) return new(side, names, group[0].Line);
        // Loads of one part that differ in nothing but their current share a line.
        string by = Switches(group[0].Load, circuit);
        return by.Length == 0 || side == SwitchedSide.InSeries || group[0].Load.IsNeverFed || group.Any(g => Amperes(g.Load) is null) ? new(side, names, by)
            : new(side, "", $"{by}: {string.Join(", ", group.Select(g => $"{g.Load.Element.Name} {AmperesText(g.Load, circuit)}"))}");
    }

    private static string Switches(LoadStudy load, Circuit circuit)
    {
        if (load.Side == SwitchedSide.InSeries) return StringText.Of(load, circuit, of => Through(of, circuit));
        if (load.Side == SwitchedSide.Dead) return load.DeadBecause ?? "";
        // By the name that its flag has.
        if (load.Side == SwitchedSide.Elsewhere) return "from " + string.Join(" or ", load.FedFrom.Select(from => $"{from.Terminal} · {circuit.FindPart(from.Part!)!.Title}"));
        return load.Side == SwitchedSide.Unswitched ? "" : Through(load, circuit);
    }

    private static string Through(LoadStudy load, Circuit circuit)
    {
        string[] by = [.. load.Chain.Take(1).Concat(RelaysOnWay(load, circuit)).Concat(load.OwnSwitches).Distinct()];
        return by.Length == 0 ? "" : "by " + Joined(by, load);
    }

    // The contacts that its own current passes: one relay may stand on its hot side, another on its ground side.
    private static IEnumerable<string> RelaysOnWay(LoadStudy load, Circuit circuit) => load.Paths.SelectMany(p => new[] { p.HotWay, p.GroundWay })
        .SelectMany(way => way.Where(id => id != load.Part.Id && circuit.FindPart(id) is { } part && part.Kind.Elements.Any(e => e.Type == ElementType.Coil) && PassesContact(part, way, circuit))).Distinct();

    // A relay's stud may only hold wires together: a contact is passed where the way has both its ends, by wires or bolted joints.
    private static bool PassesContact(Part relay, ImmutableArray<string> way, Circuit circuit)
    {
        var wires = way.Select(circuit.FindConductor).OfType<Conductor>().SelectMany(c => c.Ends).Where(e => e.Part == relay.Id).Select(e => e.Terminal);
        var bolted = way.Select(circuit.FindPart).OfType<Part>().SelectMany(p => p.Joints.SelectMany(j => p == relay && j.On.Part is { } on && way.Contains(on) ? [j.Terminal] : j.On.Part == relay.Id ? new[] { j.On.Terminal } : []));
        var ends = wires.Concat(bolted).ToHashSet(StringComparer.Ordinal);
        return relay.Kind.Elements.Any(e => e.Type == ElementType.Contact && ends.Contains(e.From) && ends.Contains(e.To));
    }

    private static string Joined(string[] by, LoadStudy load)
    {
        string own = load.Part.Id;
        var ways = load.Paths.Select(p => Passed(p)).ToArray();
        // Where the ways do not tell all, the combinations do.
        if (!by.All(s => ways.Any(w => w.Contains(s)))) ways = [.. load.Control.Any.Select(c => c.All.Select(s => s.Variable.Part).OfType<string>().Intersect(by).ToHashSet(StringComparer.Ordinal))];
        return by.All(s => ways.Any(w => w.Contains(s))) ? SwitchWords.Of([.. by.OrderBy(s => s == own)], ways, Named) : string.Join(", ", by.Select(Named));

        // A way that passes the load and no other switch passes the load's own, if it has one.
        HashSet<string> Passed(LoadPath path)
        {
            var passed = by.Intersect(path.HotWay.Concat(path.GroundWay)).Where(s => s != own).ToHashSet(StringComparer.Ordinal);
            if (by.Contains(own) && (passed.Count == 0 || load.Paths.All(p => by.Intersect(p.HotWay.Concat(p.GroundWay)).Any(s => s != own)))) passed.Add(own);
            return passed;
        }

        string Named(string id) => id == own ? "its own switch" : id;
    }

    private static string ByLine(LoadStudy load, CircuitStudy study)
    {
        string by = Switches(load, study.Circuit);
        if (by.Length == 0 || load.Side == SwitchedSide.InSeries || load.IsNeverFed || AmperesText(load, study.Circuit) is not { Length: > 0 } amperes) return by;
        return IsAloneOnItsSwitch(load, study) ? $"{by}, which carries {amperes}" : $"{by}: {amperes}";
    }

    // What a switch carries is known from one load only where no other load has to do with it.
    private static bool IsAloneOnItsSwitch(LoadStudy load, CircuitStudy study) =>
        load.Chain.IsEmpty && load.OwnSwitches.Length == 1 && load.Element.Type != ElementType.Coil
        && study.Whole.Loads.Count(l => l.Control.Any.Any(c => c.All.Any(s => s.Variable.Part == load.OwnSwitches[0]))) == 1;
}
