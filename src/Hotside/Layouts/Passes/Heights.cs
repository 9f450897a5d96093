using System.Collections.Immutable;
using Hotside.Symbols;

namespace Hotside.Layouts.Passes;

/// <summary>
/// How near to hot each point is, from 0 (chassis) to 1 (feed): the potentials of a network in which conductors carry well and parts
/// less well. A potential has no cycles, so it says which end of a conductor is up wherever the file's order does not.
/// </summary>
internal sealed record Heights(ImmutableArray<double> OfTerminal, ImmutableArray<double> OfJoint)
{
    // All of these: own choice, measured on the gallery and the bench.
    private const double Conductor = 4, BeforeOnly = 0.5, ThroughPart = 1;

    // What stands one way up by its symbol tells hot from chassis where no rail does; the pull must stay far below a rail's.
    private const double UprightPull = 0.02, LoosePull = 0.002, PageEndPull = 0.5;

    // A source holds its poles, as a rail holds what hangs on it, but stands below the feed that it feeds.
    private const double Source = 4, HotPole = 0.6;

    public double At(LineEnd end) =>
        end.Kind == EndKind.Feed ? 2 : end.Kind == EndKind.Chassis ? -1 : end.OnTerminal ? OfTerminal[end.Terminal] : OfJoint[end.Joint];

    /// <summary>For each conductor, in the order given, whether its first end is the hotter one.</summary>
    public static ImmutableArray<bool> FallsOf(LayoutInput input)
    {
        var union = Union.Of(input);
        var heights = Of(union);
        return [.. union.Lines.Select(l => heights.At(l.From) >= heights.At(l.To))];
    }

    public static Heights Of(Union union)
    {
        int terminals = union.Terminals.Length, joints = union.Joints.Length, stands = union.Stands.Length;
        int count = terminals + joints + stands + union.Ties.SelectMany(t => new[] { t.A, t.B }).Append(terminals - 1).Max() + 1 - terminals;
        var ways = union.Ties.Select(t => t.Stand).ToHashSet();
        List<(int To, double Conductance)>[] ties = [.. Enumerable.Range(0, count).Select(_ => new List<(int, double)>())];
        double[] toFixed = new double[count], fixedFlow = new double[count];
        foreach (Line line in union.Lines)
        {
            double conductance = line.Seen == SeenIn.Before ? BeforeOnly : Conductor;
            int from = Point(line.From), to = Point(line.To);
            if (from >= 0 && to >= 0) Tie(from, to, conductance);
            else if (from >= 0) Hold(from, conductance, line.To.Kind == EndKind.Feed ? 1 : 0);
            else if (to >= 0) Hold(to, conductance, line.From.Kind == EndKind.Feed ? 1 : 0);
        }
        foreach (Tie tie in union.Ties) Tie(Inside(tie.A), Inside(tie.B), tie.Conductance);
        foreach (var (terminal, isHot) in union.Poles) Hold(terminal, Source, isHot ? HotPole : 0);
        foreach (Terminal terminal in union.Terminals)
        {
            if (!ways.Contains(terminal.Stand)) Tie(terminal.Id, terminals + joints + terminal.Stand, ThroughPart);
            var boxes = union.Stands[terminal.Stand].Boxes;
            bool isFeed = boxes.All(b => b.Box.IsFeedEnd), isReturn = boxes.All(b => b.Box.IsReturnEnd);
            double pull = isFeed || isReturn ? PageEndPull : boxes.All(b => b.Box.MayTurnOver) ? LoosePull : UprightPull;
            if (!terminal.IsSideways) Hold(terminal.Id, pull, isFeed || (!isReturn && terminal.Side == Side.Top) ? 1 : 0);
        }
        double[] height = Relax(ties, toFixed, fixedFlow);
        return new([.. height[..terminals]], [.. height[terminals..(terminals + joints)]]);

        int Inside(int point) => point < terminals ? point : point + joints + stands;
        int Point(LineEnd end) => end.OnTerminal ? end.Terminal : end.OnJoint ? terminals + end.Joint : -1;
        void Tie(int a, int b, double conductance)
        {
            ties[a].Add((b, conductance));
            ties[b].Add((a, conductance));
        }
        void Hold(int point, double conductance, double height)
        {
            toFixed[point] += conductance;
            fixedFlow[point] += conductance * height;
        }
    }

    private static double[] Relax(List<(int To, double Conductance)>[] ties, double[] toFixed, double[] fixedFlow)
    {
        const int rounds = 300;
        const double still = 1e-5;
        double[] height = [.. Enumerable.Repeat(0.5, ties.Length)];
        for (int round = 0; round < rounds; round++)
        {
            double change = 0;
            for (int i = 0; i < height.Length; i++)
            {
                double flow = fixedFlow[i], sum = toFixed[i];
                foreach ((int to, double conductance) in ties[i])
                {
                    flow += conductance * height[to];
                    sum += conductance;
                }
                if (sum == 0) continue;
                change = Math.Max(change, Math.Abs(flow / sum - height[i]));
                height[i] = flow / sum;
            }
            if (change < still) break;
        }
        return height;
    }
}
