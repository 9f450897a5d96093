using System.Collections.Immutable;
using Hotside.Drawings.Pictures;
using Hotside.Layouts;
using Hotside.Symbols;
using Hotside.Tests.Support;

namespace Hotside.Tests.Layouts;

/// <summary>Where lines part a slant tells a chain from a star.</summary>
public class JointSlantTests
{
    private static readonly ImmutableArray<(int X, int Y)> Straight = [(10, 0), (10, 20)];

    public static TheoryData<string> Files => [.. JobFiles.All];

    // From the pin at (10, 20) on to the next one.
    [Fact]
    public void The_next_wire_of_a_chain_slants_to_the_pin_that_it_shares()
    {
        var slants = JointSlants.Of([Straight, [(20, 20), (20, 6), (10, 6), (10, 20)]], []);
        Assert.Equal([(20, 20), (20, 6), (11, 6), (10, 7), (10, 20)], slants.Along([(20, 20), (20, 6), (10, 6), (10, 20)]));
        Assert.Equal(Straight, slants.Along(Straight));
        Assert.Equal((10, 7), slants.PlaceOf((10, 6)));
    }

    [Fact]
    public void The_second_wire_of_a_star_slants_to_where_both_come_from()
    {
        var slants = JointSlants.Of([Straight, [(10, 0), (10, 6), (20, 6), (20, 20)]], []);
        Assert.Equal([(10, 0), (10, 5), (11, 6), (20, 6), (20, 20)], slants.Along([(10, 0), (10, 6), (20, 6), (20, 20)]));
        Assert.Equal((10, 5), slants.PlaceOf((10, 6)));
    }

    // What both share is inked once: what is left of the other ends where the dot is.
    [Fact]
    public void What_ends_at_a_joint_ends_where_it_is_drawn()
    {
        var slants = JointSlants.Of([Straight, [(20, 20), (20, 6), (10, 6), (10, 20)]], []);
        Assert.Equal([(20, 20), (20, 6), (11, 6), (10, 7)], slants.Along([(20, 20), (20, 6), (10, 6)]));
        Assert.Equal([(10, 0), (10, 7)], slants.Along([(10, 0), (10, 6)]));
        Assert.Equal([(10, 7), (10, 20)], slants.Along([(10, 6), (10, 20)]));
    }

    [Fact]
    public void Close_to_its_pin_a_joint_is_square() =>
        Assert.Empty(JointSlants.Of([Straight, [(20, 20), (20, 18), (10, 18), (10, 20)]], []).All);

    [Fact]
    public void Where_each_goes_on_with_each_nothing_slants() =>
        Assert.Empty(JointSlants.Of([Straight, [(20, 20), (20, 6), (10, 6), (10, 20)], [(10, 0), (10, 6), (20, 6), (20, 20)]], []).All);

    // There the line from below seems to end above; who sees its label knows that it goes on.
    [Fact]
    public void Where_nothing_slants_what_goes_past_the_next_pin_is_known()
    {
        ImmutableArray<(int X, int Y)> past = [(20, 20), (20, 6), (10, 6), (10, 20)];
        Assert.Equal([(1, (10, 6))], JointSlants.Of([Straight, past, [(10, 0), (10, 6), (20, 6), (20, 20)]], []).Passing);
        Assert.Empty(JointSlants.Of([Straight, past], []).Passing);
        // As near to the one pin as to the other.
        Assert.Equal([(1, (10, 2))], JointSlants.Of([[(10, 0), (10, 4)], [(20, 20), (20, 2), (10, 2), (10, 4)]], []).Passing);
        Assert.Empty(JointSlants.Of([Straight, [(20, 20), (20, 18), (10, 18), (10, 20)]], []).Passing);
    }

    // In the order in which the feeds of a van's rear lamps do not cross, a return must pass the lamp where another ends.
    [Theory]
    [InlineData("van", true)]
    [InlineData("gauges", false)]
    [InlineData("tractor", false)]
    public void The_label_of_what_goes_past_the_next_pin_names_its_end(string name, bool hasSome)
    {
        var drawn = LaidOutJob.OfGallery(name);
        var passing = new Dictionary<string, (int X, int Y)>();
        foreach (var view in new[] { SeenIn.Before, SeenIn.After })
        {
            var shown = new ShownLines(drawn.Plan, drawn.Layout, view);
            foreach (var (line, dot) in shown.Slants.Passing) passing.TryAdd(shown.All[line].Wire.Id, dot);
        }
        var named = drawn.Layout.Labels.Where(l => l.Names != NamedEnd.None).ToArray();
        Assert.Equal(hasSome, named.Length > 0);
        Assert.Equal(passing.Keys.Where(w => drawn.Plan.Input.Wires.First(i => i.Id == w) is { HasLabel: true, EndWidths.To: > 0 }).Order(StringComparer.Ordinal), named.Select(l => l.Wire).Order(StringComparer.Ordinal));
        foreach (var label in named)
        {
            var wire = drawn.Plan.Input.Wires.First(w => w.Id == label.Wire);
            Assert.Equal(wire.LabelWidth + (label.Names == NamedEnd.To ? wire.EndWidths.To : wire.EndWidths.From), label.Width);
            // The end that it names lies beyond the place where the lines part.
            var points = LineSteps.Walk([.. drawn.Line(label.Wire)]).Select(s => s.From).ToList();
            int at = points.IndexOf(points.MinBy(p => Math.Abs(p.X - label.X - (label.Width / 2)) + Math.Abs(p.Y - label.Y - 0.5)));
            Assert.Equal(label.Names == NamedEnd.To, at < points.IndexOf(passing[label.Wire]));
        }
    }

