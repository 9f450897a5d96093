using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Sizing.Currents;
using Hotside.Sizing.Drops;
using Hotside.Sizing.Guards;
using Hotside.Solving;
using Hotside.Studies;
using UnitsNet;

namespace Hotside.Sizing;

/// <summary>Sizes a circuit: currents first, then what guards each conductor, then the drop of the circuits with the sizes that this asks for.</summary>
internal static class CircuitSizing
{
    // How often sizes that the drop asks for are tried: thicker wires let more current flow.
    private const int MostRounds = 4;

    /// <summary>The sizes of a circuit.</summary>
    /// <param name="study">What is known of its loads.</param>
    /// <param name="isOld">Which conductors were there before.</param>
    public static CircuitSizes Of(CircuitStudy study, Predicate<Conductor> isOld)
    {
        var circuit = study.Circuit;
        CircuitModel model = new(circuit);
        WorstCurrents currents = new(study, model);
        FuseJudge fuses = new(model, currents);
        HashSet<string> starters = [.. study.Loads.Where(l => l.Part.IsStarter(l.Element)).SelectMany(l => l.Paths).SelectMany(p => p.Hot.Concat(p.Ground))];
        var loaded = circuit.Conductors.Select((c, i) => new ConductorSizing(c)
        {
            Worst = currents.Of(i), Guard = fuses.Protections.Of(i), IsOld = isOld(c), FeedsStarter = starters.Contains(c.Id),
            Insulation = Tables.Insulation.Of(c.Wire, circuit.System), Bundled = 1,
        }).ToArray();
        var bundles = loaded.Where(c => c.Conductor.Wire.Loom is not null && c.Worst.Amperes >= ConductorJudge.LiveAmperes).CountBy(c => c.Conductor.Wire.Loom!).ToDictionary(StringComparer.Ordinal);
        for (int i = 0; i < loaded.Length; i++)
            loaded[i] = loaded[i] with
            {
                Bundled = loaded[i].Conductor.Wire.Loom is { } loom ? Math.Max(bundles.GetValueOrDefault(loom), 1) : 1,
                GuardAmperes = loaded[i].Guard.Devices.IsEmpty ? null : loaded[i].Guard.Amperes ?? loaded[i].Guard.Devices.Sum(fuses.TakenRating),
            };
        ConductorJudge judge = new(circuit);
        var (sized, drops) = Drops(study, model, currents.Graph, [.. loaded.Select(judge.LeastByHeat)]);
        ImmutableArray<ConductorSizing> conductors = [.. loaded.Select((c, i) => judge.Judged(c, sized.Conductors[i].Wire, drops, i))];
        var judged = fuses.Judged(conductors);
        return new(study, conductors, judged, SizingFindings.Of(conductors, judged)) { HighestVolts = currents.HighestVolts, Model = model, InLine = [.. InLine(currents)] };
    }

    private static IEnumerable<ElementCurrent> InLine(WorstCurrents currents)
    {
        for (int e = 0; e < currents.Graph.Edges.Length; e++)
            if (currents.Graph.Edges[e].Element is { } element)
                yield return new(element.Part, element.Element, ElectricCurrent.FromAmperes(currents.Of(e).Amperes), currents.Of(e).How);
    }

    // A conductor whose size is not stated gets the size that all but the drop ask for, so that the drop can be told.
    private static (Circuit Sized, DropSizes Drops) Drops(CircuitStudy study, CircuitModel model, InLineGraph graph, ImmutableArray<WireSize?> least)
    {
        var circuit = study.Circuit;
        if (circuit.Conductors.Where((c, i) => c.Wire is { Size: null, ResistanceInOhms: null, LengthInMetres: not null } && least[i] is not null).Any())
        {
            circuit = circuit.With([.. circuit.Conductors.Select((c, i) => c.Wire is { Size: null, ResistanceInOhms: null } ? c with { Wire = c.Wire with { Size = least[i] } } : c)]);
            graph = new(new CircuitModel(circuit));
        }
        DropSizes drops = new(circuit, new CircuitDrops(study, graph).All, c => study.Circuit.Conductors[c].Wire.Size is not null);
        for (int round = 0; round < MostRounds && drops.Raised is var better && !ReferenceEquals(better, circuit); round++)
            if (!drops.RaiseFurther(better, new CircuitDrops(study, new(new CircuitModel(better))).All)) break;
        return (circuit, drops);
    }
}
