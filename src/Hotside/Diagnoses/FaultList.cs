using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Studies;

namespace Hotside.Diagnoses;

/// <summary>The single faults that a piece of a circuit may have, by the list of modes.</summary>
internal sealed class FaultList
{
    private readonly Bench bench;
    private readonly FaultModes modes;
    private readonly Func<string, double> factorOf;
    private readonly ImmutableArray<Fault>.Builder faults = ImmutableArray.CreateBuilder<Fault>();

    private FaultList(Bench bench, Func<string, double> factorOf, FaultModes modes) => (this.bench, this.factorOf, this.modes) = (bench, factorOf, modes);

    /// <summary>No fault, and none that the list does not hold.</summary>
    public static ImmutableArray<Fault> None => NoneOf(FaultModes.Standard);

    private static ImmutableArray<Fault> NoneOf(FaultModes modes) => [.. modes.On("nothing").Select(m => new Fault(m, m.Says, [], m.Weight))];

    private Circuit Circuit => bench.Circuit;

    /// <summary>The faults: conductors, then elements, in the order of the circuit; nets, crossed wires, and at the end that nothing is wrong and that something else is.</summary>
    /// <param name="bench">The piece.</param>
    /// <param name="factorOf">By what the faults of a part or conductor are more frequent than the list says.</param>
    /// <param name="modes">The list of modes; left out: the library's.</param>
    public static ImmutableArray<Fault> Of(Bench bench, Func<string, double> factorOf, FaultModes? modes = null)
    {
        FaultList list = new(bench, factorOf, modes ?? FaultModes.Standard);
        for (int i = 0; i < bench.Circuit.Conductors.Length; i++) list.AddConductor(i);
        foreach (var element in bench.Model.Elements) list.AddElement(element);
        for (int net = 0; net < bench.NetNodes.Length; net++) list.AddNet(net);
        list.AddCrossed();
        list.faults.AddRange(NoneOf(list.modes));
        return list.faults.ToImmutable();
    }

    private void AddConductor(int index)
    {
        var conductor = Circuit.Conductors[index];
        if (conductor.From.IsFree || conductor.To.IsFree) return;
        bool isJoint = LooseJoints.IsJoint(conductor), isGround = IsOnReturn(conductor.From) && IsOnReturn(conductor.To);
        string name = !isJoint ? conductor.Id : LooseJoints.IsMount(conductor, Circuit) ? $"the mount of {conductor.From.Part} on {Circuit.TextOf(conductor.To)}" : $"the joint {conductor.Id}";
        Add(isGround ? "ground" : isJoint ? "joint" : "wire", name, LooseJoints.ItemOf(conductor), index, 1, 1);
    }

    private bool IsOnReturn(End end) => bench.Model.Nodes.NodeOf(end) is var node && (node < 0 || bench.NetOf[node] < 0);

    private void AddElement(Solving.ModelElement of)
    {
        var (part, element) = (of.Part, of.Element);
        if (of.EdgeCount == 0 || of.Regulator >= 0) return;
        int contacts = Math.Max(1, part.Kind.Elements.Count(e => e is { Type: ElementType.Contact }));
        string contact = contacts == 1 ? $"the contact of {part.Id}" : $"the contact {element.From}-{element.To} of {part.Id}";
        string load = LoadStudy.NameOf(part, element);
        (string on, string name, double share) = element.Type switch
        {
            ElementType.Contact when part.Kind.Letter == "X" => ("way", $"way {element.From}-{element.To} of {part.Id}", 1),
            ElementType.Contact => (IsMovedByHand(part, element) ? "hand contact" : "relay contact", contact, 1.0 / contacts),
            ElementType.Link or ElementType.Shunt => ("way", $"{part.Id} inside", 1),
            ElementType.Fuse or ElementType.Breaker => ("fuse", FuseWay.NameOf(part, element), 1),
            ElementType.Lamp => ("lamp", load, 1),
            ElementType.Motor or ElementType.Horn or ElementType.Gauge or ElementType.Heater => ("motor", load, 1),
            ElementType.Coil => ("coil", $"the {element.Name} of {part.Id}", 1),
            ElementType.Electronics => ("electronics", part.Id, 1),
            ElementType.Resistor => ("resistor", part.Id, 1),
            ElementType.Sender => ("sender", part.Id, 1),
            ElementType.Diode => ("diode", part.Id, 1),
            ElementType.Source when element.When is null => ("battery", part.Id, 1.0),
            _ => ("", "", 0),
        };
        if (on.Length == 0) return;
        Add(on, name, part.Id, of.FirstEdge, of.EdgeCount, share);
        if (element.Directs && on is "lamp" or "diode" or "motor") Add("one-way", name, part.Id, of.FirstEdge, of.EdgeCount, 1);
    }

