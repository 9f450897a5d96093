using System.Collections.Immutable;

namespace Hotside.Layouts;

/// <summary>
/// Where lines part far from the pin that they share, a slant shows which way each goes on, as points show it on a railway: drawn square, a chain from pin to pin and a star look alike.
/// IEC 61082-1 shows the order of connections so (from memory).
/// </summary>
internal sealed class JointSlants
{
    // Next to its pin a dot says enough.
    private const int AtPin = 2;

    // By dot, the way that all its lines share.
    private readonly ImmutableDictionary<(int X, int Y), (int X, int Y)> stems;

    private JointSlants(ImmutableDictionary<(int X, int Y), (int X, int Y)> stems, ImmutableArray<((int X, int Y) Corner, (int X, int Y) From, (int X, int Y) To)> all) => (this.stems, All) = (stems, all);

    /// <summary>Whether lines part squarely somewhere: a reader takes the next pin for their end.</summary>
    public bool HaveSquare { get; private init; }

    /// <summary>The lines that go on past that pin, by number, each with the place where they part from one that ends there.</summary>
    public ImmutableArray<(int Line, (int X, int Y) Dot)> Passing { get; private init; } = [];

    /// <summary>The slants among lines that are shown together.</summary>
    /// <param name="lines">Their points.</param>
    /// <param name="bars">Rails and joints that are drawn as bars.</param>
    public static JointSlants Of(ImmutableArray<ImmutableArray<(int X, int Y)>> lines, IEnumerable<ImmutableArray<(int X, int Y)>> bars)
    {
        var barred = bars.SelectMany(LineSteps.Of).SelectMany(s => new[] { (s.X, s.Y), s.Down ? (s.X, s.Y + 1) : (s.X + 1, s.Y) }).ToHashSet();
        var ends = lines.SelectMany(l => new[] { l[0], l[^1] }).ToHashSet();
        var ways = new Dictionary<(int X, int Y), List<Way>>();
        for (int line = 0; line < lines.Length; line++)
        {
            (int X, int Y)? came = null;
            foreach (var (from, to) in LineSteps.Walk(lines[line]))
            {
                if (came is { } before) Add(from, new(before, to, line));
                came = from;
            }
        }
        var arms = ways.ToDictionary(w => w.Key, w => w.Value.SelectMany(v => new[] { v.A, v.B }).Distinct().Count());
        var stems = ImmutableDictionary.CreateBuilder<(int X, int Y), (int X, int Y)>();
        var square = new List<(int X, int Y)>();
        foreach (var (dot, through) in ways)
            if (arms[dot] == 3 && !barred.Contains(dot) && !ends.Contains(dot))
            {
                if (StemOf(dot, through) is { } stem && !IsAtPin(dot, stem)) stems[dot] = stem;
                else square.Add(dot);
            }
        return new(
            stems.ToImmutable(),
            [.. stems.OrderBy(s => s.Key).SelectMany(s => ways[s.Key].SelectMany(w => new[] { w.A, w.B }).Distinct().Where(a => a.X != s.Value.X && a.Y != s.Value.Y).Order().Select(a => (s.Key, a, s.Value)))])
        {
            HaveSquare = square.Count > 0,
            Passing = [.. square.Order().SelectMany(PassingAt).DistinctBy(p => p.Line)],
        };

        // Those that do not end where the way from the dot to an end is shortest; where two are as short, at both.
        IEnumerable<(int Line, (int X, int Y) Dot)> PassingAt((int X, int Y) dot)
        {
            int[] through = [.. ways[dot].Select(w => w.Line).Distinct()];
            var ends = through.SelectMany(l => new[] { (End: lines[l][0], Steps: StepsBetween(lines[l], lines[l][0], dot)), (End: lines[l][^1], Steps: StepsBetween(lines[l], dot, lines[l][^1])) }).ToArray();
            int least = ends.Min(e => e.Steps);
            var near = ends.Where(e => e.Steps == least).Select(e => e.End).ToHashSet();
            return through.Where(l => !near.IsSubsetOf([lines[l][0], lines[l][^1]])).Select(l => (l, dot));
        }

        void Add((int X, int Y) at, Way way)
        {
            if (ways.TryGetValue(at, out var known)) known.Add(way);
            else ways[at] = [way];
        }

        // The arm of all lines, if there is room for slants beside it.
        (int X, int Y)? StemOf((int X, int Y) dot, List<Way> through)
        {
            (int X, int Y)[] shared = [.. new[] { through[0].A, through[0].B }.Where(a => through.All(w => w.A == a || w.B == a))];
            if (shared is not [var stem] || !IsPlain(stem)) return null;
            return through.Select(w => w.A == stem ? w.B : w.A).All(a => IsPlain(a) || a.X == stem.X || a.Y == stem.Y) ? stem : null;
        }

        bool IsPlain((int X, int Y) at) => !barred.Contains(at) && !ends.Contains(at) && arms.GetValueOrDefault(at) == 2;

        bool IsAtPin((int X, int Y) dot, (int X, int Y) stem)
        {
            for (int i = 1; i <= AtPin; i++)
                if (ends.Contains((dot.X + (i * (stem.X - dot.X)), dot.Y + (i * (stem.Y - dot.Y))))) return true;
            return false;
        }
    }

    /// <summary>Each slant: the corner that it cuts, where it leaves its arm, and where it meets what its lines share.</summary>
    public ImmutableArray<((int X, int Y) Corner, (int X, int Y) From, (int X, int Y) To)> All { get; }

    /// <summary>Where a dot is drawn.</summary>
    public (int X, int Y) PlaceOf((int X, int Y) dot) => stems.GetValueOrDefault(dot, dot);

    /// <summary>A run of a line with its slants.</summary>
    public ImmutableArray<(int X, int Y)> Along(ImmutableArray<(int X, int Y)> run)
    {
        var points = ImmutableArray.CreateBuilder<(int X, int Y)>();
        (int X, int Y)[] at = [run[0], .. LineSteps.Walk(run).Select(s => s.To)];
        for (int i = 0; i < at.Length; i++)
        {
            if (!stems.TryGetValue(at[i], out var stem)) Add(at[i]);
            // Past the corner it goes to or comes from the stem; what ends at the dot ends where the dot is drawn.
            else if (!(i > 0 && at[i - 1] == stem) && !(i < at.Length - 1 && at[i + 1] == stem)) Add(i == 0 || i == at.Length - 1 ? stem : at[i]);
        }
        return points.ToImmutable();

        void Add((int X, int Y) point)
        {
            if (points.Count > 1 && IsStraight(points[^2], points[^1], point)) points[^1] = point;
            else points.Add(point);
        }
    }

    // Along a line.
    private static int StepsBetween(ImmutableArray<(int X, int Y)> line, (int X, int Y) from, (int X, int Y) to) =>
        LineSteps.Walk(line).SkipWhile(s => s.From != from).TakeWhile(s => s.From != to).Count();

    private static bool IsStraight((int X, int Y) a, (int X, int Y) b, (int X, int Y) c) => ((b.X - a.X) * (c.Y - b.Y)) == ((b.Y - a.Y) * (c.X - b.X));

    // A line on both sides of a point.
    private readonly record struct Way((int X, int Y) A, (int X, int Y) B, int Line);
}
