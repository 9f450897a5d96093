using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Studies;

namespace Hotside.Wording;

/// <summary>One load in one circuit, told in sentences.</summary>
internal sealed class LoadExplanation(LoadStudy load, CircuitStudy study, Vocabulary words)
{
    private readonly Circuit circuit = study.Circuit;

    private string Name => load.Name;

    public ImmutableArray<string> Sentences() =>
        [.. Control(), .. Steps(), .. Drawn(), .. MeterText.Of(load, study, words), .. Carried(), .. Oddities()];

    // What reaches it, by the operating point.
    private IEnumerable<string> Drawn()
    {
        if (study.FiguresOf(load)?.Elements.First(e => e.Part.Id == load.Part.Id && e.Element.Name == load.Element.Name) is not { IsLive: true } drawn) yield break;
        yield return $"On, it draws {QuantityWords.Amperes(Math.Abs(drawn.Current.Amperes))}; {Numbers.Fixed(Math.Abs(drawn.Voltage.Volts), 2)} V reach it, "
            + $"{Numbers.Fixed(drawn.OfRated.Percent, 0)} % of the {Numbers.Plain(drawn.RatedVoltage.Volts, 1)} V that it is made for.";
    }

    private IEnumerable<string> Control()
    {
        switch (load.Side)
        {
            case SwitchedSide.Dead:
                yield return $"{Name} never comes on: {(load.IsTurnedRound ? "it lets current through one way only and is connected the other way round" : load.DeadBecause)}. That does not make it safe: its terminals may be {words.Hot}.";
                yield break;
            case SwitchedSide.Elsewhere:
                yield return $"{Name} is fed from elsewhere, through {PartWords.And([.. load.FedFrom.Select(e => e.ToString())])}: what switches it, and on which side, is not in this file.";
                yield break;
            case SwitchedSide.InSeries:
                yield return $"{Name} is in series: its current also passes {PartWords.And([.. load.MeantStrings.SelectMany(s => s.With).Distinct()])}, so it gets what they leave of the volts"
                    + (load.StringSide is { } side ? $"; the string is {SideText.Of(side, words)}." : ".");
                break;
            case SwitchedSide.Unswitched:
                yield return load.ShortedBy.IsEmpty ? $"Nothing switches {Name}: it is on as long as its source is connected."
                    : $"No switch lies in its way; {Named(load.ShortedBy)} puts it out by shorting it.";
                break;
            case SwitchedSide.HotSwitched:
                yield return $"{Name} is {SideText.Of(load.Side, words)}: what switches it lies between the feed and {Name}; its other end stays on {Ground}.";
                break;
            case SwitchedSide.GroundSwitched:
                yield return $"{Name} is {SideText.Of(load.Side, words)}: its feed end stays {words.Hot}, on or off; what switches it lies between {Name} and {Ground}.";
                break;
            default:
                yield return $"{Name} is {SideText.Of(load.Side, words)}: both its way to the feed and its way to {Ground} are opened.";
                break;
        }
        if (!load.DisconnectedBy.IsEmpty)
            yield return $"{Named(load.DisconnectedBy)} {(load.DisconnectedBy.Length == 1 ? "cuts" : "cut")} it off, too, with all that hangs on the battery; for the side {(load.DisconnectedBy.Length == 1 ? "it counts" : "they count")} as on.";
        if (load.Control.IsAlways || load.Control.Any.IsEmpty) yield break;
        if (load.Side == SwitchedSide.InSeries && load.Strings.Length > 1)
            foreach (var part in load.MeantStrings.Concat(load.Strings.Except(load.MeantStrings)))
                yield return $"{(load.MeantStrings.Contains(part) ? "It comes on" : "A running machine also feeds it backwards")}, through {PartWords.And([.. part.With])}, when {PartWords.Clause(part.When, circuit, words)}.";
        else if (load.Side != SwitchedSide.Unswitched || load.Control.Any.Length > 0)
            yield return $"It comes on when {PartWords.Clause(load.Control, circuit, words)}.";
    }

