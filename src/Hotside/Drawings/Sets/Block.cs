using System.Collections.Immutable;
using Hotside.Drawings.Plans;
using Hotside.Layouts;

namespace Hotside.Drawings.Sets;

/// <summary>One half of a line that is cut between two sheets.</summary>
/// <param name="Line">The line's name.</param>
/// <param name="KeepsFrom">Whether this half has the line's first end.</param>
internal sealed record CutLine(string Line, bool KeepsFrom);

/// <summary>
/// What goes onto a sheet as one: parts with the lines between them, and the halves of lines that go on elsewhere. Rails and metal belong to no block: any sheet may show them.
/// </summary>
/// <param name="Parts">Names of planned parts.</param>
/// <param name="Lines">Names of lines.</param>
/// <param name="Cuts">Halves of lines.</param>
internal sealed record Block(ImmutableArray<string> Parts, ImmutableArray<string> Lines, ImmutableArray<CutLine> Cuts)
{
    public static Block Empty { get; } = new([], [], []);

    /// <summary>Both together; a line of which both halves are there is whole again.</summary>
    public Block And(Block other)
    {
        ImmutableArray<CutLine> cuts = [.. Cuts, .. other.Cuts];
        var whole = cuts.GroupBy(c => c.Line).Where(g => g.Count() > 1).Select(g => g.Key).ToHashSet(StringComparer.Ordinal);
        return new([.. Parts, .. other.Parts], [.. Lines, .. other.Lines, .. whole.Order(StringComparer.Ordinal)], [.. cuts.Where(c => !whole.Contains(c.Line))]);
    }

    /// <summary>Whether any sheet may show it: a rail, or metal that parts stand on.</summary>
    public static bool IsShared(PlannedPart part) => part.Role is PlannedRole.Rail or PlannedRole.FeedRail or PlannedRole.ReturnRail
        || (part.Role == PlannedRole.Symbol && part.PartId.Length > 0 && PlannedRoles.IsMetal((part.After ?? part.Before)!.Part));

    /// <summary>The blocks into which a circuit falls apart where it is cut at its rails and its metal, in the order of the file.</summary>
    public static ImmutableArray<Block> Of(DrawingPlan plan)
    {
        var map = new PartMap(plan);
        var groups = map.Joined(_ => true);
        List<Block> blocks = [.. map.Parts.GroupBy(p => groups[p]).Select(g => map.BlockOf([.. g]))];
        // A strap goes with the first part on its metal, what feeds a rail with the first on that rail.
        foreach (string line in map.LinesBetweenRails)
        {
            var rails = map.RailsOf(line);
            int at = blocks.FindIndex(b => b.Lines.Any(l => map.RailsOf(l).Overlaps(rails)));
            if (at < 0) blocks.Add(new([], [line], []));
            else blocks[at] = blocks[at] with { Lines = blocks[at].Lines.Add(line) };
        }
        return [.. blocks];
    }

    /// <summary>Two halves, cut where few lines are; <see langword="null"/> where nothing can be cut.</summary>
    /// <param name="plan">The whole.</param>
    /// <param name="evenness">What uneven halves count for, in lines cut.</param>
    public (Block First, Block Second)? Halved(DrawingPlan plan, double evenness)
    {
        var map = new PartMap(plan);
        // What is bolted together stays together.
        var tied = map.Joined(l => l.Conductor is null || map.IsFree(l));
        string[][] units = [.. Parts.GroupBy(p => tied[p]).Select(g => g.ToArray())];
        if (units.Length < 2) return WithoutStraps(map);
        var unitOf = units.SelectMany((unit, i) => unit.Select(p => (p, i))).ToDictionary(p => p.p, p => p.i, StringComparer.Ordinal);
        var joins = Lines.Select(map.EndsOf).Where(e => e.Length == 2).Select(e => (unitOf[e[0]], unitOf[e[1]]));
        var second = Bisection.Of([.. units.Select(u => u.Length)], [.. joins], evenness);
        string[] one = [.. units.Where((_, i) => !second[i]).SelectMany(u => u)], other = [.. units.Where((_, i) => second[i]).SelectMany(u => u)];
        var (fore, aft) = (Half(one, map), Half(other, map));
        // Straps and the feeds of rails are no part's: they go with the half that has that metal or rail.
        foreach (string line in Lines.Where(l => map.EndsOf(l).Length == 0))
            if (!aft.Touches(map.RailsOf(line), map) || fore.Touches(map.RailsOf(line), map)) fore = fore with { Lines = fore.Lines.Add(line) };
            else aft = aft with { Lines = aft.Lines.Add(line) };
        return (fore, aft);
    }

    /// <summary>What of it hangs together by its own lines, rails and metal left out, in the order of the file.</summary>
    public ImmutableArray<Block> Pieces(DrawingPlan plan)
    {
        var map = new PartMap(plan);
        var own = Lines.ToHashSet(StringComparer.Ordinal);
        var tied = map.Joined(l => own.Contains(l.Line));
        Block[] pieces = [.. Parts.GroupBy(p => tied[p]).Select(g => Half([.. g], map))];
        foreach (string line in Lines.Where(l => map.EndsOf(l).Length == 0))
        {
            int at = Array.FindIndex(pieces, p => p.Touches(map.RailsOf(line), map));
            if (at < 0) pieces = [.. pieces, new([], [line], [])];
            else pieces[at] = pieces[at] with { Lines = pieces[at].Lines.Add(line) };
        }
        return [.. pieces];
    }

