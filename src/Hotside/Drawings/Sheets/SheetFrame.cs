using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Drawings.Sheets;

/// <summary>
/// Frame, reference border, zones and centring marks after ISO 5457 (from memory): frame 20 mm from the left edge and 10 mm from the others,
/// border 5 mm outside it, fields of 50 mm counted from the sheet's axes, letters without I and O.
/// </summary>
internal sealed record SheetFrame(SheetSize Size)
{
    private const double Field = 200, Border = 20, Letters = 20;
    private const string Rows = "ABCDEFGHJKLMNPQRSTUVWXYZ";

    /// <summary>The frame itself.</summary>
    public Box Frame => new(80, 40, Size.Width - 40, Size.Height - 40);

    /// <summary>Where things may be drawn: the frame less 5 mm.</summary>
    public Box Inside => new(Frame.Left + 20, Frame.Top + 20, Frame.Right - 20, Frame.Bottom);

    private double MiddleX => Size.Width / 2;

    private double MiddleY => Size.Height / 2;

    /// <summary>The zone of a point: letter of the row, number of the column.</summary>
    public string ZoneAt(double x, double y) => RowName(Index(Edges(Frame.Top, Frame.Bottom, MiddleY), y)) + Numbers.Whole(Index(Edges(Frame.Left, Frame.Right, MiddleX), x) + 1);

    /// <summary>A zone as wide as any of a paper, lying or standing.</summary>
    public static string WidestZone(SheetSize size) => new[] { size, size.Upright }.Select(s => new SheetFrame(s)).Select(f => Widest(f.ZoneAt(f.Frame.Right, f.Frame.Bottom))).MaxBy(WidthOf)!;

    // As many letters and figures as the last zone has, the widest of them.
    private static string Widest(string last)
    {
        string letters = last.TrimEnd([.. "0123456789"]), rows = letters.Length > 1 ? Rows : Rows[..(Rows.IndexOf(letters[0], StringComparison.Ordinal) + 1)];
        return new string(rows.MaxBy(c => WidthOf(c.ToString())), letters.Length) + new string('8', last.Length - letters.Length);
    }

    private static double WidthOf(string zone) => TextMeasure.Width(zone, Lettering.Normal.SmallBold);

    /// <summary>The shapes.</summary>
    public ImmutableArray<Shape> Shapes(Lettering lettering)
    {
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        Box frame = Frame, border = new(frame.Left - Border, frame.Top - Border, frame.Right + Border, frame.Bottom + Border);
        Pen thin = new(StrokeRank.Thin, ColourRole.Ink), wide = new(StrokeRank.Rail, ColourRole.Ink);
        shapes.Add(new RectangleShape(border, 0, thin, ColourRole.None));
        Zones(Edges(frame.Left, frame.Right, MiddleX), (a, b, text) =>
        {
            foreach (double y in (double[])[border.Top, frame.Bottom])
                Cell(shapes, thin, lettering, text, new(a, y, b, y + Letters), a > frame.Left && a != MiddleX);
        }, i => Numbers.Whole(i + 1));
        Zones(Edges(frame.Top, frame.Bottom, MiddleY), (a, b, text) =>
        {
            foreach (double x in (double[])[border.Left, frame.Right])
                Cell(shapes, thin, lettering, text, new(x, a, x + Letters, b), a > frame.Top && a != MiddleY);
        }, RowName);
        shapes.Add(new RectangleShape(frame, 0, wide, ColourRole.None));
        shapes.Add(Shape.Line(wide, MiddleX, border.Top, MiddleX, frame.Top));
        shapes.Add(Shape.Line(wide, MiddleX, frame.Bottom, MiddleX, border.Bottom));
        shapes.Add(Shape.Line(wide, border.Left, MiddleY, frame.Left, MiddleY));
        shapes.Add(Shape.Line(wide, frame.Right, MiddleY, border.Right, MiddleY));
        return shapes.ToImmutable();
    }

    // Past the last letter each is doubled: AA, BB.
    private static string RowName(int row) => new(Rows[row % Rows.Length], 1 + (row / Rows.Length));

    private static void Zones(ImmutableArray<double> edges, Action<double, double, string> cell, Func<int, string> name)
    {
        for (int i = 0; i + 1 < edges.Length; i++)
            cell(edges[i], edges[i + 1], name(i));
    }

    // A field's edge is drawn at its lower end only, and not on an axis, where the centring mark is.
    private static void Cell(ImmutableArray<Shape>.Builder shapes, Pen thin, Lettering lettering, string text, Box cell, bool edge)
    {
        bool across = cell.Height == Letters && cell.Width != Letters;
        if (edge)
            shapes.Add(across ? Shape.Line(thin, cell.Left, cell.Top, cell.Left, cell.Bottom) : Shape.Line(thin, cell.Left, cell.Top, cell.Right, cell.Top));
        TextStyle style = lettering.Body with { CapHeight = 10 };
        shapes.Add(TextShape.Of(text, style, (cell.Left + cell.Right) / 2, ((cell.Top + cell.Bottom) / 2) + (style.CapHeight / 2), Anchor.Middle, ColourRole.Quiet));
    }

    // From the axis outwards; a remainder too narrow for its letter joins the field beside it.
    private static ImmutableArray<double> Edges(double from, double to, double middle)
    {
        int before = (int)Math.Floor((middle - from - 30) / Field), after = (int)Math.Floor((to - middle - 30) / Field);
        return [from, .. Enumerable.Range(-before, before + after + 1).Select(i => middle + (i * Field)), to];
    }

    private static int Index(ImmutableArray<double> edges, double value)
    {
        int index = 0;
        while (index + 2 < edges.Length && value >= edges[index + 1])
            index++;
        return index;
    }
}
