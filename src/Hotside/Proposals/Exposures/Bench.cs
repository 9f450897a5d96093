using Hotside.Checks;
using Hotside.Checks.Gauges;
using Hotside.Circuits;
using Hotside.Sizing;
using Hotside.Solving;
using Hotside.Studies;

namespace Hotside.Proposals.Exposures;

/// <summary>A circuit with all that steps ask of it: its study, its settings solved, its sizes; each made when first asked for.</summary>
internal sealed class Bench
{
    private readonly Lazy<CircuitStudy> study;
    private readonly Lazy<CircuitSizes> sizes;
    private readonly Lazy<CheckedCircuit> check;
    private readonly Lazy<StateSolver> held;

    /// <summary>A bench for a circuit.</summary>
    public Bench(Circuit circuit, CancellationToken cancel)
    {
        Circuit = circuit;
        study = new(() => CircuitStudy.Of(circuit, cancel));
        sizes = new(() => CircuitSizing.Of(Study, _ => false));
        check = new(() => new(Study, sizes, []));
        held = new(() => new(new CircuitModel(circuit)));
    }

    /// <summary>The circuit.</summary>
    public Circuit Circuit { get; }

    /// <summary>On which side its loads are switched.</summary>
    public CircuitStudy Study => study.Value;

    /// <summary>What its conductors and fuses carry and need.</summary>
    public CircuitSizes Sizes => sizes.Value;

    /// <summary>The circuit as checks have it.</summary>
    public CheckedCircuit Checked => check.Value;

    /// <summary>The greatest volts and amperes of an element over all settings in which no machine turns; of a gauge also with its sender at its least; of a coil before its contact moves.</summary>
    public (double Volts, double Amperes) Greatest(Part part, Element element)
    {
        double volts = Checked.Points.Greatest(part.Id, element.Name, e => e.Volts, p => !p.IsRunning), amperes = Checked.Points.Greatest(part.Id, element.Name, e => e.Amperes, p => !p.IsRunning);
        if (Study.Loads.FirstOrDefault(l => l.Part.Id == part.Id && l.Element.Name == element.Name) is not { } load || load.Control.Any.IsEmpty) return (volts, amperes);
        var other = element.Type == ElementType.Gauge ? Swept(load) : element.Type == ElementType.Coil ? Held(load) : null;
        return other is { } found && Math.Abs(found.Volts) > Math.Abs(volts) ? found : (volts, amperes);
    }

    private (double Volts, double Amperes)? Swept(LoadStudy load) =>
        SenderSweep.Of(Checked, load) is var (sender, least, _) && SenderSweep.At(Checked, load, sender.Id, least) is { } point ? (point.Volts, point.Amperes) : null;

    // Once the contact has moved, what it feeds makes the source sag and hides what the coil gets.
    private (double Volts, double Amperes)? Held(LoadStudy load)
    {
        var element = held.Value.Model.Elements.First(e => e.Part.Id == load.Part.Id && e.Element.Name == load.Element.Name);
        var at = held.Value.SolveHeld(held.Value.StateOf(OperatingPoints.SettingOf(load).Positions), [], laws => laws, null);
        return (StateSolver.VoltsOf(at, element), held.Value.AmperesOf(at, element));
    }
}
