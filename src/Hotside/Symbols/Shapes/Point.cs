namespace Hotside.Symbols.Shapes;

/// <summary>A point in units, y down.</summary>
internal readonly record struct Point(double X, double Y)
{
    /// <summary>Turns a pair into a point, so that lists of points read as lists of pairs.</summary>
    public static implicit operator Point((double X, double Y) pair) => new(pair.X, pair.Y);

    /// <summary>Distance to another point.</summary>
    public double To(Point other) => Math.Sqrt(((other.X - X) * (other.X - X)) + ((other.Y - Y) * (other.Y - Y)));
}
