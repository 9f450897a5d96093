using System.Text;
using Hotside.Circuits;
using Hotside.Drawings;

namespace Hotside.Outputs;

/// <summary>Writes a scene as SVG: one file without script and without anything from outside, the same bytes every time.</summary>
internal static class SvgOutput
{
    private const double UnitsPerMillimetre = 4;

    /// <summary>Writes the scene.</summary>
    public static string Write(Scene scene, SvgOptions? options = null)
    {
        options ??= SvgOptions.Default;
        var ids = new SvgIds(scene.Id);
        var shapes = new SvgShapes(options, SvgTexts.Usual(scene));
        var body = new StringBuilder();
        foreach (Layer layer in Enum.GetValues<Layer>())
            WriteLayer(body, scene, layer, ids, shapes);

        var svg = new StringBuilder(body.Length + 50_000);
        WriteHead(svg, scene, options, ids);
        SvgStyles.Write(svg, shapes, options);
        svg.Append("<rect class=\"hs-f-paper\" width=\"").Append(Units(scene.Width)).Append("\" height=\"").Append(Units(scene.Height)).Append("\"/>\n");
        return svg.Append(body).Append("</svg>\n").ToString();
    }

    /// <summary>A length with at most two decimals.</summary>
    internal static string Units(double value) => Numbers.Plain(value, 2);

    private static void WriteHead(StringBuilder svg, Scene scene, SvgOptions options, SvgIds ids)
    {
        string title = ids.Of("title"), description = ids.Of("desc");
        svg.Append("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"hs\" fill=\"none\" width=\"").Append(Units(scene.Width / UnitsPerMillimetre))
            .Append("mm\" height=\"").Append(Units(scene.Height / UnitsPerMillimetre))
            .Append("mm\" viewBox=\"0 0 ").Append(Units(scene.Width)).Append(' ').Append(Units(scene.Height))
            .Append("\" role=\"img\" aria-labelledby=\"").Append(title).Append(' ').Append(description)
            .Append("\" lang=\"").Append(SvgText.Attribute(scene.Language)).Append('"');
        if (options.Theme == Theme.Dark)
            svg.Append(" data-theme=\"dark\"");
        svg.Append(">\n<title id=\"").Append(title).Append("\">").Append(SvgText.Content(scene.Title))
            .Append("</title>\n<desc id=\"").Append(description).Append("\">").Append(SvgText.Content(scene.Description)).Append("</desc>\n");
    }

    private static void WriteLayer(StringBuilder body, Scene scene, Layer layer, SvgIds ids, SvgShapes shapes)
    {
        List<SceneGroup> groups = [.. scene.In(layer)];
        if (groups.Count == 0)
            return;
        body.Append("<g id=\"").Append(ids.Of("layer-" + NameOf(layer))).Append("\">\n");
        foreach (SceneGroup group in Joined(groups))
            WriteGroup(body, group, ids, shapes, isStroked: false);
        body.Append("</g>\n");
    }

    // Dots and ground signs in a row, of which nothing is told, are one group.
    private static List<SceneGroup> Joined(List<SceneGroup> groups)
    {
        List<SceneGroup> joined = [];
        foreach (var group in groups)
            if (joined.Count > 0 && joined[^1] is var last && IsNameless(last) && IsNameless(group) && last.AriaHidden == group.AriaHidden && last.Classes.SequenceEqual(group.Classes))
                joined[^1] = last with { Shapes = [.. last.Shapes, .. group.Shapes] };
            else joined.Add(group);
        return joined;
    }

    private static bool IsNameless(SceneGroup group) => group is { Id: null, Title: null, Data.IsEmpty: true, Children.IsEmpty: true };

    private static string NameOf(Layer layer) => layer switch
    {
        Layer.Frame => "frame",
        Layer.Boxes => "boxes",
        Layer.Wires => "wires",
        Layer.Parts => "parts",
        Layer.Dots => "dots",
        Layer.Marks => "marks",
        _ => "notes",
    };

    private static void WriteGroup(StringBuilder body, SceneGroup group, SvgIds ids, SvgShapes shapes, bool isStroked)
    {
        string stroke = SvgShapes.StrokeOfMost(group.Shapes);
        isStroked |= stroke.Length > 0;
        body.Append("<g");
        if (group.Id is { } id)
            body.Append(" id=\"").Append(ids.Of(id)).Append('"');
        // What a data attribute says needs no class.
        string[] classes = [.. group.Classes.Where(c => group.Data.All(d => d.Value != c)).Select(c => "hs-" + SvgIds.Valid(c)), .. stroke.Length > 0 ? [stroke] : Array.Empty<string>()];
        if (classes.Length > 0)
            body.Append(" class=\"").AppendJoin(' ', classes).Append('"');
        foreach ((string name, string value) in group.Data)
            body.Append(" data-").Append(SvgIds.Valid(name)).Append("=\"").Append(SvgText.Attribute(value)).Append('"');
        if (group.AriaHidden)
            body.Append(" aria-hidden=\"true\"");
        body.Append(">\n");
        if (group.Title is { } title)
            body.Append("<title>").Append(SvgText.Content(title)).Append("</title>\n");
        shapes.Write(body, group.Shapes, stroke, isStroked);
        foreach (SceneGroup child in group.Children)
            WriteGroup(body, child, ids, shapes, isStroked);
        body.Append("</g>\n");
    }
}
