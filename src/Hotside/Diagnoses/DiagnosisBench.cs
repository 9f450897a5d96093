using System.Collections.Immutable;
using Hotside.Alterations;
using Hotside.Circuits;
using Hotside.Studies;

namespace Hotside.Diagnoses;

/// <summary>A piece of a circuit with all that is known of its faults; made once, and asked by one thread at a time.</summary>
internal sealed class DiagnosisBench
{
    private DiagnosisBench(CircuitStudy study, Bench bench, ImmutableArray<Fault> faults, ImmutableArray<LoadStudy> loads)
    {
        (Study, Loads) = (study, loads);
        Dictionary = new(bench, faults, BenchSettings.Of(study, bench.Circuit, loads));
        Meter = new(Dictionary);
        Places = new(study, Meter);
        Tests = new(Meter);
        Classes = new(Meter, Tests);
        Text = new(Meter, Tests);
    }

    public CircuitStudy Study { get; }

    /// <summary>The loads whose piece it is; none for the whole circuit.</summary>
    public ImmutableArray<LoadStudy> Loads { get; }

    public FaultDictionary Dictionary { get; }

    public Meter Meter { get; }

    public TestList Tests { get; }

    public FaultClasses Classes { get; }

    public ReadingPlaces Places { get; }

    public ReadingText Text { get; }

    /// <summary>One thread at a time works at it.</summary>
    public Lock Gate { get; } = new();

    /// <summary>The bench of some loads of a circuit.</summary>
    /// <param name="study">The circuit, studied.</param>
    /// <param name="alteration">The alteration, where the circuit is the altered one: what it touched fails more often; else <see langword="null"/>.</param>
    /// <param name="loads">The loads; none for the whole circuit.</param>
    /// <param name="elsewhere">Parts and wires of the piece whose faults are looked at elsewhere; <see langword="null"/>: none.</param>
    /// <param name="lists">Weights and trouble; left out: the library's.</param>
    public static DiagnosisBench Of(CircuitStudy study, Alteration? alteration, ImmutableArray<LoadStudy> loads, IReadOnlySet<string>? elsewhere = null, DiagnosisLists? lists = null)
    {
        lists ??= DiagnosisLists.Standard;
        var loose = LooseJoints.Of(study.Circuit);
        var piece = loads.IsEmpty ? loose : ConnectedPiece.Of(study, loose, loads);
        Bench bench = new(piece, isPiece: piece.Parts.Length < study.Circuit.Parts.Length, lists.Effort);
        var faults = FaultList.Of(bench, FactorOf(study.Circuit, alteration, lists.Modes), lists.Modes);
        return new(study, bench, elsewhere is null ? faults : [.. faults.Where(f => f.Items.IsEmpty || !elsewhere.Contains(f.Items[0]))], loads);
    }

    /// <summary>A whole circuit with no fault in mind: what it reads when all is well.</summary>
    public static DiagnosisBench Sound(CircuitStudy study)
    {
        Bench bench = new(LooseJoints.Of(study.Circuit));
        return new(study, bench, FaultList.None, []);
    }

    /// <summary>What a load belongs to when a part is complained of: the part's own loads, else those in whose ways it lies.</summary>
    public static ImmutableArray<LoadStudy> LoadsAt(CircuitStudy study, string part)
    {
        var own = study.LoadsNamed(part);
        return !own.IsEmpty ? own : [.. study.Loads.Where(l => !l.Element.IsInternal && l.Paths.Any(p => p.HotWay.Contains(part) || p.GroundWay.Contains(part)))];
    }

    private static Func<string, double> FactorOf(Circuit circuit, Alteration? alteration, FaultModes modes)
    {
        HashSet<string> touched = alteration is null || ReferenceEquals(alteration.Before, alteration.After) ? []
            : [.. alteration.Changes.SelectMany(c => c.Acts).SelectMany(a => a.Items)];
        return item => (touched.Count == 0 ? 1 : touched.Contains(item) ? modes.NewWork : modes.Old)
            * (circuit.FindConductor(item)?.Wire.Condition is WireCondition.Brittle or WireCondition.Burnt ? modes.BadCondition : 1);
    }
}
