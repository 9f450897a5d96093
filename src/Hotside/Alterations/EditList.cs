using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Alterations;

/// <summary>Applies a list of changes to a before circuit: parts first, then what is carried over, then wires. The order of the list only numbers.</summary>
internal static class EditList
{
    public static EditResult Apply(Circuit before, string title, ElectricalSystem afterSystem, ImmutableArray<Setting> afterSettings, ImmutableArray<EditGroup> groups)
    {
        var bench = new Workbench(before, groups);
        bench.DoParts();
        bench.CarryOver();
        bench.DoWires();
        bench.FindHanging();
        bench.FindDoubtful();
        var order = WorkOrder.Of(groups, before, bench);
        foreach (var (group, needs) in order.Deferred)
            bench.Report(AlterationProblems.Later.Of([], order.Subject(group), needs) with { Hint = "move the line behind what it needs" }, group, 0);
        if (bench.Problems.Any(p => p.Diagnostic.Severity >= Severity.Error)) return new(null, [.. bench.Problems]);
        var system = afterSystem.Return is { } node ? afterSystem with { Return = bench.Resolved(node) } : afterSystem;
        var after = new Circuit(system, bench.Parts, bench.Conductors, afterSettings);
        var changes = order.Groups.Select((g, i) => new Change(i + 1, [.. groups[g].Edits.Select(e => bench.ActOf(e))], groups[g].Reason));
        return new(new(title, before, after, [.. changes]), [.. bench.Problems]);
    }
}
