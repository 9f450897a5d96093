using Hotside.Circuits;
using Hotside.Proposals.Exposures;
using Hotside.Proposals.Rules;

namespace Hotside.Proposals.Steps;

/// <summary>A motor that keeps its volts behind a resistor of its own: right at one current only.</summary>
internal static class DropperStep
{
    // Above that the resistor is a heater (own choice, no source).
    private const double MostWatts = 40;

    /// <summary>Puts a resistor ahead of a part; <see langword="false"/> where that is no sound thing to do.</summary>
    public static bool Run(Workbench work, Part part, DecisionRule rule, Exposure exposure, string reason)
    {
        double amperes = part.Rated(exposure.Element.Name, Unit.Ampere) ?? part.Rated(exposure.Element.Name, Unit.Watt) / exposure.Rated ?? 0;
        var load = work.Before.Study.Loads.First(l => l.Part.Id == part.Id && l.Element.Name == exposure.Element.Name);
        if (amperes <= 0 || amperes * exposure.Rated > MostWatts || load.Paths.IsEmpty || load.Paths[0].Hot.IsEmpty || part.IsStarter(exposure.Element)) return false;
        double over = work.Nominal(exposure.Volts) - exposure.Rated;
        End at = load.Paths[0].FeedEnd;
        string feed = load.Paths[0].Hot[^1];
        if (!work.Draft.HasWire(feed) || work.Draft.Wire(feed).Ends.All(e => e != at)) return false;
        // A motor that is held takes four times its current, as far as the resistor lets it (common practice, no source).
        double ohms = over / amperes, stalled = work.Nominal(exposure.Volts) * 1.05 / (ohms + exposure.Rated / (4 * amperes)), watts = Math.Max(2 * over * amperes, stalled * stalled * ohms);
        PartSpec spec = new(work.Draft.KindOf("dropping-resistor"))
        {
            Name = part.Title + " dropper",
            Ratings = [new("ohm", new(Math.Round(ohms, 1), Unit.Ohm)), new("W", new(Math.Ceiling(watts / 10) * 10, Unit.Watt))],
        };
        string id = work.Draft.Fit(spec, $"{part.Id} keeps its {Numbers.Brief(exposure.Rated)} V; it sheds {Numbers.Brief(over * amperes)} W at {Numbers.Brief(amperes)} A");
        string[] terminals = [.. spec.Kind.Terminals.Select(t => t.Name)];
        work.Draft.Move(feed, at, End.At(id, terminals[0]), null);
        work.Run(End.At(id, terminals[1]), at, work.Draft.Wire(feed).Wire with { LengthInMetres = 0.3, Name = null });
        work.Comment(id, "on bare metal in the air stream, away from cloth and wires: it burns who touches it; it is right at one current only, and it is rated for a motor that is held, and a fuse of its own size opens before long");
        work.Decide(id, DecisionKind.Fit, $"{part.Id} stays");
        work.Decide(part.Id, DecisionKind.Protect, reason, rule, exposure);
        work.Ask(part.Id, "amperes, running and stalled? measure them");
        return true;
    }
}
