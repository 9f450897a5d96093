using Hotside.Alterations;
using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Checks.Joints;

/// <summary>Row 67: a new wire in the colour that custom has for the other side.</summary>
internal static class ColourCustom
{
    public static readonly DiagnosticKind Kind = new("HS3367", Severity.Note, "Colour that means the other side",
        "{0} is run new in {1} and lies on the {2} side; in ten years somebody takes it for {3}")
    {
        Source = "common practice, no source: plain black is taken for ground, plain red for hot",
    };

    public static IEnumerable<Diagnostic> Of(CheckedAlteration alteration)
    {
        var nodes = Nodes.Of(alteration.After.Circuit, throughLinks: true);
        foreach (var wire in alteration.After.Circuit.Conductors.Where(c => alteration.Alteration.StateOfConductor(c.Id) is ConductorState.RunNew or ConductorState.Renewed && c.Wire.Colour is { Tracer: null }))
        {
            string colour = wire.Wire.Colour!.Value.Base;
            bool isGround = wire.Ends.Any(e => !e.IsFree && nodes.AreOne(e, alteration.After.Circuit.System.ReturnNode));
            bool isHot = alteration.After.Circuit.Sources.Any(s => wire.Ends.Any(e => !e.IsFree && nodes.AreOne(e, s.Feed))) || alteration.After.Loads.Any(l => l.Paths.Any(p => p.Hot.Contains(wire.Id)));
            if (colour == "RD" && isGround) yield return Kind.Of([wire.Id], wire.Id, "red", "ground", "hot") with { Hint = "take black, or sleeve both ends" };
            if (colour == "BK" && isHot && !isGround) yield return Kind.Of([wire.Id], wire.Id, "black", "hot", "ground") with { Hint = "take another colour, or sleeve both ends" };
        }
    }
}
