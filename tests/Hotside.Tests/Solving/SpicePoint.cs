using System.Globalization;
using System.Text;
using Hotside.Circuits;
using Hotside.Solving;
using Hotside.Solving.Laws;

namespace Hotside.Tests.Solving;

/// <summary>
/// A circuit with its relays as found, as a deck for ngspice, an independent program. Every current goes through a source of 0 V; the potentials found are a start that
/// ngspice may leave. What floats or is open is left out.
/// </summary>
internal sealed class SpicePoint
{
    private readonly StringBuilder deck = new();
    private readonly StringBuilder start = new();
    private readonly Dictionary<string, double> volts = [];
    private readonly List<SpiceFigure> figures = [];
    private readonly List<SpiceBranch> branches = [];
    private readonly SpiceNodes nodes;
    private readonly Circuit circuit;
    private readonly Solution solution;
    private readonly SpiceAround around;
    private readonly bool isAtOnce, hasMeters;
    private int laid;

    /// <summary>A circuit as a deck.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="solution">Where its switches and relays stand, what was taken, and the figures to be compared.</param>
    /// <param name="around">Under what it was solved.</param>
    /// <param name="isAtOnce">Whether in the first moment.</param>
    /// <param name="hasMeters">Whether currents are asked for; without, the deck has no sources of 0 V and a third of the unknowns.</param>
    public SpicePoint(Circuit circuit, Solution solution, Surroundings? around = null, bool isAtOnce = false, bool hasMeters = true)
    {
        (this.circuit, this.solution, this.around, this.isAtOnce, this.hasMeters) = (circuit, solution, new SpiceAround(around ?? new(), solution.Setting), isAtOnce, hasMeters);
        nodes = new(circuit);
        volts["0"] = 0;
        foreach (var terminal in solution.Terminals)
            if (terminal.Volts is { } known && volts.TryAdd(nodes[terminal.End], known))
            {
                figures.Add(new($"v({nodes[terminal.End]})", terminal.End.ToString(), known, 0.001 * circuit.System.Volts[0]));
                start.Append(CultureInfo.InvariantCulture, $".nodeset v({nodes[terminal.End]})={known:R}\n");
            }
        foreach (var conductor in solution.Conductors.Where(c => !c.Conductor.From.IsFree && !c.Conductor.To.IsFree)) Add(conductor);
        foreach (var point in solution.Elements) Add(point);
    }

    /// <summary>The circuit without options, start and end.</summary>
    public string Deck => deck.ToString();

    /// <summary>The start.</summary>
    public string Start => start.ToString();

    /// <summary>What is compared.</summary>
    public IReadOnlyList<SpiceFigure> Figures => figures;

    /// <summary>Every branch with its source of 0 V.</summary>
    public IReadOnlyList<SpiceBranch> Branches => branches;

    /// <summary>Currents of islands on nothing, which are not compared.</summary>
    public int Uncompared { get; private set; }

    private void Add(ConductorFigures conductor)
    {
        var wire = conductor.Conductor.Wire;
        double ohms = wire.ResistanceInOhms
            ?? (wire is { Size: { } size, LengthInMetres: { } length } ? SpiceConductors.OhmsOf(size, length, around.ConductorCelsius(conductor.Conductor)) : (double?)null)
            ?? solution.Assumptions.First(a => a.Of == conductor.Conductor.Id && a.What == AssumedFigure.Conductor).Value;
        Lay(conductor.Conductor.Id, nodes[conductor.Conductor.From], nodes[conductor.Conductor.To], conductor.Amperes, _ => [SpiceElements.Resistance(ohms + around.JointOhms(conductor.Conductor))]);
    }

    private void Add(ElementPoint point)
    {
        StatedElement stated = new(circuit, solution, point.Part, point.Element, around);
        var source = circuit.Sources.FirstOrDefault(s => s.Part == point.Part && s.Element == point.Element);
        var (plus, minus) = source is null ? (SpiceNodes.EndOf(point.Part, point.Element.From), SpiceNodes.EndOf(point.Part, point.Element.To))
            : source.PlusIsFeed ? (source.Feed, source.Return) : (source.Return, source.Feed);
        string a = nodes[plus], b = nodes[minus];
        if (point.Element.Type == ElementType.Dropper) Regulate(stated, a, b, point.Amperes);
        else if (solution.Setting.Values.FirstOrDefault(v => v.Part == point.Part.Id) is { } value && point.Element.Type is ElementType.Sender or ElementType.Resistor)
            Lay(stated.Name, a, b, point.Amperes, _ => [SpiceElements.Resistance(value.Quantity.Value)]);
        else if (point.Element.IsConsumer && (stated.Has(ElementTraits.ConstantPower) || (!point.Element.IsInternal && point.Part.Spec.Options.Contains("converter"))))
            Lay(stated.Name, a, b, point.Amperes, u => [('b', SpiceFormulas.ConstantPower(u, point.IsLockedOut ? 0 : stated.Watts, 0.6 * stated.Volts, point.Element.IsOneWay))]);
        else Lay(stated.Name, a, b, point.Amperes, u => SpiceElements.Of(stated, u, source?.Volts, isAtOnce));
    }

