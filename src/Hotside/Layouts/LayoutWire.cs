using Hotside.Symbols;

namespace Hotside.Layouts;

/// <summary>A line to draw. A moved conductor is two lines with one <paramref name="Conductor"/>.</summary>
internal sealed record LayoutWire(string Id, string Conductor, LayoutEnd From, LayoutEnd To, SeenIn Seen)
{
    /// <summary>Width in modules of the label with its change triangle; 0 = no label.</summary>
    public double LabelWidth { get; init; }

    /// <summary>Height in modules of the label with its change triangle; 0 = no label.</summary>
    public double LabelHeight { get; init; }

    /// <summary>How far the label's baseline lies above its lower edge, in modules.</summary>
    public double LabelFoot { get; init; }

    /// <summary>By how much a label gets wider, in modules, that says where the conductor comes from, or goes to; 0 = it cannot.</summary>
    public (double From, double To) EndWidths { get; init; }

    /// <summary>A lead of a joint or case: as short as may be.</summary>
    public bool Short { get; init; }

    /// <summary>It ends at a chassis sign of its own below its pin, not on the chassis row.</summary>
    public bool HasOwnSign { get; init; }

    /// <summary>The body that its sign stands for; empty where that is the chassis.</summary>
    public string SignOf { get; init; } = "";

    /// <summary>Its label says what its sign stands for, and stands at the sign.</summary>
    public bool NamesSign => SignOf.Length > 0;

    /// <summary>Its label may be left out, and is where its line is short.</summary>
    public bool IfLong { get; init; }

    /// <summary>Is there a label to place?</summary>
    public bool HasLabel => !IfLong && LabelWidth > 0 && LabelHeight > 0;
}