    // From the switch that a hand moves to the load, relay by relay.
    private IEnumerable<string> Steps()
    {
        if (load.Paths.IsEmpty) yield break;
        List<string> steps = [];
        foreach (string relay in load.Chain.Reverse())
        {
            var coils = study.Loads.Where(l => l.Part.Id == relay && l != load && !l.Paths.IsEmpty && l.Part.Kind.Actuators.Any(a => a.Pulls.Any(p => p.Coils.Contains(l.Element.Name)))).ToArray();
            foreach (var coil in coils) steps.Add(StepOf(relay, coil, coil == coils[^1]));
        }
        steps.Add($"Current passes {Name} {Over(load.Paths[0])}.");
        if (load.Paths.Length > 1)
            steps.Add(load.Paths.Length == 2 ? $"In other positions it goes {Over(load.Paths[1])}." : $"{Numbers.Whole(load.Paths.Length - 1)} other ways, such as {Over(load.Paths[1])}.");
        for (int i = 0; i < steps.Count; i++) yield return steps.Count == 1 ? steps[0] : $"{Numbers.Whole(i + 1)}. {steps[i]}";
    }

    private string StepOf(string relay, LoadStudy coil, bool isLast)
    {
        bool pulls = load.Control.Any.IsEmpty || load.Control.Any.Any(c => IsPart(coil.Control, c));
        string winding = coil.Part.Kind.Elements.Count(e => e.Type == ElementType.Coil) > 1 ? coil.Element.Name + " winding" : "coil";
        string way = $"the {winding} of {PartWords.Named(relay, circuit, words)} {Over(coil.Paths[0])}";
        return pulls ? $"{(coil.Control.IsAlways ? "At all times current" : "Current")} passes {way}.{(isLast ? $" {relay} pulls in." : "")}"
            : $"{relay} is at rest. When {PartWords.Clause(coil.Control, circuit, words)}, current passes {way}; {relay} pulls in and its contact opens the way below.";
    }

    private IEnumerable<string> Carried()
    {
        var own = load.SwitchedBy.Concat(load.Chain.Where(r => load.Paths.Any(p => p.HotWay.Concat(p.GroundWay).Contains(r) && r != load.Part.Id)));
        var behind = load.Chain.SelectMany(relay => study.Loads.Where(l => l.Part.Id == relay)).SelectMany(l => l.SwitchedBy);
        foreach (string id in own.Concat(behind).Distinct())
            yield return $"{PartWords.Named(id, circuit, words)} carries {CarriedCurrent.Of(id, load, study).InWords()}.";
    }

    private IEnumerable<string> Oddities()
    {
        if (load.Until is { } until) yield return $"It is on for a moment only, until {until.Part} is {until.Position}.";
        if (load.Holds is { } hold) yield return $"Once pulled in, {PartWords.Named(hold.Relay, circuit, words)} keeps itself in and {Name} stays on while {PartWords.Clause(hold.While, circuit, words)}. "
            + (hold.Released.Any.IsEmpty ? "Only loss of the feed lets it go." : $"It lets go when {PartWords.Clause(hold.Released, circuit, words)}, or when the feed is lost.");
        if (!load.ShortedBy.IsEmpty && load.Side != SwitchedSide.Unswitched) yield return $"{Named(load.ShortedBy)} can put it out by shorting it.";
        if (!load.ReversedBy.IsEmpty) yield return $"{Named(load.ReversedBy)} {(load.ReversedBy.Length == 1 ? "turns" : "turn")} its current round.";
        if (load.Braked is { } braked) yield return $"It is braked, both ends joined, when {PartWords.Clause(braked, circuit, words)}.";
        if (!load.AlsoFedBy.IsEmpty) yield return $"{Named(load.AlsoFedBy)} feeds it too while it runs, even with the battery cut off.";
        if (load.IsInRace) yield return "Relays race for it: which way it goes depends on which is quicker.";
        if (load.Sneaks is { } sneaks) yield return $"Sneak path: some current reaches it through other loads when {PartWords.Clause(sneaks, circuit, words)}; it may glow, or hold something in.";
        if (load.IsApproximate) yield return "This could not be worked out to the end; some states may be missing.";
    }

    private string Ground => circuit.System.Return is { } node ? $"the return, {circuit.TextOf(node)}" : words.Ground;

    private string Named(ImmutableArray<string> ids) => PartWords.And([.. ids.Select(id => PartWords.Named(id, circuit, words))]);

    private string Over(LoadPath path) => $"this way: {PartWords.Way(path.HotWay.Concat(path.GroundWay.Skip(1)), circuit)}";

    // Whether a combination brings about what a control asks for.
    private static bool IsPart(Control control, Combination combination) =>
        control.Holds(set => combination.All.FirstOrDefault(s => s.Variable == set.Variable) is { } own && own.Positions.All(set.Positions.Contains));
}
