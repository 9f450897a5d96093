using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Sizing.Tables;
using Hotside.Solving.Laws;

namespace Hotside.Sizing.Drops;

/// <summary>
/// The sizes that let every circuit keep to its drop. A circuit that loses too much has that conductor raised first whose next size saves most volts for the copper that it
/// takes, then again; in one that keeps to it each conductor may be as thin as what is left allows, the others as they are and currents as they were.
/// </summary>
internal sealed class DropSizes
{
    private Circuit circuit;
    // A stated size is raised so many steps at most (own choice): beyond, the circuit loses its volts elsewhere.
    private const int MostSteps = 4;

    private readonly Dictionary<int, int> raised = [], first = [];
    private readonly Predicate<int> isStated;
    private readonly HashSet<int> hopeless = [];
    private readonly Dictionary<int, List<CircuitDrop>> drops = [];

    /// <summary>The sizes of a circuit.</summary>
    /// <param name="circuit">The circuit, with a size for every conductor that has a length.</param>
    /// <param name="all">What its loads' circuits lose.</param>
    /// <param name="isStated">Whether the size of a conductor is stated, rather than taken.</param>
    public DropSizes(Circuit circuit, ImmutableArray<CircuitDrop> all, Predicate<int> isStated)
    {
        (this.circuit, this.isStated) = (circuit, isStated);
        foreach (var drop in all)
        {
            foreach (var share in drop.Conductors)
            {
                if (!drops.TryGetValue(share.Index, out var list)) drops[share.Index] = list = [];
                list.Add(drop);
            }
        }
        Raise(all.Where(d => d.Margin < 0));
    }

    /// <summary>The circuit with the sizes that were raised; itself where none was.</summary>
    public Circuit Raised => raised.Count == 0 ? circuit : circuit.With(
        [.. circuit.Conductors.Select((c, i) => raised.TryGetValue(i, out int rung) ? c with { Wire = c.Wire with { Size = WireLadder.Of(c.Wire, circuit.System)[rung] } } : c)]);

    /// <summary>Raises sizes further where circuits lose too much even so, since thicker wires let more current flow.</summary>
    /// <param name="better">The circuit with the sizes that were raised.</param>
    /// <param name="all">What its loads' circuits lose.</param>
    /// <returns>Whether any had to be raised.</returns>
    public bool RaiseFurther(Circuit better, ImmutableArray<CircuitDrop> all)
    {
        circuit = better;
        var over = all.Where(d => d.Margin < 0 && !d.Conductors.Any(s => hopeless.Contains(s.Index))).ToArray();
        Raise(over);
        return over.Length > 0;
    }

    /// <summary>The drop that leaves a conductor least; <see langword="null"/> where no load's circuit passes it.</summary>
    public CircuitDrop? Tightest(int conductor) => drops.TryGetValue(conductor, out var list) ? list.MaxBy(d => d.Volts / d.Limit.Volts) : null;

    /// <summary>The smallest size with which all circuits through a conductor keep to their drop.</summary>
    /// <returns><see langword="null"/> where it is not judged, having no length or a given resistance, or where no size does.</returns>
    public WireSize? Least(int conductor)
    {
        var wire = circuit.Conductors[conductor].Wire;
        if (!drops.TryGetValue(conductor, out var list) || !IsJudged(wire) || hopeless.Contains(conductor)) return null;
        var ladder = WireLadder.Of(wire, circuit.System);
        // Where a circuit loses too much, what was not raised stays as it was: the others were raised on that ground.
        int least = Math.Max(raised.GetValueOrDefault(conductor), first.GetValueOrDefault(conductor));
        foreach (var drop in list.Where(d => d.Margin >= 0))
        {
            var share = drop.Conductors.First(s => s.Index == conductor);
            int fits = 0;
            while (fits < ladder.Length && OhmsOf(ladder[fits], wire) * share.Amperes > share.Volts + drop.Margin) fits++;
            least = Math.Max(least, fits);
        }
        return least < ladder.Length ? ladder[least] : null;
    }

    /// <summary>Whether the drop of a wire goes by its size.</summary>
    public static bool IsJudged(Wire wire) => wire is { Size: not null, LengthInMetres: not null, ResistanceInOhms: null };

    // The worst first; of equal ones by name, whichever comes first in the file.
    private void Raise(IEnumerable<CircuitDrop> over)
    {
        foreach (var drop in over.OrderByDescending(d => (float)(d.Volts / d.Limit.Volts)).ThenBy(d => d.Load.Name, StringComparer.Ordinal)) Raise(drop);
    }

    private void Raise(CircuitDrop drop)
    {
        var shares = drop.Conductors.Where(s => !s.IsBeside && IsJudged(circuit.Conductors[s.Index].Wire)).OrderBy(s => circuit.Conductors[s.Index].Id, StringComparer.Ordinal).ToArray();
        Dictionary<int, int> at = shares.ToDictionary(s => s.Index, s => RungOf(circuit.Conductors[s.Index].Wire));
        foreach (var share in shares) first.TryAdd(share.Index, at[share.Index]);
        double over = -drop.Margin;
        foreach (var share in shares)
            if (raised.GetValueOrDefault(share.Index) is var already && already > at[share.Index])
            {
                over -= Saved(share, at[share.Index], already);
                at[share.Index] = already;
            }
        while (over > 0)
        {
            // Equal wires are equal in single precision; the first by name of them is raised.
            var best = shares.Where(s => at[s.Index] + 1 < LadderOf(s).Length && (!isStated(s.Index) || at[s.Index] < first[s.Index] + MostSteps)).MaxBy(s => (float)(Saved(s, at[s.Index], at[s.Index] + 1) / Copper(s, at[s.Index])));
            if (best is null) break;
            over -= Saved(best, at[best.Index], at[best.Index] + 1);
            raised[best.Index] = ++at[best.Index];
        }
        // What is lost elsewhere than in conductors cannot be made good by thicker ones.
        if (over > 0) foreach (var share in shares) hopeless.Add(share.Index);
    }

    private ImmutableArray<WireSize> LadderOf(DropShare share) => WireLadder.Of(circuit.Conductors[share.Index].Wire, circuit.System);

    // The greatest made size that is no thicker; a size thinner than all counts as the thinnest.
    private int RungOf(Wire wire)
    {
        var ladder = WireLadder.Of(wire, circuit.System);
        int rung = ladder.Length - 1;
        while (rung > 0 && ladder[rung].Area > wire.Size!.Value.Area * 1.0001) rung--;
        return rung;
    }

    private double Saved(DropShare share, int from, int to)
    {
        var (wire, ladder) = (circuit.Conductors[share.Index].Wire, LadderOf(share));
        double before = from == RungOf(wire) ? OhmsOf(wire.Size!.Value, wire) : OhmsOf(ladder[from], wire);
        return share.Amperes * (before - OhmsOf(ladder[to], wire));
    }

    private double Copper(DropShare share, int from) => (LadderOf(share)[from + 1].Area - LadderOf(share)[from].Area) * circuit.Conductors[share.Index].Wire.LengthInMetres!.Value;

    private static double OhmsOf(WireSize size, Wire wire) => 
        (CopperResistance.OhmsPerMetre(size) * wire.LengthInMetres!.Value * CopperResistance.FactorAt(wire.TemperatureInCelsius ?? CopperResistance.TableCelsius)) + (wire.JointAtFromInOhms ?? 0) + (wire.JointAtToInOhms ?? 0);
}
