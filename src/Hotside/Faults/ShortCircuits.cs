using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Sizing;
using Hotside.Sizing.Guards;
using Hotside.Sizing.Tables;
using Hotside.Solving;
using Hotside.Solving.Laws;
using Hotside.Solving.Relays;
using UnitsNet;

namespace Hotside.Faults;

/// <summary>Bolted shorts of nodes to the return: what flows, what opens one after the other, what the conductors stand.</summary>
internal sealed class ShortCircuits
{
    // Below so many amperes a short is none.
    private const double NoShort = 0.5, DeadVolts = 1e-3;

    // Above so many times its rating a fuse opens in its shortest band however warm the conductors are: copper at 125 °C resists 1.41 times as much.
    private const double HotMattersBelow = 8.5;

    private readonly CircuitSizes sizes;
    private readonly StateSolver solver;
    private readonly Strains strains;
    private readonly ImmutableArray<(ModelElement Element, double Rating)> devices;
    private readonly int firstShort;
    private readonly double[] warmFactors;
    private readonly Dictionary<(ModelElement Device, StatePoint At), StatePoint> opens = [];
    private readonly Dictionary<(int Node, StatePoint At, bool Hot), ShortCircuit> known = [];

    /// <summary>The shorts of a circuit.</summary>
    /// <param name="sizes">The circuit, sized.</param>
    /// <param name="solver">A solver whose further edges lead from each node to the return.</param>
    public ShortCircuits(CircuitSizes sizes, StateSolver solver)
    {
        (this.sizes, this.solver) = (sizes, solver);
        strains = new(sizes, solver);
        firstShort = solver.Model.Network.Edges.Length;
        devices =
        [
            .. solver.Model.Elements.Where(e => e.Element.Type is ElementType.Fuse or ElementType.Breaker).Select(e => (e, DeviceTimes.RatingOf(e) ?? Needed(e)))
                .Where(d => d.Item2 is not null).Select(d => (d.e, d.Item2!.Value)),
        ];
        warmFactors = [.. sizes.Conductors.Select(c => c.Conductor.Wire.ResistanceInOhms is null ? CopperResistance.FactorAt(c.Insulation.Celsius) / CopperResistance.FactorAt(c.Conductor.Wire.TemperatureInCelsius ?? CopperResistance.TableCelsius) : 1)];
    }

    /// <summary>A short of a node.</summary>
    public ShortCircuit At(int node, Setting setting, StatePoint healthy, bool asksHot)
    {
        if (known.TryGetValue((node, healthy, asksHot), out var found)) return found;
        List<ModelElement> opened = [];
        var openings = ImmutableArray.CreateBuilder<FuseOpening>();
        // A relay takes as long to fall as a fuse to open: the current of the first moment is that with all relays as they stand.
        var first = Held(node, healthy, opened, isHot: false);
        var point = first;
        bool mayNever = false, isSettled = false;
        while (true)
        {
            if (Exceeding(point) is { } device)
            {
                var opening = OpeningOf(device, node, healthy, opened, point, asksHot);
                openings.Add(opening);
                mayNever |= opening.MayNeverOpen;
                opened.Add(device.Element);
                // Behind an open fuse a short of what is dead changes nothing more.
                point = opened.Count == 1 && OpenOf(device.Element, setting, healthy) is var open && Math.Abs(open.Point.Volts[node]) < DeadVolts ? open
                    : Settled(node, setting, healthy, opened, null);
            }
            else if (isSettled) break;
            else if (opened.Count == 0) point = Settled(node, setting, healthy, opened, first);
            isSettled = true;
        }
        double current = Math.Abs(solver.AmperesOf(first, firstShort + node)), left = Math.Abs(solver.AmperesOf(point, firstShort + node));
        var suffered = strains.Of(first, healthy, point, openings.Count > 0 ? openings[^1] : null);
        var end = current < NoShort ? FaultEnd.None : left < NoShort ? mayNever ? FaultEnd.MayNeverClear : FaultEnd.Cleared
            : strains.IsShort(point, healthy) ? FaultEnd.Unprotected : FaultEnd.LimitedByLoads;
        double? whenHot = !asksHot || current < NoShort ? null : Math.Abs(solver.AmperesOf(Held(node, healthy, [], isHot: true, first), firstShort + node));
        return known[(node, healthy, asksHot)] = new(current, whenHot, end, openings.ToImmutable(), suffered, point);
    }

