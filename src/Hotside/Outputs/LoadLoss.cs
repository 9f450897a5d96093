using Hotside.Circuits;
using Hotside.Studies.Figures;

namespace Hotside.Outputs;

/// <summary>The volts that a load's ways take: from the feed of the source that stands nearest above the load's end of that side to that end, and on the other side from its
/// other end to the lowest source's return, for of batteries in series the upper one's return is the tap.</summary>
/// <param name="Feed">On the side of the feed.</param>
/// <param name="Return">On the side of the return.</param>
internal sealed record LoadLoss(double Feed, double Return)
{
    private const double LeastAmperes = 0.0005;

    /// <summary>What is lost on the ways of a load; <see langword="null"/> where no single source feeds it, or an end floats.</summary>
    public static LoadLoss? Of(ElementFigure load, Circuit circuit, SettingFigures figures)
    {
        double? At(End end) => end == circuit.System.ReturnNode ? 0 : figures.Terminals.FirstOrDefault(f => f.End == end)?.Voltage?.Volts;
        if (load.IsBetweenFeeds || At(Nodes.NodeOf(load.Part, load.Element.From)) is not { } from || At(Nodes.NodeOf(load.Part, load.Element.To)) is not { } to) return null;
        var (hot, cold) = Math.Abs(from) >= Math.Abs(to) ? (from, to) : (to, from);
        var giving = circuit.Sources.Where(s => s.Element.When is null || figures.Sources.Any(f => f.Part == s.Part && f.Element == s.Element && f.Current.Amperes > LeastAmperes))
            .Select(s => (Feed: At(s.Feed), Return: At(s.Return))).ToArray();
        double? top = giving.Select(s => s.Feed).OfType<double>().Where(high => Math.Sign(high) == Math.Sign(hot) && Math.Abs(high) >= Math.Abs(hot) - 1e-9).Cast<double?>().MinBy(high => Math.Abs(high!.Value));
        double? bottom = giving.Select(s => s.Return).OfType<double>().Cast<double?>().MinBy(low => Math.Abs(low!.Value));
        return top is { } feed && bottom is { } end ? new(Math.Abs(feed - hot), Math.Abs(cold - end)) : null;
    }
}
