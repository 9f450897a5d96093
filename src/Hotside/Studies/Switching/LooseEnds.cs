using Hotside.Circuits;
using QuikGraph;

namespace Hotside.Studies.Switching;

/// <summary>Terminals with nothing on them that a load would reach through contacts, on the side where it finds neither feed nor return: where a wire is missing, most likely.</summary>
internal static class LooseEnds
{
    // More than these are no hint any more.
    private const int Told = 3;

    /// <summary>Such terminals with what they are for, as a hint names them; empty when there are none, or too many.</summary>
    public static string Of(ContactGraph graph, Branch load)
    {
        var poles = graph.Sources.SelectMany(s => new[] { s.Plus, s.Minus }).Append(graph.Return).ToHashSet();
        var lacking = new[] { load.Source, load.Target }.Select(end => Reached(graph, load, end)).Where(points => !points.Overlaps(poles)).SelectMany(p => p).ToHashSet();
        var loose =
            from part in graph.Circuit.Parts
            from terminal in part.Kind.Terminals
            where !graph.Circuit.IsUsed(part, terminal.Name) && lacking.Contains(graph.PointOf(End.At(part.Id, terminal.Name)))
            select $"{part.Id}.{terminal.Name}" + (terminal.Meaning.Length > 0 ? $" ({terminal.Meaning})" : "");
        string[] told = [.. loose];
        return told.Length is 0 or > Told ? "" : string.Join(" and ", told);
    }

    /// <summary>The points that an end of a load reaches through whatever is no load, all contacts closed but those that it moves itself.</summary>
    public static HashSet<int> Reached(ContactGraph graph, Branch load, int from)
    {
        HashSet<int> reached = [from];
        Queue<int> open = new(reached);
        while (open.TryDequeue(out int point))
            foreach (var branch in graph.At(point))
                if (branch != load && branch.Role != BranchRole.Consumer && !(load.Element.Type == ElementType.Coil && branch.Part == load.Part) && branch.GetOtherVertex(point) is var next && reached.Add(next))
                    open.Enqueue(next);
        return reached;
    }
}
