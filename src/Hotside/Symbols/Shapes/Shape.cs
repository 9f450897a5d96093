using System.Collections.Immutable;

namespace Hotside.Symbols.Shapes;

/// <summary>Something that is drawn, in units of 0.25 mm, y down.</summary>
/// <param name="Pen">Its line; none where it is only filled.</param>
/// <param name="Fill">Its filling.</param>
internal abstract record Shape(Pen? Pen, ColourRole Fill)
{
    /// <summary>The box around it, without the width of its line.</summary>
    public abstract Box Bounds { get; }

    /// <summary>The shape at another place; texts stay upright and readable.</summary>
    public abstract Shape At(Placing placing);

    /// <summary>The shape shifted.</summary>
    public Shape Shifted(double x, double y) => At(new(x, y));

    /// <summary>A straight line.</summary>
    public static PolylineShape Line(Pen pen, double x1, double y1, double x2, double y2) => new([(x1, y1), (x2, y2)], false, pen, ColourRole.None);

    /// <summary>A line through points.</summary>
    public static PolylineShape Polyline(Pen pen, params Point[] points) => new([.. points], false, pen, ColourRole.None);

    /// <summary>A closed outline.</summary>
    public static PolylineShape Polygon(Pen? pen, ColourRole fill, params Point[] points) => new([.. points], true, pen, fill);

    /// <summary>A filled dot.</summary>
    public static CircleShape Dot(ColourRole colour, double x, double y, double radius) => new((x, y), radius, null, colour);
}

/// <summary>A line through points, perhaps closed.</summary>
internal sealed record PolylineShape(ImmutableArray<Point> Points, bool Closed, Pen? Pen, ColourRole Fill) : Shape(Pen, Fill)
{
    /// <inheritdoc/>
    public override Box Bounds => Box.Around(Points.Select(p => new Box(p.X, p.Y, p.X, p.Y)));

    /// <inheritdoc/>
    public override Shape At(Placing placing) => this with { Points = [.. Points.Select(placing.Of)] };
}

/// <summary>A circle.</summary>
internal sealed record CircleShape(Point Centre, double Radius, Pen? Pen, ColourRole Fill) : Shape(Pen, Fill)
{
    /// <inheritdoc/>
    public override Box Bounds => new(Centre.X - Radius, Centre.Y - Radius, Centre.X + Radius, Centre.Y + Radius);

    /// <inheritdoc/>
    public override Shape At(Placing placing) => this with { Centre = placing.Of(Centre) };
}

/// <summary>A rectangle along the axes, perhaps with round corners.</summary>
internal sealed record RectangleShape(Box Box, double Radius, Pen? Pen, ColourRole Fill) : Shape(Pen, Fill)
{
    /// <inheritdoc/>
    public override Box Bounds => Box;

    /// <inheritdoc/>
    public override Shape At(Placing placing)
    {
        Point a = placing.Of((Box.Left, Box.Top)), b = placing.Of((Box.Right, Box.Bottom));
        return this with { Box = new(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Max(a.X, b.X), Math.Max(a.Y, b.Y)) };
    }
}
