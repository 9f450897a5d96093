using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Symbols;

/// <summary>A symbol while it is drawn. Everything is given in modules from the box's top left corner.</summary>
internal sealed class SymbolSketch(int width, int height, Lettering lettering)
{
    private const double M = Symbol.Module;
    private readonly List<Shape> _shapes = [];
    private readonly List<SymbolPin> _pins = [];

    /// <summary>Width of the box in modules.</summary>
    public int Width { get; } = width;

    /// <summary>Height of the box in modules.</summary>
    public int Height { get; } = height;

    /// <summary>Lettering.</summary>
    public Lettering Lettering { get; } = lettering;

    /// <summary>A straight line.</summary>
    public void Line(Pen pen, double x1, double y1, double x2, double y2) => _shapes.Add(Shape.Line(pen, x1 * M, y1 * M, x2 * M, y2 * M));

    /// <summary>A line through points.</summary>
    public void Path(Pen pen, params (double X, double Y)[] points) =>
        _shapes.Add(new PolylineShape([.. points.Select(p => new Point(p.X * M, p.Y * M))], false, pen, ColourRole.None));

    /// <summary>A closed outline.</summary>
    public void Polygon(Pen? pen, ColourRole fill, params (double X, double Y)[] points) =>
        _shapes.Add(new PolylineShape([.. points.Select(p => new Point(p.X * M, p.Y * M))], true, pen, fill));

    /// <summary>A filled figure, such as the head of an arrow.</summary>
    public void Filled(params (double X, double Y)[] points) => Polygon(null, ColourRole.PartInk, points);

    /// <summary>A circle with paper inside.</summary>
    public void Circle(double x, double y, double radius) => _shapes.Add(new CircleShape((x * M, y * M), radius * M, Pen.Medium, ColourRole.Paper));

    /// <summary>A filled dot where lines join.</summary>
    public void Dot(double x, double y, double radius = 0.3) => _shapes.Add(new CircleShape((x * M, y * M), radius * M, null, ColourRole.PartInk));

    /// <summary>A rectangle with paper inside.</summary>
    public void Rectangle(double x, double y, double width, double height, double radius = 0, Pen? pen = null) =>
        _shapes.Add(new RectangleShape(new(x * M, y * M, (x + width) * M, (y + height) * M), radius * M, pen ?? Pen.Medium, ColourRole.Paper));

    /// <summary>The outline of a part with several things inside, tinted.</summary>
    public void Enclosure(double x, double y, double width, double height) =>
        _shapes.Add(new RectangleShape(new(x * M, y * M, (x + width) * M, (y + height) * M), 0.4 * M, Pen.Enclosure, ColourRole.Panel));

    /// <summary>A curve, its steps in modules too.</summary>
    public void Curve(Pen pen, (double X, double Y) start, params CurveStep[] steps) => _shapes.Add(new CurveShape(
        new(start.X * M, start.Y * M),
        [.. steps.Select(s => new CurveStep(Scaled(s.End), s.Radius * M, s.Clockwise, s.First is { } a ? Scaled(a) : null, s.Second is { } b ? Scaled(b) : null))],
        false,
        pen,
        ColourRole.None));

    /// <summary>A letter or value inside the symbol, in the colour of the part.</summary>
    public void Letter(string text, double x, double y, TextStyle style, Anchor anchor = Anchor.Middle, double width = double.PositiveInfinity) =>
        _shapes.Add(TextShape.Of(text, style, x * M, y * M, anchor, ColourRole.PartInk, width * M));

    /// <summary>A terminal's mark.</summary>
    public void Mark(string text, double x, double y, Anchor anchor = Anchor.Start, double width = double.PositiveInfinity) =>
        _shapes.Add(TextShape.Of(text, Lettering.Small, x * M, y * M, anchor, ColourRole.Ink, width * M));

    /// <summary>The pin of a terminal, on the edge of the box.</summary>
    public void Pin(SymbolTerminal? terminal, int x, int y, SymbolSide side)
    {
        if (terminal is not null)
            _pins.Add(new(terminal.Name, x, y, side));
    }

    /// <summary>A terminal on an enclosure's edge: pin, ring, and its mark inside, right of the lead or left of it, no wider than its room and never past the edge.</summary>
    public void Stud(SymbolTerminal? terminal, int x, int y, SymbolSide side, bool markLeft = false, double room = double.PositiveInfinity)
    {
        if (terminal is null)
            return;
        Pin(terminal, x, y, side);
        _shapes.Add(new CircleShape((x * M, y * M), 2.4, Pen.Medium with { Rank = StrokeRank.Thin }, ColourRole.Paper));
        double cap = Lettering.Small.CapHeight / M;
        double baseline = side switch { SymbolSide.Top => y + 0.55 + cap, SymbolSide.Bottom => y - 0.55, _ => y - 0.35 };
        double beside = side switch { SymbolSide.Left => 0.55, SymbolSide.Right => -0.55, _ => markLeft ? -0.55 : 0.55 };
        double toEdge = (beside < 0 ? x : Width - x) - 0.75;
        Mark(terminal.Label, x + beside, baseline, beside < 0 ? Anchor.End : Anchor.Start, Math.Min(room, toEdge));
    }

    /// <summary>The sign of a case that is grounded where it is bolted on, for a part without a wire to it.</summary>
    public void CaseGround(double x, double y)
    {
        Line(Pen.Heavy, x - 0.7, y, x + 0.7, y);
        for (int i = 0; i < 3; i++)
            Line(Pen.Thin, x - 0.55 + (0.6 * i), y, x - 0.85 + (0.6 * i), y + 0.5);
    }

    /// <summary>The finished symbol.</summary>
    public Symbol Done(string name) => new(name, Width, Height, [.. _pins], [.. _shapes]);

    private static Point Scaled(Point point) => new(point.X * M, point.Y * M);
}
