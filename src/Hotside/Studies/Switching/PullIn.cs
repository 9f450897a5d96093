using Hotside.Studies.Operating;

namespace Hotside.Studies.Switching;

/// <summary>Whether a coil that is fed only through other consumers gets enough to pull in; paths cannot tell, the operating point does.</summary>
internal static class PullIn
{
    /// <summary>The least volts with which a relay pulls in, in parts of its rated volts.</summary>
    public const double Least = 2.0 / 3;

    /// <summary>When a coil pulls in through other consumers, as a function of free positions and of relays.</summary>
    public static Condition InSeries(ContactGraph graph, Feeding feeding, LoadFeed coil)
    {
        var space = graph.Positions.Space;
        var only = feeding.InSeries(coil.Load) & !coil.Fed.Given(graph.Positions.Candour, 0);
        if (only.IsNever) return only;
        var near = graph.Branches.Where(b => feeding.AreTogether(coil.Load, b)).ToArray();
        return only & feeding.InSeries(coil.Load, Confirm);

        Condition Confirm(int[] known)
        {
            if (only.Given(known).IsNever) return space.NeverHolds;
            bool open = Pulls(known, undecided: false), closed = Pulls(known, undecided: true);
            if (open == closed) return open ? space.AlwaysHolds : space.NeverHolds;
            return near.Select(b => b.When.Given(known)).FirstOrDefault(c => c.IsOpen, open ? space.AlwaysHolds : space.NeverHolds);
        }

        bool Pulls(int[] known, bool undecided)
        {
            var point = OperatingPoint.Of(graph, c => c.Given(known) is { IsOpen: true } ? undecided : c.Given(known).IsAlways);
            return Math.Abs(point.VoltsAcross(coil.Load)) >= Least * Consumption.RatedVolts(coil.Load.Part, coil.Load.Element, graph.Circuit.System.Volts[0]);
        }
    }
}
