using System.Collections.Immutable;
using Hotside.Drawings.Marks;
using Hotside.Drawings.Plans;
using Hotside.Layouts;
using Hotside.Symbols;

namespace Hotside.Drawings.Pictures;

/// <summary>The lines of a view, and what they are drawn as where several of them meet.</summary>
internal sealed class ShownLines
{
    private readonly SeenIn view;

    public ShownLines(DrawingPlan plan, Layout layout, SeenIn view)
    {
        this.view = view;
        var lines = plan.Lines.ToDictionary(l => l.Line, StringComparer.Ordinal);
        All = [.. plan.Input.Wires.Zip(layout.Wires).Select(p => (Wire: p.First, Line: lines[p.First.Id], Placed: p.Second)).Where(l => l.Line.In(view) is not null)];
        Bars = [.. layout.Rails.Where(r => (r.Seen & view) != 0).Select(r => ImmutableArray.Create((r.X1, r.Y), (r.X2, r.Y))), .. plan.Parts.SelectMany(p => BarsOf(p))];
        // In an overlay the joints are those of the circuit as it will be.
        Slants = JointSlants.Of([.. All.Where(l => view != SeenIn.Both || l.Line.After is not null).Select(l => l.Placed.Points)], Bars);
    }

    /// <summary>Each with what it connects and where it runs.</summary>
    public ImmutableArray<(LayoutWire Wire, PlannedLine Line, PlacedWire Placed)> All { get; }

    /// <summary>Rails and joints that stand for what runs along them.</summary>
    public ImmutableArray<ImmutableArray<(int X, int Y)>> Bars { get; }

    /// <summary>How lines part.</summary>
    public JointSlants Slants { get; }

    /// <summary>What a joint looks like where its wires meet in several places: runs of points.</summary>
    public ImmutableArray<ImmutableArray<(int X, int Y)>> BarsOf(PlannedPart part) =>
        !IsJoint(part) ? [] : JointBars.Of([.. All.Where(w => EndsAt(w.Wire, part) && w.Line.In(view) is { State: not LineStyle.WhereItLay }).Select(w => w.Placed.Points)]);

    /// <summary>Whether a part is a joint, on which wires meet.</summary>
    public static bool IsJoint(PlannedPart part) => part.Role is PlannedRole.Splice or PlannedRole.Stud;

    /// <summary>Whether a line ends at a part.</summary>
    public static bool EndsAt(LayoutWire wire, PlannedPart part) => wire.From.Box == part.Box || wire.To.Box == part.Box;
}
