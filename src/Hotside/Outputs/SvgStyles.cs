using System.Text;
using Hotside.Drawings;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Outputs;

/// <summary>The style sheet of an SVG: each colour once as a plain value, for viewers that know no custom properties, and once as one.</summary>
internal static class SvgStyles
{
    private static readonly ColourRole[] Roles =
        [ColourRole.Paper, ColourRole.Panel, ColourRole.Ink, ColourRole.Quiet, ColourRole.Wire, ColourRole.Out, ColourRole.New, ColourRole.Moved];

    /// <summary>Writes the style element.</summary>
    public static void Write(StringBuilder svg, SvgShapes shapes, SvgOptions options)
    {
        svg.Append("<style>\n");
        if (options.Font == SvgFont.Embedded)
            WriteFaces(svg, shapes);
        // Where a viewer knows no embedded fonts, a narrow one comes nearest to the measured widths.
        svg.Append(".hs text{font-family:'").Append(FontFace.Family).Append("','DejaVu Sans Condensed','Liberation Sans',Arial,sans-serif;stroke:none;").Append(Paint("fill", ColourRole.Ink, options.Theme));
        if (shapes.Usual is { } usual)
            svg.Append(';').Append(Font(usual));
        svg.Append("}\n");
        // Few pictures show figures.
        ColourRole[] roles = shapes.UsesLive ? [.. Roles, ColourRole.Live] : Roles;
        foreach (ColourRole role in roles)
            WriteRole(svg, role, options.Theme);
        foreach (StrokeRank rank in Enum.GetValues<StrokeRank>())
            svg.Append(".hs .").Append(SvgShapes.ClassOf(rank)).Append("{stroke-width:").Append(SvgOutput.Units(Pen.WidthOf(rank))).Append("}\n");
        svg.Append(".hs .").Append(SvgShapes.NoStroke).Append("{stroke:none}\n");
        foreach (var anchor in (Anchor[])[Anchor.Middle, Anchor.End])
            svg.Append(".hs .").Append(SvgTexts.ClassOf(anchor)).Append("{text-anchor:").Append(anchor == Anchor.Middle ? "middle" : "end").Append("}\n");
        svg.Append(".hs .hs-round{stroke-linecap:round;stroke-linejoin:round}\n");
        foreach ((string name, TextStyle style) in shapes.Styles.Where(s => shapes.Usual is not { } common || s.Key != SvgTexts.ClassOf(common)).OrderBy(s => s.Key, StringComparer.Ordinal))
            svg.Append(".hs .").Append(name).Append('{').Append(Font(style)).Append("}\n");
        if (options.Theme != Theme.Dark)
            WriteDark(svg, roles);
        svg.Append("</style>\n");
    }

    private static void WriteFaces(StringBuilder svg, SvgShapes shapes)
    {
        foreach (bool bold in (bool[])[false, true])
        {
            if (!shapes.Styles.Values.Any(s => s.Bold == bold))
                continue;
            byte[] file = (bold ? FontFace.Bold : FontFace.Regular).Woff2(shapes.WideFaces.Contains(bold));
            svg.Append("@font-face{font-family:'").Append(FontFace.Family).Append("';font-weight:").Append(bold ? "700" : "400")
                .Append(";src:url(data:font/woff2;base64,").Append(Convert.ToBase64String(file)).Append(") format('woff2')}\n");
        }
    }

    private static void WriteRole(StringBuilder svg, ColourRole role, Theme theme)
    {
        svg.Append(".hs .").Append(SvgShapes.FillOf(role)).Append('{').Append(Paint("fill", role, theme)).Append("}\n");
        svg.Append(".hs .").Append(SvgShapes.StrokeOf(role)).Append('{').Append(Paint("stroke", role, theme)).Append("}\n");
    }

    private static string Paint(string property, ColourRole role, Theme theme) => $"{property}:{theme.Of(role)};{property}:var(--hs-{SvgShapes.NameOf(role)},{theme.Of(role)})";

    private static string Font(TextStyle style) =>
        $"font-size:{SvgOutput.Units(style.Size)}px;font-weight:{(style.Bold ? "700" : "400")}{(style.Spacing > 0 ? ";letter-spacing:" + SvgOutput.Units(style.Spacing) + "px" : "")}";

    // A page may ask for the dark colours on the picture's root; the reader's system never decides.
    private static void WriteDark(StringBuilder svg, ColourRole[] roles)
    {
        svg.Append(".hs[data-theme=dark]{");
        svg.AppendJoin(';', roles.Select(r => "--hs-" + SvgShapes.NameOf(r) + ":" + Theme.Dark.Of(r)));
        svg.Append("}\n");
    }
}
