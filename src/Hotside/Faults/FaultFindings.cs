using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Faults;

/// <summary>The kinds of findings that come from single faults.</summary>
internal static class FaultFindings
{
    public static readonly DiagnosticKind NothingProtects = new("HS3150", Severity.Warning, "Nothing protects a short",
        "if {0} touches the chassis at {1}, {2} A flow and nothing opens") { Source = "33 CFR 183.455" };

    public static readonly DiagnosticKind DoesNotSurvive = new("HS3151", Severity.Error, "A short burns a wire",
        "if {0} touches the chassis at {1}, {2} gets hotter than its insulation stands before {3} opens") { Source = "IEC 60364-4-43" };

    public static readonly DiagnosticKind HotJoint = new("HS3152", Severity.Note, "A bad joint burns",
        "a joint of {1} ohm in {0} gets {2} W and drops {3} V") { Source = "ISO 13732-1 (from memory); 10 W: common practice, no source" };

    /// <summary>The findings of some faults, in their order; of one conductor and kind once.</summary>
    public static ImmutableArray<Diagnostic> Of(ImmutableArray<FaultStudy> faults) => [.. faults.SelectMany(Of).DistinctBy(d => (d.Code, d.Items[0]))];

    private static IEnumerable<Diagnostic> Of(FaultStudy fault)
    {
        string id = fault.Conductor.Id;
        string end = (fault.Kind == FaultKind.ShortAtSecondEnd ? fault.Conductor.To : fault.Conductor.From).ToString();
        if (fault is { End: FaultEnd.Unprotected, FeedsStarter: false }) yield return NothingProtects.Of([id], id, end, Numbers.Plain(fault.Current.Amperes, 0)) with { Hint = "a fuse or link at its source" };
        if (fault.Openings is [var first, ..] && fault.Strains.FirstOrDefault(s => s.Survival >= Survival.Overheats) is { } burnt)
            yield return DoesNotSurvive.Of([id, first.Part], id, end, burnt.Conductor, first.Part) with { Hint = $"a smaller fuse than {first.Part}, or a larger wire than {burnt.Conductor}" };
        if (fault.Kind == FaultKind.BadJoint && fault.IsHotToTouch)
            yield return HotJoint.Of([id], id, Numbers.Plain(fault.JointDrop.Volts / fault.Current.Amperes, 2), Numbers.Plain((double)fault.JointHeat.Watts, 0), Numbers.Plain(fault.JointDrop.Volts, 1));
    }
}
