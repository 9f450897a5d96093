using SkiaSharp;

namespace Hotside.Tests.Support;

/// <summary>The points of an SVG path's data, read by Skia: where each step ends, a list for each line that begins anew.</summary>
internal static class SvgPathPoints
{
    public static (double X, double Y)[][] Of(string data)
    {
        using var path = SKPath.ParseSvgPathData(data);
        using var steps = path.CreateRawIterator();
        List<List<(double, double)>> lines = [];
        var points = new SKPoint[4];
        for (var verb = steps.Next(points); verb != SKPathVerb.Done; verb = steps.Next(points))
        {
            if (verb == SKPathVerb.Move) lines.Add([At(points[0])]);
            else if (verb != SKPathVerb.Close) lines[^1].Add(At(points[verb switch { SKPathVerb.Line => 1, SKPathVerb.Cubic => 3, _ => 2 }]));
        }
        return [.. lines.Select(l => l.ToArray())];
    }

    // As written, without what single precision adds.
    private static (double X, double Y) At(SKPoint point) => (Math.Round(point.X, 1), Math.Round(point.Y, 1));
}
