// Where is everything? A table of boxes, to find what was clicked on.
//   dotnet run hit-test.cs [X Y]
#:project ../../src/Hotside/Hotside.csproj

using System.Globalization;
using Hotside;

Drawing drawing = Job.ReadFile("../horn/job.yaml").OrThrow().Draw(View.Pair);
foreach (DrawnBox box in drawing.Boxes)
    Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{box.View,-6} {box.Id,-4} {box.Left,6:0.0} {box.Top,6:0.0} {box.Width,6:0.0} {box.Height,6:0.0} mm"));

if (args is [var x, var y])
{
    double left = double.Parse(x, CultureInfo.InvariantCulture), top = double.Parse(y, CultureInfo.InvariantCulture);
    // A wire is thin: a millimetre of slack helps the finger.
    Console.WriteLine("at that place: " + string.Join(", ", drawing.Boxes.Where(b => b.Holds(left, top, slack: 1)).Select(b => $"{b.Id} ({b.View})")));
}
