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
        svg.Append(".hs text{font-family:'").Append(FontFace.Family).Append("','DejaVu Sans Condensed','Liberation Sans',Arial,sans-serif}\n");
        // Few pictures show figures.
        ColourRole[] roles = shapes.UsesLive ? [.. Roles, ColourRole.Live] : Roles;
        foreach (ColourRole role in roles)
            WriteRole(svg, role, options.Theme);
        foreach (StrokeRank rank in Enum.GetValues<StrokeRank>())
            svg.Append(".hs .").Append(SvgShapes.ClassOf(rank)).Append("{stroke-width:").Append(SvgOutput.Units(Pen.WidthOf(rank))).Append("}\n");
        svg.Append(".hs .hs-round{stroke-linecap:round;stroke-linejoin:round}\n");
        foreach ((string name, TextStyle style) in shapes.Styles.OrderBy(s => s.Key, StringComparer.Ordinal))
            WriteText(svg, name, style);
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
        string name = SvgShapes.NameOf(role), colour = theme.Of(role).ToString();
        svg.Append(".hs .").Append(SvgShapes.FillOf(role)).Append("{fill:").Append(colour).Append(";fill:var(--hs-").Append(name).Append(',').Append(colour).Append(")}\n");
        svg.Append(".hs .").Append(SvgShapes.StrokeOf(role)).Append("{stroke:").Append(colour).Append(";stroke:var(--hs-").Append(name).Append(',').Append(colour).Append(")}\n");
    }

    private static void WriteText(StringBuilder svg, string name, TextStyle style)
    {
        svg.Append(".hs .").Append(name).Append("{font-size:").Append(SvgOutput.Units(style.Size)).Append("px;font-weight:").Append(style.Bold ? "700" : "400");
        if (style.Spacing > 0)
            svg.Append(";letter-spacing:").Append(SvgOutput.Units(style.Spacing)).Append("px");
        svg.Append("}\n");
    }

    // A page may ask for the dark colours on the picture's root; the reader's system never decides.
    private static void WriteDark(StringBuilder svg, ColourRole[] roles)
    {
        svg.Append(".hs[data-theme=dark]{");
        svg.AppendJoin(';', roles.Select(r => "--hs-" + SvgShapes.NameOf(r) + ":" + Theme.Dark.Of(r)));
        svg.Append("}\n");
    }
}
