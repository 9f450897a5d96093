using System.Text;
using Hotside.Symbols.Shapes;

namespace Hotside.Outputs;

/// <summary>Writes the data of a path: each step from where the one before ended, which takes the least room, with a decimal (0.025 mm) that no rounding carries on.</summary>
internal sealed class SvgPath(StringBuilder svg)
{
    private decimal x, y;

    /// <summary>Writes a straight or curved line.</summary>
    public void Add(Shape shape)
    {
        if (shape is PolylineShape line)
        {
            Move(line.Points[0]);
            foreach (var point in line.Points.AsSpan()[1..]) Line(point);
            if (line.Closed) Close(line.Points[0]);
        }
        else if (shape is CurveShape curve)
        {
            Move(curve.Start);
            foreach (var step in curve.Steps) Step(step);
            if (curve.Closed) Close(curve.Start);
        }
    }

    private void Move(Point to)
    {
        (x, y) = (Rounded(to.X), Rounded(to.Y));
        svg.Append('M').Append(Text(x)).Append(Apart(y));
    }

    private void Line(Point to)
    {
        var (dx, dy) = To(to);
        if (dy == 0) svg.Append('h').Append(Text(dx));
        else if (dx == 0) svg.Append('v').Append(Text(dy));
        else svg.Append('l').Append(Text(dx)).Append(Apart(dy));
        Reach(to);
    }

    private void Step(CurveStep step)
    {
        if (step.First is { } first && step.Second is { } second)
        {
            svg.Append('c');
            foreach (var (point, isFirst) in new[] { (first, true), (second, false), (step.End, false) })
            {
                var (dx, dy) = To(point);
                svg.Append(isFirst ? Text(dx) : Apart(dx)).Append(Apart(dy));
            }
            Reach(step.End);
        }
        else if (step.Radius > 0)
        {
            string radius = SvgOutput.Units(step.Radius);
            var (dx, dy) = To(step.End);
            svg.Append('a').Append(radius).Append(' ').Append(radius).Append(" 0 0 ").Append(step.Clockwise ? '1' : '0').Append(Apart(dx)).Append(Apart(dy));
            Reach(step.End);
        }
        else Line(step.End);
    }

    private void Close(Point start)
    {
        svg.Append('z');
        Reach(start);
    }

    private (decimal X, decimal Y) To(Point point) => (Rounded(point.X) - x, Rounded(point.Y) - y);

    private void Reach(Point point) => (x, y) = (Rounded(point.X), Rounded(point.Y));

    private static decimal Rounded(double value) => Math.Round((decimal)value, 1, MidpointRounding.AwayFromZero);

    private static string Text(decimal value) => SvgOutput.Units((double)value);

    // A minus parts two numbers as well as a space does.
    private static string Apart(decimal value) => value < 0 ? Text(value) : " " + Text(value);
}
