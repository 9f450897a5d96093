namespace Hotside.Symbols.Shapes;

/// <summary>A rectangle along the axes, in units, y down.</summary>
internal readonly record struct Box(double Left, double Top, double Right, double Bottom)
{
    /// <summary>Width.</summary>
    public double Width => Right - Left;

    /// <summary>Height.</summary>
    public double Height => Bottom - Top;

    /// <summary>The smallest box around both.</summary>
    public Box Union(Box other) =>
        new(Math.Min(Left, other.Left), Math.Min(Top, other.Top), Math.Max(Right, other.Right), Math.Max(Bottom, other.Bottom));

    /// <summary>Whether both have points in common, more than <paramref name="tolerance"/> deep.</summary>
    public bool Overlaps(Box other, double tolerance = 0) =>
        Left < other.Right - tolerance && other.Left < Right - tolerance && Top < other.Bottom - tolerance && other.Top < Bottom - tolerance;

    /// <summary>Whether the other lies inside, up to a tolerance.</summary>
    public bool Contains(Box other, double tolerance = 0) =>
        other.Left >= Left - tolerance && other.Right <= Right + tolerance && other.Top >= Top - tolerance && other.Bottom <= Bottom + tolerance;

    /// <summary>The smallest box around all; an empty one at the origin around none.</summary>
    public static Box Around(IEnumerable<Box> boxes) => boxes.Aggregate((Box?)null, (a, b) => a is { } box ? box.Union(b) : b) ?? default;
}