    /// <summary>Whether a line is cut between it and another.</summary>
    public bool IsCutFrom(Block other) => Cuts.Any(c => other.Cuts.Contains(c with { KeepsFrom = !c.KeepsFrom }));

    /// <summary>The rails and the metal that its lines end on; the feed has its own name.</summary>
    public HashSet<string> RailsOf(DrawingPlan plan)
    {
        var map = new PartMap(plan);
        return [.. Lines.Concat(Cuts.Select(c => c.Line)).SelectMany(map.SharedOf)];
    }

    // Lines between rails are the last that can be set apart.
    private (Block First, Block Second)? WithoutStraps(PartMap map)
    {
        string[] straps = [.. Lines.Where(l => map.EndsOf(l).Length == 0)];
        if (straps.Length == 0 || (Parts.IsEmpty && straps.Length < 2)) return null;
        string[] apart = Parts.IsEmpty ? straps[(straps.Length / 2)..] : straps;
        return (this with { Lines = [.. Lines.Except(apart)] }, new([], [.. apart], []));
    }

    private bool Touches(HashSet<string> rails, PartMap map) => Lines.Any(l => map.RailsOf(l).Overlaps(rails));

    private Block Half(string[] parts, PartMap map)
    {
        var here = parts.ToHashSet(StringComparer.Ordinal);
        var lines = Lines.Where(l => map.EndsOf(l) is { Length: > 0 } ends && ends.All(here.Contains));
        var cut = Lines.Where(l => map.EndsOf(l) is [var a, var b] && here.Contains(a) != here.Contains(b)).Select(l => new CutLine(l, here.Contains(BoxPlanner.OwnerOf(map.WireOf(l).From.Box))));
        var old = Cuts.Where(c => here.Contains(BoxPlanner.OwnerOf(c.KeepsFrom ? map.WireOf(c.Line).From.Box : map.WireOf(c.Line).To.Box)));
        return new([.. parts], [.. lines], [.. old, .. cut]);
    }

    /// <summary>Which parts a plan's lines join; rails left out.</summary>
    private sealed class PartMap
    {
        private readonly Dictionary<string, LayoutWire> wires;
        private readonly Dictionary<string, PlannedPart> parts;
        private readonly DrawingPlan plan;

        public PartMap(DrawingPlan plan)
        {
            this.plan = plan;
            wires = plan.Input.Wires.ToDictionary(w => w.Id, StringComparer.Ordinal);
            parts = plan.Parts.Where(p => !IsShared(p)).ToDictionary(p => p.Box, StringComparer.Ordinal);
        }

        public IEnumerable<string> Parts => plan.Parts.Select(p => p.Box).Where(parts.ContainsKey);

        public IEnumerable<string> LinesBetweenRails => plan.Lines.Select(l => l.Line).Where(l => EndsOf(l).Length == 0);

        public LayoutWire WireOf(string line) => wires[line];

        public string[] EndsOf(string line) => [.. new[] { wires[line].From, wires[line].To }.Where(e => e.Kind == EndKind.Pin).Select(e => BoxPlanner.OwnerOf(e.Box)).Where(parts.ContainsKey).Distinct()];

        public HashSet<string> RailsOf(string line) => [.. new[] { wires[line].From, wires[line].To }.Where(e => e.Kind == EndKind.Pin).Select(e => BoxPlanner.OwnerOf(e.Box)).Where(b => !parts.ContainsKey(b))];

        // What stands on the chassis has signs, and no flag.
        public IEnumerable<string> SharedOf(string line) => RailsOf(line).Concat(new[] { wires[line].From, wires[line].To }.Any(e => e.Kind == EndKind.Feed) ? [""] : []);

        public bool IsFree(PlannedLine line) => EndsOf(line.Line).Any(p => parts[p].PartId.Length == 0);

        /// <summary>For each part the first of those that some lines join it to.</summary>
        public Dictionary<string, string> Joined(Predicate<PlannedLine> isMeant)
        {
            var first = Parts.ToDictionary(p => p, p => p, StringComparer.Ordinal);
            string Root(string part) => first[part] == part ? part : first[part] = Root(first[part]);
            foreach (var line in plan.Lines.Where(l => isMeant(l)))
                if (EndsOf(line.Line) is [var a, var b]) first[Root(b)] = Root(a);
            return Parts.ToDictionary(p => p, Root, StringComparer.Ordinal);
        }

        public Block BlockOf(ImmutableArray<string> some)
        {
            var here = some.ToHashSet(StringComparer.Ordinal);
            return new(some, [.. plan.Lines.Select(l => l.Line).Where(l => EndsOf(l) is { Length: > 0 } ends && ends.All(here.Contains))], []);
        }
    }
}
