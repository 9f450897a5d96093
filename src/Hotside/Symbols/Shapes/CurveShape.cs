using System.Collections.Immutable;

namespace Hotside.Symbols.Shapes;

/// <summary>One step of a curve: a straight line, a circular arc of less than half a turn, or a cubic curve.</summary>
/// <param name="End">Where it ends.</param>
/// <param name="Radius">Radius of an arc; 0 for the others.</param>
/// <param name="Clockwise">Direction of an arc as seen on the sheet.</param>
/// <param name="First">First control point of a cubic curve.</param>
/// <param name="Second">Second control point of a cubic curve.</param>
internal readonly record struct CurveStep(Point End, double Radius = 0, bool Clockwise = false, Point? First = null, Point? Second = null);

/// <summary>A line of straight and curved steps.</summary>
internal sealed record CurveShape(Point Start, ImmutableArray<CurveStep> Steps, bool Closed, Pen? Pen, ColourRole Fill) : Shape(Pen, Fill)
{
    /// <summary>An open curve.</summary>
    public static CurveShape Open(Pen pen, Point start, params CurveStep[] steps) => new(start, [.. steps], false, pen, ColourRole.None);

    /// <inheritdoc/>
    public override Box Bounds => Box.Around(Extremes().Select(p => new Box(p.X, p.Y, p.X, p.Y)));

    /// <inheritdoc/>
    public override Shape At(Placing placing) => this with
    {
        Start = placing.Of(Start),
        Steps = [.. Steps.Select(s => new CurveStep(
            placing.Of(s.End),
            s.Radius,
            s.Clockwise != placing.TurnsArcs,
            s.First is { } first ? placing.Of(first) : null,
            s.Second is { } second ? placing.Of(second) : null))],
    };

    // Ends and, for an arc, the middle of its bow: enough for arcs of up to half a turn, and an upper bound for cubic curves.
    private IEnumerable<Point> Extremes()
    {
        Point from = Start;
        yield return from;
        foreach (CurveStep step in Steps)
        {
            yield return step.End;
            if (step.First is { } first && step.Second is { } second)
            {
                yield return first;
                yield return second;
            }
            else if (step.Radius > 0)
                yield return Bow(from, step);
            from = step.End;
        }
    }

    private static Point Bow(Point from, CurveStep step)
    {
        double chord = from.To(step.End);
        double height = step.Radius - Math.Sqrt(Math.Max(0, (step.Radius * step.Radius) - (chord * chord / 4)));
        double nx = (step.End.Y - from.Y) / chord, ny = -(step.End.X - from.X) / chord;
        double sign = step.Clockwise ? height : -height;
        return new(((from.X + step.End.X) / 2) + (nx * sign), ((from.Y + step.End.Y) / 2) + (ny * sign));
    }
}