    private bool IsMovedByHand(Part part, Element element) =>
        element.When is { } when && when.Tests.Any(t => Circuit.VariableOf(part, t.Actuator).Actuator is { Drive: not ActuatorDrive.Driven, Cycles: false });

    private void AddNet(int net)
    {
        string[] wires = [.. Circuit.Conductors.Where(c => !LooseJoints.IsJoint(c) && c.Ends.Any(e => !e.IsFree && IsIn(e, net))).Select(c => c.Id)];
        string[] ends = [.. bench.Points.Where(p => bench.NetOf[p.Node] == net && p.End.Part is not null).Select(p => p.TextIn(Circuit))];
        string[] named = wires.Length > 0 ? wires : ends;
        if (named.Length == 0) return;
        string ground = Circuit.System.Return is { } node ? "return, " + Circuit.TextOf(node) : "chassis";
        foreach (var mode in modes.On("net"))
        {
            string text = string.Format(System.Globalization.CultureInfo.InvariantCulture, mode.Says, Listed(named), ground);
            faults.Add(new(mode, text, [.. wires, .. bench.Points.Where(p => bench.NetOf[p.Node] == net).Select(p => p.End.Part).OfType<string>().Distinct()], mode.Weight * named.Max(factorOf))
            {
                FirstEdge = bench.BridgeOf(net), Piece = Listed(named),
            });
        }
    }

    private bool IsIn(End end, int net) => bench.Model.Nodes.NodeOf(end) is >= 0 and var node && bench.NetOf[node] == net;

    // A person lists a few; the rest hangs on them.
    private static string Listed(string[] names) => names.Length <= 4 ? string.Join(" or ", names) : string.Join(", ", names.Take(3)) + " or what hangs on them";

    private void AddCrossed()
    {
        foreach (var part in Circuit.Parts.Where(p => p.Kind.Terminals.Length > 1 && !IsSymmetric(p)))
        {
            var wires = Circuit.Conductors.Select((c, i) => (Conductor: c, Index: i)).Where(w => !LooseJoints.IsJoint(w.Conductor))
                .SelectMany(w => w.Conductor.Ends.Where(e => e.Part == part.Id).Select(e => (w.Conductor, w.Index, End: e))).ToArray();
            var pairs = wires.SelectMany((a, i) => wires.Skip(i + 1).Where(b => b.End != a.End && b.Conductor != a.Conductor).Select(b => (A: a, B: b))).ToArray();
            foreach (var (a, b) in pairs)
                foreach (var mode in modes.On("pair"))
                {
                    var crossed = Circuit.Conductors.SetItem(a.Index, Moved(a.Conductor, a.End, b.End)).SetItem(b.Index, Moved(b.Conductor, b.End, a.End));
                    if (bench.With(crossed) is not { } solver) continue;
                    double factor = Math.Max(factorOf(a.Conductor.Id), factorOf(b.Conductor.Id));
                    // A wire with both ends on the part is crossed in two ways.
                    string at = pairs.Count(p => p.A.Conductor == a.Conductor && p.B.Conductor == b.Conductor) > 1 ? $"{Circuit.TextOf(a.End)} and {Circuit.TextOf(b.End)}" : part.Id;
                    faults.Add(new(mode, Said(mode, $"{a.Conductor.Id} and {b.Conductor.Id} at {at}"), [a.Conductor.Id, b.Conductor.Id, part.Id], mode.Weight * factor / pairs.Length) { Crossed = solver, Piece = $"{a.Conductor.Id} and {b.Conductor.Id}" });
                }
        }
    }

    private static Conductor Moved(Conductor conductor, End from, End to) => conductor.From == from ? conductor with { From = to } : conductor with { To = to };

    // What has two ends and minds neither which is which.
    private static bool IsSymmetric(Part part) =>
        part.Kind is { Terminals.Length: 2, Elements: [{ IsSource: false, Directs: false, IsOneWay: false }] } || part.Kind.Elements.IsEmpty;

    private void Add(string on, string name, string item, int edge, int count, double share)
    {
        foreach (var mode in modes.On(on))
            faults.Add(new(mode, Said(mode, name), [item], mode.Weight * share * factorOf(item)) { Piece = name, FirstEdge = edge, EdgeCount = count });
    }

    private static string Said(FaultMode mode, string name) => string.Format(System.Globalization.CultureInfo.InvariantCulture, mode.Says, name);
}
