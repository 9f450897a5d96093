using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Alterations;

/// <summary>The numbers of a list in an order in which the work can be done: the user's own where that is sound.</summary>
/// <param name="Groups">The indices of the groups in the order of work.</param>
/// <param name="Notes">For each line that had to change place, why; and for each need that no order meets.</param>
internal sealed record OrderOfWork(ImmutableArray<int> Groups, ImmutableArray<(int Group, Diagnostic Note)> Notes)
{
    public static readonly DiagnosticKind Unmet = new("HS4110", Severity.Note, "Two numbers need each other",
        "line {0} of the list and line {1} need each other: {2} waits for {3}");

    /// <summary>Finds the order.</summary>
    /// <param name="before">The before circuit.</param>
    /// <param name="after">The after circuit.</param>
    /// <param name="groups">The acts of each number, in the user's order.</param>
    public static OrderOfWork Of(Circuit before, Circuit after, ImmutableArray<ImmutableArray<Act>> groups)
    {
        var graph = new Precedence(groups.Length);
        var notes = new List<(int, Diagnostic)>();
        foreach (var need in OrderRules.Of(before, after, groups))
            if (!graph.TryAdd(need))
                notes.Add((need.Then, Unmet.Of([need.What, need.For], Line(need.Then), Line(need.First), need.What, need.For)));
        var order = graph.Sorted();
        notes.AddRange(Moved(graph, order));
        return new(order, [.. notes]);
    }

    // Taking what is ready in the user's order lets only those lines change place that had to wait for a later one.
    private static IEnumerable<(int, Diagnostic)> Moved(Precedence graph, ImmutableArray<int> order)
    {
        int latest = -1;
        for (int place = 0; place < order.Length; place++)
        {
            int group = order[place];
            if (group > latest)
            {
                latest = group;
                continue;
            }
            var need = graph.NeedsOf(group).MaxBy(n => order.IndexOf(n.First))!;
            yield return (group, need.Kind.Of([need.What, need.For], Line(group), Numbers.Whole(place + 1), need.What, need.For));
        }
    }

    private static string Line(int group) => Numbers.Whole(group + 1);
}
