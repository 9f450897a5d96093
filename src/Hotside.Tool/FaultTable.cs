using Hotside.Circuits;
using Hotside.Faults;

namespace Hotside.Tool;

/// <summary>Prints what single faults do.</summary>
internal static class FaultTable
{
    private static readonly string[] Head = ["wire", "fault", "setting", "current", "what happens", "fuse", "opens within", "wire"];

    public static void Print(TextWriter output, string head, Circuit circuit, CircuitFaults faults)
    {
        output.WriteLine(head);
        Table.Print(output, Head, [.. faults.Faults.Where(f => !f.IsWithoutEffect).Select(f => Row(circuit, f))]);
        var silent = faults.Faults.Where(f => f.IsWithoutEffect && f.Kind == FaultKind.Open).Select(f => f.Conductor.Id).ToArray();
        if (silent.Length > 0) output.WriteLine($"  open without effect there: {string.Join(", ", silent)}");
        output.WriteLine();
        foreach (var finding in faults.Findings) output.WriteLine("  " + finding);
        if (faults.Findings.Length > 0) output.WriteLine();
    }

    private static string[] Row(Circuit circuit, FaultStudy fault) =>
    [
        fault.Conductor.Id,
        fault.Kind switch
        {
            FaultKind.Open => "open", FaultKind.BadJoint => "bad joint", FaultKind.ShortAtFirstEnd => "short at " + circuit.TextOf(fault.Conductor.From), _ => "short at " + circuit.TextOf(fault.Conductor.To),
        },
        fault.Setting.Name, fault.Kind == FaultKind.Open ? "" : Table.Figure(fault.Current.Amperes) + " A", Effects(fault), string.Join(", ", fault.Openings.Select(o => o.Part)),
        fault.End switch
        {
            FaultEnd.Cleared or FaultEnd.MayNeverClear => string.Join(", ", fault.Openings.Select(Times)),
            FaultEnd.Unprotected => "NOTHING OPENS",
            FaultEnd.LimitedByLoads => "loads limit it",
            _ => "",
        },
        Wire(fault),
    ];

    private static string Effects(FaultStudy fault)
    {
        string[] effects =
        [
            .. fault.Loads.GroupBy(l => l.Effect).Select(g => $"{string.Join(", ", g.Select(l => l.Load))} {g.Key switch { LoadEffect.Dead => "dead", LoadEffect.Weak => "weak", LoadEffect.Reversed => "reversed", _ => "on though off" }}"),
            .. fault.Kind == FaultKind.BadJoint && fault.JointHeat.Watts >= 1 ? new[] { $"joint drops {Table.Figure(fault.JointDrop.Volts)} V, {Table.Figure((double)fault.JointHeat.Watts)} W{(fault.IsHotToTouch ? ": burns" : "")}" } : [],
        ];
        return string.Join("; ", effects);
    }

    private static string Times(FuseOpening opening) => opening.Earliest is null ? "time not known"
        : (opening.Earliest.Value.Seconds > 0 ? Seconds(opening.Earliest.Value.Seconds) + " to " : "") + (opening.Latest is { } latest ? Seconds(latest.Seconds) : "never");

    private static string Seconds(double seconds) => Table.Figure(seconds) + " s";

    private static string Wire(FaultStudy fault) => fault.Strains.IsEmpty ? ""
        : fault.Strains[0] is { Survival: not Survival.Survives } worst
            ? $"{worst.Conductor} {worst.Survival switch { Survival.NotShown => "may suffer", Survival.Overheats => "OVERHEATS", _ => "GLOWS AND MELTS" }}"
            : "survives";
}
