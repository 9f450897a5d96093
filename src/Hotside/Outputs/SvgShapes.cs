using System.Text;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Outputs;

/// <summary>Writes shapes, and remembers which classes and characters they used.</summary>
internal sealed class SvgShapes(SvgOptions options)
{
    private readonly Dictionary<string, TextStyle> _styles = [];

    /// <summary>The text styles used, by class name.</summary>
    public IReadOnlyDictionary<string, TextStyle> Styles => _styles;

    /// <summary>Whether a text in regular (false) or bold (true) needs the font's larger file.</summary>
    public HashSet<bool> WideFaces { get; } = [];

    /// <summary>Whether the band of what is live was painted.</summary>
    public bool UsesLive { get; private set; }

    /// <summary>Class of a stroke's width.</summary>
    public static string ClassOf(StrokeRank rank) => "hs-" + rank.ToString().ToLowerInvariant();

    /// <summary>Class of a filling.</summary>
    public static string FillOf(ColourRole role) => "hs-f-" + NameOf(role);

    /// <summary>Class of a stroke's colour.</summary>
    public static string StrokeOf(ColourRole role) => "hs-s-" + NameOf(role);

    /// <summary>Name of a role in classes and custom properties.</summary>
    public static string NameOf(ColourRole role) => role == ColourRole.PartInk ? "ink" : role.ToString().ToLowerInvariant();

    /// <summary>Writes one shape on a line of its own.</summary>
    public void Write(StringBuilder svg, Shape shape)
    {
        switch (shape)
        {
            case TextShape text:
                WriteText(svg, text);
                return;
            case CircleShape circle:
                svg.Append("<circle");
                Dress(svg, circle);
                Attribute(svg, "cx", circle.Centre.X);
                Attribute(svg, "cy", circle.Centre.Y);
                Attribute(svg, "r", circle.Radius);
                break;
            case RectangleShape rectangle:
                svg.Append("<rect");
                Dress(svg, rectangle);
                Attribute(svg, "x", rectangle.Box.Left);
                Attribute(svg, "y", rectangle.Box.Top);
                Attribute(svg, "width", rectangle.Box.Width);
                Attribute(svg, "height", rectangle.Box.Height);
                if (rectangle.Radius > 0)
                    Attribute(svg, "rx", rectangle.Radius);
                break;
            case PolylineShape line:
                svg.Append("<path");
                Dress(svg, line);
                WritePoints(svg, line);
                break;
            case CurveShape curve:
                svg.Append("<path");
                Dress(svg, curve);
                WriteCurve(svg, curve);
                break;
        }

        svg.Append("/>\n");
    }

    private void Dress(StringBuilder svg, Shape shape)
    {
        var classes = new List<string>(4);
        if (shape.Pen is { } pen)
        {
            classes.Add(ClassOf(pen.Rank));
            classes.Add(StrokeOf(pen.Colour));
            if (pen.Round)
                classes.Add("hs-round");
        }

        if (shape.Fill != ColourRole.None)
            classes.Add(FillOf(shape.Fill));
        UsesLive |= shape.Fill == ColourRole.Live;
        svg.Append(" class=\"").AppendJoin(' ', classes).Append('"');
        if (shape.Pen is { Dash.IsSolid: false, Dash: var dash })
        {
            svg.Append(" stroke-dasharray=\"").Append(SvgOutput.Units(dash.On)).Append(' ').Append(SvgOutput.Units(dash.Off));
            if (dash.On2 > 0)
                svg.Append(' ').Append(SvgOutput.Units(dash.On2)).Append(' ').Append(SvgOutput.Units(dash.Off2));
            svg.Append('"');
        }
    }

    private static void Attribute(StringBuilder svg, string name, double value) => svg.Append(' ').Append(name).Append("=\"").Append(SvgOutput.Units(value)).Append('"');

    private static void WritePoints(StringBuilder svg, PolylineShape line)
    {
        svg.Append(" d=\"");
        for (int i = 0; i < line.Points.Length; i++)
            Step(svg, i == 0 ? 'M' : 'L', line.Points[i]);
        svg.Append(line.Closed ? "Z\"" : "\"");
    }

    private static void WriteCurve(StringBuilder svg, CurveShape curve)
    {
        svg.Append(" d=\"");
        Step(svg, 'M', curve.Start);
        foreach (CurveStep step in curve.Steps)
        {
            if (step.First is { } first && step.Second is { } second)
            {
                Step(svg, 'C', first);
                Step(svg, ' ', second);
                Step(svg, ' ', step.End);
            }
            else if (step.Radius > 0)
            {
                string radius = SvgOutput.Units(step.Radius);
                svg.Append('A').Append(radius).Append(' ').Append(radius).Append(" 0 0 ").Append(step.Clockwise ? '1' : '0');
                Step(svg, ' ', step.End);
            }
            else
                Step(svg, 'L', step.End);
        }

        svg.Append(curve.Closed ? "Z\"" : "\"");
    }

    private static void Step(StringBuilder svg, char letter, Point point) => svg.Append(letter).Append(SvgOutput.Units(point.X)).Append(' ').Append(SvgOutput.Units(point.Y));

    private void WriteText(StringBuilder svg, TextShape text)
    {
        if (text.Text.Length == 0)
            return;
        // Two letterings may share a style's name but not its size, so the class bears the size.
        string name = "hs-" + text.Style.Name + "-" + SvgOutput.Units(text.Style.CapHeight).Replace('.', '_');
        _styles.TryAdd(name, text.Style);
        if (!FontFace.IsNarrow(text.Text))
            WideFaces.Add(text.Style.Bold);
        bool whole = text.Whole is not null;
        if (whole)
            svg.Append("<g><title>").Append(SvgText.Content(text.Whole!)).Append("</title>");
        svg.Append("<text class=\"").Append(name).Append(' ').Append(FillOf(text.Colour)).Append('"');
        Attribute(svg, "x", text.Place.X);
        Attribute(svg, "y", text.Place.Y);
        if (text.Anchor != Anchor.Start)
            svg.Append(" text-anchor=\"").Append(text.Anchor == Anchor.Middle ? "middle" : "end").Append('"');
        if (options.Font == SvgFont.Family)
        {
            Attribute(svg, "textLength", text.Width);
            svg.Append(" lengthAdjust=\"spacingAndGlyphs\"");
        }

        svg.Append('>').Append(SvgText.Content(text.Text)).Append(whole ? "</text></g>\n" : "</text>\n");
    }
}