    private StatePoint OpenOf(ModelElement device, Setting setting, StatePoint healthy) =>
        opens.TryGetValue((device, healthy), out var found) ? found : opens[(device, healthy)] = Settled(-1, setting, healthy, [device], null);

    // Of what carries too much the one of the greatest multiple.
    private (ModelElement Element, double Rating)? Exceeding(StatePoint point)
    {
        (ModelElement Element, double Rating)? worst = null;
        double most = OpeningTime.Carries;
        foreach (var device in devices)
            if (Math.Abs(solver.AmperesOf(point, device.Element)) / device.Rating is var multiple && multiple > most)
                (worst, most) = (device, multiple);
        return worst;
    }

    private FuseOpening OpeningOf(
        (ModelElement Element, double Rating) device, int node, StatePoint healthy, List<ModelElement> opened, StatePoint point, bool asksHot)
    {
        var (element, rating) = device;
        double amperes = Math.Abs(solver.AmperesOf(point, element)), multiple = amperes / rating, least = multiple;
        FuseOpening opening = new(element.Part.Id, ElectricCurrent.FromAmperes(rating), ElectricCurrent.FromAmperes(amperes));
        if (!DeviceTimes.AreKnown(element)) return opening;
        if (asksHot || multiple < HotMattersBelow) least = Math.Abs(solver.AmperesOf(Held(node, healthy, opened, isHot: true, point), element)) / rating;
        var (soon, late) = (DeviceTimes.At(element, rating, amperes), DeviceTimes.At(element, rating, least * rating));
        return opening with
        {
            Earliest = Duration.FromSeconds(soon?.Least ?? 0), Latest = late?.Most is { } most ? Duration.FromSeconds(most) : null, MayNeverOpen = late?.Most is null,
        };
    }

    private StatePoint Settled(int node, Setting setting, StatePoint healthy, List<ModelElement> opened, StatePoint? held) =>
        solver.SolveOn(held ?? Held(node, healthy, opened, isHot: false), setting.Values, laws => Faulty(laws, node, opened, isHot: false));

    private StatePoint Held(int node, StatePoint healthy, List<ModelElement> opened, bool isHot, StatePoint? near = null) =>
        solver.SolveHeld(healthy, laws => Faulty(laws, node, opened, isHot), near?.Point.Volts);

    private Law?[] Faulty(Law?[] laws, int node, List<ModelElement> opened, bool isHot)
    {
        if (node >= 0) laws[firstShort + node] = ClampLaw.Resistance(CopperResistance.Contact);
        foreach (var device in opened) Array.Clear(laws, device.FirstEdge, device.EdgeCount);
        if (!isHot) return laws;
        for (int c = 0; c < warmFactors.Length; c++)
            if (laws[c] is ClampLaw line)
            {
                // Copper warms, a bad joint is what it is.
                double joints = (sizes.Conductors[c].Conductor.Wire.JointAtFromInOhms ?? 0) + (sizes.Conductors[c].Conductor.Wire.JointAtToInOhms ?? 0);
                laws[c] = ClampLaw.Resistance((((1 / line.Siemens) - joints) * warmFactors[c]) + joints);
            }
        return laws;
    }

    private double? Needed(ModelElement device) => sizes.Fuses.FirstOrDefault(f => f.Part.Id == device.Part.Id && f.Element.Name == device.Element.Name)?.RatingNeeded?.Amperes;
}

/// <summary>What a short does.</summary>
/// <param name="Amperes">Its current with conductors at the temperature stated, else at 20 °C.</param>
/// <param name="HotAmperes">Its current with warm conductors, where it was asked for.</param>
/// <param name="End">How it ends.</param>
/// <param name="Openings">What opens.</param>
/// <param name="Strains">What conductors carry.</param>
/// <param name="After">The point once all is open that opens.</param>
internal sealed record ShortCircuit(
    double Amperes, double? HotAmperes, FaultEnd End, ImmutableArray<FuseOpening> Openings, ImmutableArray<ConductorStrain> Strains, StatePoint After);
