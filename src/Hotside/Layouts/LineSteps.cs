using System.Collections.Immutable;

namespace Hotside.Layouts;

/// <summary>A line in steps of a module.</summary>
internal static class LineSteps
{
    /// <summary>The steps, each named by its upper or left end.</summary>
    public static IEnumerable<(int X, int Y, bool Down)> Of(ImmutableArray<(int X, int Y)> points) => Walk(points).Select(s => Key(s.From, s.To));

    /// <summary>The steps from end to end.</summary>
    public static IEnumerable<((int X, int Y) From, (int X, int Y) To)> Walk(ImmutableArray<(int X, int Y)> points)
    {
        for (int i = 1; i < points.Length; i++)
        {
            int dx = Math.Sign(points[i].X - points[i - 1].X), dy = Math.Sign(points[i].Y - points[i - 1].Y);
            for (var at = points[i - 1]; at != points[i]; at = (at.X + dx, at.Y + dy)) yield return (at, (at.X + dx, at.Y + dy));
        }
    }

    /// <summary>A step's name, whichever way it is walked.</summary>
    public static (int X, int Y, bool Down) Key((int X, int Y) a, (int X, int Y) b) => (Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), a.X == b.X);
}
