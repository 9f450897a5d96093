using System.Collections.Immutable;
using System.Text;
using Hotside.Circuits;
using Hotside.Faults;
using Hotside.Outputs;
using Hotside.Sizing;
using Hotside.Studies;

namespace Hotside;

/// <summary>What single faults of a job's conductors do, before and after, as tables. Immutable.</summary>
public sealed class FaultTable
{
    /// <summary>Asks for all conductors.</summary>
    public const string All = "all";

    private static readonly string[] Head = ["wire", "fault", "setting", "current", "what happens", "fuse", "opens within", "wire"];

    private const string Caution = "Computed, not to be tried. A short of a battery burns and may make it burst; the workshop manual, local codes and licensed practice take precedence.";

    // A longer one stands below the table.
    private const int LongestSetting = 34;

    private readonly ImmutableArray<(string Name, string Head, Circuit Circuit, CircuitFaults Faults)> sides;

    private FaultTable(ImmutableArray<(string Name, string Head, Circuit Circuit, CircuitFaults Faults)> sides) => this.sides = sides;

    /// <summary>The tables of a job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="wire">The conductor's id, or <see cref="All"/>.</param>
    /// <param name="setting">The setting in which the faults happen; left out: of each conductor that in which it carries most.</param>
    /// <exception cref="ArgumentException">There is no such conductor before or after, or no such setting; the message names the nearest.</exception>
    public static FaultTable Of(Job job, string wire, string? setting = null)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentException.ThrowIfNullOrWhiteSpace(wire);
        bool isAltered = job.Study.IsAltered;
        (string Name, string Head, CircuitSizes Sizes, CircuitStudy Study)[] sides = isAltered
            ? [("before", "Before, ", job.Sizes.Before, job.Study.Before), ("after", "After, ", job.Sizes.After, job.Study.After)]
            : [("after", "", job.Sizes.After, job.Study.After)];
        var having = sides.Where(s => (wire == All || s.Sizes.Circuit.FindConductor(wire) is not null) && (setting is null || s.Study.FindSetting(setting) is not null)).ToArray();
        // Where neither has both, the altered circuit says which is nearest.
        return new([.. (having.Length > 0 ? having : sides[^1..]).Select(s => (s.Name, s.Head, s.Sizes.Circuit, FaultsOf(s.Sizes, s.Study)))]);

        CircuitFaults FaultsOf(CircuitSizes sizes, CircuitStudy study)
        {
            var named = setting is null ? null : study.Setting(setting).Setting;
            return wire != All ? CircuitFaults.OfConductor(sizes, wire, named) : named is null ? CircuitFaults.OfEach(sizes) : CircuitFaults.Of(sizes, named);
        }
    }

    /// <summary>The tables in plain text, columns aligned by spaces, a caution below; lines end with a line feed.</summary>
    public string ToText()
    {
        StringBuilder text = new();
        foreach (var (_, head, circuit, faults) in sides) Tell(text, head, circuit, faults);
        return text.Append(Caution).Append('\n').ToString();
    }

    /// <summary>The same as JSON of the contract <c>hotside-faults/1</c>: each fault with what becomes of the loads, what opens within which time, what the wires stand; before and after.</summary>
    public string ToJson() => FaultJson.Write(sides.Select(s => (s.Name, s.Faults)), Caution);

    private static void Tell(StringBuilder text, string head, Circuit circuit, CircuitFaults faults)
    {
        text.Append(head).Append(circuit.System).Append('\n');
        FaultStudy[] shown = [.. faults.Faults.Where(f => !f.IsWithoutEffect)];
        string[] legend = [.. shown.Select(f => f.Setting.Name).Where(n => n.Length > LongestSetting).Distinct()];
        string SettingOf(FaultStudy fault) => Array.IndexOf(legend, fault.Setting.Name) is >= 0 and var at ? $"see {Numbers.Whole(at + 1)} below" : fault.Setting.Name;
        text.Append(TextColumns.Of("  ", [Head, .. shown.Select(f => Row(circuit, f, SettingOf(f)))]));
        for (int i = 0; i < legend.Length; i++) text.Append("  ").Append(Numbers.Whole(i + 1)).Append(": ").Append(legend[i]).Append('\n');
        var silent = faults.Faults.Where(f => f.IsWithoutEffect && f.Kind == FaultKind.Open).Select(f => f.Conductor.Id).ToArray();
        if (silent.Length > 0) text.Append("  open without effect on a load, in the setting in which it carries most: ").AppendJoin(", ", silent).Append('\n');
        text.Append('\n');
        foreach (var alike in faults.Findings.GroupBy(f => f.Kind))
        {
            // Notes are many on a whole vehicle, and each stands in its row above.
            var told = alike.Key.Severity > Diagnostics.Severity.Note ? alike : alike.Take(1);
            foreach (var finding in told) text.Append("  ").Append(finding).Append('\n');
            if (alike.Count() > told.Count()) text.Append("     the same of ").AppendJoin(", ", alike.Skip(1).Select(f => f.Items[0])).Append('\n');
        }
        if (faults.Findings.Length > 0) text.Append('\n');
    }

    private static string[] Row(Circuit circuit, FaultStudy fault, string setting) =>
    [
        fault.Conductor.Id,
        fault.Kind switch
        {
            FaultKind.Open => "open", FaultKind.BadJoint => "bad joint", FaultKind.ShortAtFirstEnd => "short at " + circuit.TextOf(fault.Conductor.From), _ => "short at " + circuit.TextOf(fault.Conductor.To),
        },
        setting, fault.Kind == FaultKind.Open ? "" : Numbers.Brief(fault.Current.Amperes) + " A", Effects(fault), string.Join(", ", fault.Openings.Select(o => o.Part)),
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
            .. fault.Kind == FaultKind.BadJoint && fault.JointHeat.Watts >= 1 ? new[] { $"joint drops {Numbers.Brief(fault.JointDrop.Volts)} V, {Numbers.Brief((double)fault.JointHeat.Watts)} W{(fault.IsHotToTouch ? ": burns" : "")}" } : [],
        ];
        return string.Join("; ", effects);
    }

    private static string Times(FuseOpening opening) => opening.Earliest is null ? "time not known"
        : opening.Latest is not { } latest ? (opening.Earliest.Value.Seconds > 0 ? Seconds(opening.Earliest.Value.Seconds) + " to never" : "may never open")
        : opening.Earliest.Value.Seconds > 0 ? $"{Numbers.Brief(opening.Earliest.Value.Seconds)} to {Seconds(latest.Seconds)}" : "at most " + Seconds(latest.Seconds);

    private static string Seconds(double seconds) => Numbers.Brief(seconds) + " s";

    private static string Wire(FaultStudy fault) => fault.Strains.IsEmpty ? ""
        : fault.Strains[0] is { Survival: not Survival.Survives } worst
            ? $"{worst.Conductor} {worst.Survival switch { Survival.NotShown => "may suffer", Survival.Overheats => "OVERHEATS", _ => "GLOWS AND MELTS" }}"
            : "survives";
}
