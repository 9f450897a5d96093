using System.Collections.Immutable;
using System.Text;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Outputs;

/// <summary>Writes shapes, and remembers which classes and characters they used.</summary>
/// <param name="options">How texts are written.</param>
/// <param name="usual">The style of texts that bear no class.</param>
internal sealed class SvgShapes(SvgOptions options, TextStyle? usual)
{
    /// <summary>Class of a shape without a stroke inside a group that has one.</summary>
    public const string NoStroke = "hs-n";

    private readonly Dictionary<string, TextStyle> _styles = [];

    /// <summary>The text styles used, by class name.</summary>
    public IReadOnlyDictionary<string, TextStyle> Styles => _styles;

    /// <summary>The style of texts that bear no class; <see langword="null"/> when there are no texts.</summary>
    public TextStyle? Usual => usual;

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

    /// <summary>The classes of the stroke that most of some shapes have, which their group bears for them; empty when none is stroked.</summary>
    public static string StrokeOfMost(ImmutableArray<Shape> shapes) =>
        shapes.Select(s => s.Pen).OfType<Pen>().Select(StrokeClasses).GroupBy(c => c).OrderByDescending(g => g.Count()).FirstOrDefault()?.Key ?? "";

    /// <summary>Writes the shapes of a group, each on a line of its own; plain lines of one stroke that follow each other are one path.</summary>
    /// <param name="svg">Where to.</param>
    /// <param name="shapes">The shapes.</param>
    /// <param name="stroke">The classes that the group bears for them.</param>
    /// <param name="isStroked">Whether it, or a group around it, bears some.</param>
    public void Write(StringBuilder svg, ImmutableArray<Shape> shapes, string stroke, bool isStroked)
    {
        for (int i = 0; i < shapes.Length; i++)
        {
            int last = i;
            while (last + 1 < shapes.Length && AreOnePath(shapes[i], shapes[last + 1])) last++;
            if (last > i) WritePath(svg, shapes.AsSpan(i, last + 1 - i), stroke, isStroked);
            else Write(svg, shapes[i], stroke, isStroked);
            i = last;
        }
    }

    private static bool AreOnePath(Shape a, Shape b) => IsPlainLine(a) && IsPlainLine(b) && StrokeClasses(a.Pen!) == StrokeClasses(b.Pen!) && a.Pen!.Round == b.Pen!.Round;

    private static bool IsPlainLine(Shape shape) => shape is (PolylineShape or CurveShape) and { Pen.Dash.IsSolid: true, Fill: ColourRole.None };

    private void Write(StringBuilder svg, Shape shape, string stroke, bool isStroked)
    {
        switch (shape)
        {
            case TextShape text:
                WriteText(svg, text);
                return;
            case CircleShape circle:
                svg.Append("<circle");
                Dress(svg, circle, stroke, isStroked);
                Attribute(svg, "cx", Math.Round(circle.Centre.X, 1));
                Attribute(svg, "cy", Math.Round(circle.Centre.Y, 1));
                Attribute(svg, "r", circle.Radius);
                break;
            case RectangleShape rectangle:
                svg.Append("<rect");
                Dress(svg, rectangle, stroke, isStroked);
                Attribute(svg, "x", Math.Round(rectangle.Box.Left, 1));
                Attribute(svg, "y", Math.Round(rectangle.Box.Top, 1));
                Attribute(svg, "width", rectangle.Box.Width);
                Attribute(svg, "height", rectangle.Box.Height);
                if (rectangle.Radius > 0)
                    Attribute(svg, "rx", rectangle.Radius);
                break;
            default:
                WritePath(svg, [shape], stroke, isStroked);
                return;
        }

        svg.Append("/>\n");
    }

    private void WritePath(StringBuilder svg, ReadOnlySpan<Shape> lines, string stroke, bool isStroked)
    {
        svg.Append("<path");
        Dress(svg, lines[0], stroke, isStroked);
        svg.Append(" d=\"");
        SvgPath path = new(svg);
        foreach (var line in lines) path.Add(line);
        svg.Append("\"/>\n");
    }

    private static string StrokeClasses(Pen pen) => ClassOf(pen.Rank) + " " + StrokeOf(pen.Colour);

    private void Dress(StringBuilder svg, Shape shape, string stroke, bool isStroked)
    {
        var classes = new List<string>(4);
        if (shape.Pen is { } pen)
        {
            if (StrokeClasses(pen) != stroke)
                classes.Add(StrokeClasses(pen));
            if (pen.Round)
                classes.Add("hs-round");
        }
        else if (isStroked)
            classes.Add(NoStroke);

        if (shape.Fill != ColourRole.None)
            classes.Add(FillOf(shape.Fill));
        UsesLive |= shape.Fill == ColourRole.Live;
        if (classes.Count > 0)
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

    private void WriteText(StringBuilder svg, TextShape text)
    {
        if (text.Text.Length == 0)
            return;
        string name = SvgTexts.ClassOf(text.Style);
        _styles.TryAdd(name, text.Style);
        if (!FontFace.IsNarrow(text.Text))
            WideFaces.Add(text.Style.Bold);
        bool whole = text.Whole is not null;
        if (whole)
            svg.Append("<g><title>").Append(SvgText.Content(text.Whole!)).Append("</title>");
        var classes = new List<string>(3);
        if (usual is null || SvgTexts.ClassOf(usual) != name)
            classes.Add(name);
        if (NameOf(text.Colour) != "ink")
            classes.Add(FillOf(text.Colour));
        if (text.Anchor != Anchor.Start)
            classes.Add(SvgTexts.ClassOf(text.Anchor));
        svg.Append("<text");
        if (classes.Count > 0)
            svg.Append(" class=\"").AppendJoin(' ', classes).Append('"');
        Attribute(svg, "x", Math.Round(text.Place.X, 1));
        Attribute(svg, "y", Math.Round(text.Place.Y, 1));
        if (options.Font == SvgFont.Family)
        {
            Attribute(svg, "textLength", text.Width);
            svg.Append(" lengthAdjust=\"spacingAndGlyphs\"");
        }

        svg.Append('>').Append(SvgText.Content(text.Text)).Append(whole ? "</text></g>\n" : "</text>\n");
    }
}