    private void Regulate(StatedElement stated, string input, string output, double amperes)
    {
        bool isMean = stated.Has(ElementTraits.Pulsing);
        bool isTurned = stated.Has(ElementTraits.HoldsFirst);
        string ground = stated.Element.Against is { } third ? nodes[SpiceNodes.EndOf(stated.Part, third)] : stated.Element.IsAgainstCase ? nodes[SpiceNodes.EndOf(stated.Part, "case")] : "0";
        if (!volts.ContainsKey(ground)) return;
        // A heated strip works either way round.
        string sign = isTurned ? "-1*" : isMean && volts.TryGetValue(input, out double fed) && fed < volts[ground] ? "-1*" : "";
        double set = stated.Part.Rated(stated.Element.Name, Unit.Volt) ?? stated.Taken(AssumedFigure.Voltage) ?? double.PositiveInfinity;
        double most = isMean ? double.PositiveInfinity : stated.Rated(Unit.Ampere) ?? double.PositiveInfinity;
        if (isTurned) (input, output, amperes) = (output, input, -amperes);
        Lay(stated.Name, input, output, amperes, _ =>
            [('b', sign + SpiceFormulas.Regulator($"({sign}{Across(input, output)})", $"({sign}{Across(output, ground)})", isMean ? 0 : 1.5, isMean ? 0.001 : 0.5, set, isMean ? 0.001 : 0.02, most) + "+1e-9*" + Across(input, output))]);
    }

    // From a over a source of 0 V to an inner node, and from there to b.
    private void Lay(string name, string a, string b, double amperes, Func<string, IEnumerable<(char Device, string Value)>> devices)
    {
        if (a == b) return;
        if (!volts.TryGetValue(a, out double before) || !volts.ContainsKey(b))
        {
            if (Math.Abs(amperes) > 1e-3) Uncompared++;
            return;
        }
        string id = FormattableString.Invariant($"x{laid++}");
        var (inner, count) = (hasMeters ? id + "i" : a, 0);
        foreach (var (device, value) in devices(Across(inner, b)))
            deck.Append(CultureInfo.InvariantCulture, $"{device}{id}{(char)('a' + count++)} {inner} {b} {(device == 'b' ? "i=" : "")}{value}\n");
        if (count == 0)
        {
            figures.Add(new("", name, amperes, 0.001));
            return;
        }
        if (!hasMeters) return;
        deck.Append(CultureInfo.InvariantCulture, $"v{id} {a} {inner} 0\n");
        start.Append(CultureInfo.InvariantCulture, $".nodeset v({inner})={before:R}\n");
        branches.Add(new(a, b, inner, $"i(v{id})"));
        figures.Add(new($"i(v{id})", name, amperes, Math.Max(0.001, 0.002 * Math.Abs(amperes))));
    }

    private static string Across(string a, string b) => b == "0" ? $"v({a})" : a == "0" ? $"(-v({b}))" : $"(v({a})-v({b}))";
}

/// <summary>A figure that is compared.</summary>
/// <param name="Name">Its name in ngspice; empty where nothing conducts, so that it is 0.</param>
/// <param name="What">What it is.</param>
/// <param name="Ours">The figure to be compared.</param>
/// <param name="Tolerance">By how much it may differ.</param>
internal sealed record SpiceFigure(string Name, string What, double Ours, double Tolerance)
{
    public bool IsVoltage => Name.StartsWith('v');
}

/// <summary>A branch of a deck.</summary>
/// <param name="From">The node where it begins, with its source of 0 V.</param>
/// <param name="To">The node where it ends.</param>
/// <param name="Inner">The node behind the source.</param>
/// <param name="Current">The name of its current.</param>
internal sealed record SpiceBranch(string From, string To, string Inner, string Current);