    [Fact]
    public void On_a_bar_nothing_slants() =>
        Assert.Empty(JointSlants.Of([Straight, [(20, 20), (20, 6), (10, 6), (10, 20)]], [[(10, 6), (20, 6)]]).All);

    [Fact]
    public void Of_two_joints_side_by_side_one_stays_square()
    {
        var slants = JointSlants.Of([Straight, [(20, 20), (20, 6), (10, 6), (10, 20)], [(0, 20), (0, 7), (10, 7), (10, 20)]], []);
        Assert.Equal([(10, 6), (10, 8)], [slants.PlaceOf((10, 6)), slants.PlaceOf((10, 7))]);
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_line_can_be_followed_from_end_to_end_and_every_dot_joins_three_arms(string file)
    {
        var drawn = LaidOutJob.OfTests(file);
        foreach (var view in new[] { SeenIn.Before, SeenIn.After })
        {
            var shown = new ShownLines(drawn.Plan, drawn.Layout, view);
            var stretches = OwnStretches.Of([.. shown.All.Select(l => (l.Placed.Points, l.Line.In(view)!.State))], shown.Bars);
            var ink = stretches.SelectMany(s => s).Select(s => shown.Slants.Along(s)).Concat(shown.Bars).SelectMany(Arms).ToLookup(a => a.From, a => a.To);
            foreach (var (_, line, placed) in shown.All)
                Assert.True(IsJoined(placed.Points[0], placed.Points[^1], ink), $"{line.Line} is broken");
            var ends = shown.All.SelectMany(l => new[] { l.Placed.Points[0], l.Placed.Points[^1] }).ToHashSet();
            foreach (var dot in drawn.Layout.Dots.Where(d => (d.Seen & view) != 0).Select(d => (d.X, d.Y)))
                Assert.True(ends.Contains(dot) || ink[shown.Slants.PlaceOf(dot)].Distinct().Count() > 2, $"the dot at {dot} joins nothing");
        }
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void No_slant_lies_under_a_label(string file)
    {
        var drawn = LaidOutJob.OfTests(file);
        foreach (var view in new[] { SeenIn.Before, SeenIn.After })
        {
            var shown = new ShownLines(drawn.Plan, drawn.Layout, view);
            var seen = shown.All.Select(l => l.Line.Line).ToHashSet(StringComparer.Ordinal);
            foreach (var (_, a, b) in shown.Slants.All)
                foreach (var label in drawn.Layout.Labels.Concat(drawn.Layout.LongLines).Where(l => seen.Contains(l.Wire)))
                    for (double t = 0; t <= 1; t += 0.125)
                    {
                        double x = a.X + (t * (b.X - a.X)), y = a.Y + (t * (b.Y - a.Y));
                        Assert.False(x > label.X && x < label.X + label.Width && y > label.Y && y < label.Y + label.Height, $"{label.Wire} lies on the slant at {a}");
                    }
        }
    }

    private static IEnumerable<((int X, int Y) From, (int X, int Y) To)> Arms(ImmutableArray<(int X, int Y)> run)
    {
        for (int i = 1; i < run.Length; i++)
        {
            int dx = Math.Sign(run[i].X - run[i - 1].X), dy = Math.Sign(run[i].Y - run[i - 1].Y);
            for (var at = run[i - 1]; at != run[i]; at = (at.X + dx, at.Y + dy))
            {
                yield return (at, (at.X + dx, at.Y + dy));
                yield return ((at.X + dx, at.Y + dy), at);
            }
        }
    }

    private static bool IsJoined((int X, int Y) from, (int X, int Y) to, ILookup<(int X, int Y), (int X, int Y)> ink)
    {
        var reached = new HashSet<(int X, int Y)> { from };
        var open = new Stack<(int X, int Y)>(reached);
        while (open.TryPop(out var at))
            foreach (var next in ink[at].Where(reached.Add)) open.Push(next);
        return reached.Contains(to);
    }
}
