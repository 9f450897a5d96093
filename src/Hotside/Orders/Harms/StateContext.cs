using Hotside.Alterations;
using Hotside.Circuits;
using Hotside.Sizing.Tables;

namespace Hotside.Orders.Harms;

/// <summary>What a judge of states knows of the alteration, and counts.</summary>
internal sealed class StateContext
{
    private readonly Nodes groundsAfter;
    private readonly Alteration alteration;
    private readonly HashSet<string> willBeFused = new(StringComparer.Ordinal);
    private readonly Dictionary<(WireSize, string?, bool), double?> ampacities = [];

    /// <summary>What is known of an alteration.</summary>
    public StateContext(Alteration alteration)
    {
        this.alteration = alteration;
        groundsAfter = Nodes.Of(alteration.After, throughLinks: true);
        StateGraph graph = new(alteration.After, _ => "");
        Setting rest = new("", [], []);
        bool[] hot = graph.Unfused(rest);
        foreach (var wire in alteration.After.Conductors)
        {
            if (wire.From.IsFree || wire.To.IsFree || alteration.StateOfConductor(wire.Id) == ConductorState.LeftAsIs) continue;
            int a = graph.Nodes.NodeOf(wire.From), b = graph.Nodes.NodeOf(wire.To);
            if (a >= 0 && b >= 0 && !(hot[a] && hot[b])) willBeFused.Add(wire.Id);
        }
    }

    /// <summary>The signs that are right.</summary>
    public RightSigns Signs { get; } = new();

    /// <summary>Whether signs are being noted, and of which circuit: of the before circuit (false) or the after circuit (true); <see langword="null"/>: they are judged.</summary>
    public bool? Notes { get; set; }

    /// <summary>How many points were solved.</summary>
    public int Solved { get; set; }

    /// <summary>Whether a part is another than before.</summary>
    public Func<Part, bool> IsNew { get; set; } = _ => false;

    /// <summary>What a wire may carry by itself in amperes; <see langword="null"/> where its size is not known.</summary>
    public double? AmpacityOf(Wire wire)
    {
        if (wire.Size is not { } size) return null;
        var key = (size, wire.Insulation, wire.IsBraid);
        return ampacities.TryGetValue(key, out double? known) ? known : ampacities[key] = Ampacity.Of(size, Insulation.Of(wire, alteration.After.System), isInEngineSpace: false, bundled: 1)?.Alone;
    }

    /// <summary>Whether a terminal stands on the return after.</summary>
    public bool IsGroundedAfter(End end) => end.Part is { } id && alteration.After.FindPart(id) is not null && groundsAfter.AreOne(end, alteration.After.System.ReturnNode);

    /// <summary>Whether a new or moved wire has a fuse before it after, or a load.</summary>
    public bool WillBeFused(string wire) => willBeFused.Contains(wire);
}
