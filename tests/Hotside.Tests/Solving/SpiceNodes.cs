using Hotside.Circuits;

namespace Hotside.Tests.Solving;

/// <summary>The nodes of a circuit for a deck: ends that are bolted together are one, the return is node 0.</summary>
internal sealed class SpiceNodes
{
    private readonly Dictionary<End, End> bolted = [];
    private readonly Dictionary<End, string> names = [];

    public SpiceNodes(Circuit circuit)
    {
        foreach (var part in circuit.Parts)
        {
            foreach (var joint in part.Joints) Bolt(End.At(part.Id, joint.Terminal), joint.On);
            if (part.CaseOn is { } mount) Bolt(EndOf(part, "case"), mount);
        }
        names[Root(circuit.System.ReturnNode)] = "0";
    }

    /// <summary>The name of an end's node.</summary>
    public string this[End end]
    {
        get
        {
            var root = Root(end);
            if (!names.TryGetValue(root, out string? name)) names[root] = name = FormattableString.Invariant($"n{names.Count}");
            return name;
        }
    }

    /// <summary>Where an element of a part ends.</summary>
    public static End EndOf(Part part, string name) => End.At(part.Id, part.Kind.TerminalNamed(name) ?? name);

    private void Bolt(End a, End b) => bolted[Root(a)] = Root(b);

    private End Root(End end)
    {
        while (bolted.TryGetValue(end, out var on) && on != end) end = on;
        return end;
    }
}
