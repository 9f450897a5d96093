using Hotside.Studies.Operating;

namespace Hotside.Studies.Switching;

/// <summary>Whether a coil that is fed only through other consumers gets enough to pull in; paths cannot tell, the operating point does.</summary>
internal static class PullIn
{
    /// <summary>The least volts with which a relay pulls in, in parts of its rated volts (own choice, no source; relays differ).</summary>
    public const double Least = 2.0 / 3;

    /// <summary>Up to so many undecided variables every choice is computed; beyond, only all open and all closed, as long as these agree.</summary>
    private const int Searched = 6;

    /// <summary>When a coil pulls in through other consumers, as a function of free positions and of relays.</summary>
    public static Condition InSeries(ContactGraph graph, Feeding feeding, LoadFeed coil)
    {
        var space = graph.Positions.Space;
        var only = feeding.InSeries(coil.Load) & !coil.Fed.Given(graph.Positions.Candour, 0);
        if (only.IsNever) return only;
        var near = graph.Branches.Where(b => feeding.AreTogether(coil.Load, b)).ToArray();
        var actuators = coil.Load.Part.Kind.Actuators.SelectMany(a => a.Pulls).Select(p => p.Coils).Where(c => c.Contains(coil.Load.Element.Name)).ToArray();
        var fellows = graph.Loads.Where(l => l != coil.Load && l.Part == coil.Load.Part && actuators.Any(c => c.Contains(l.Element.Name))).ToArray();
        return only & feeding.InSeries(coil.Load, Confirm);

        Condition Confirm(int[] known)
        {
            if (only.Given(known).IsNever) return space.NeverHolds;
            var undecided = near.Select(b => b.When.Given(known)).Where(c => c.IsOpen).ToArray();
            bool open = Pulls(known, undecided: false);
            bool isSure = undecided.Length == 0 || (undecided.SelectMany(c => space.SupportOf(c)).Distinct().Skip(Searched).Any() && Pulls(known, undecided: true) == open);
            return !isSure ? undecided[0] : open ? space.AlwaysHolds : space.NeverHolds;
        }

        bool Pulls(int[] known, bool undecided)
        {
            var point = OperatingPoint.Of(graph, c => c.Given(known) is { IsOpen: true } ? undecided : c.Given(known).IsAlways);
            return Math.Abs(point.VoltsAcross(coil.Load)) >= Least * Consumption.RatedVolts(coil.Load.Part, coil.Load.Element, graph.Circuit.System.Volts[0])
                && !fellows.Any(f => IsOpposed(point.AmperesThrough(f), point.AmperesThrough(coil.Load)));
        }

        // Two windings of one plunger with the same current the opposite way round undo each other: so a starter solenoid lets go although its main contact
        // still feeds both windings, one behind the other. That half the current is enough for it is our own choice, no source.
        static bool IsOpposed(double other, double own) => other * own < 0 && Math.Abs(other) > Math.Abs(own) / 2;
    }
}
