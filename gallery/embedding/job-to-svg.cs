// A job text in, an SVG out: what a page or an editor needs.
//   dotnet run job-to-svg.cs
#:project ../../src/Hotside/Hotside.csproj

using Hotside;

const string text = """
    hotside: 1
    title: Reversing lamp
    system: 12 V, negative ground, sizes in AWG
    parts:
      G1: battery, 12 V, 60 Ah
      F1: fuse, 10 A
      S1: push-button, Reverse gear
      E1: lamp, Reversing lamp, 12 V, 21 W
    wires:
      w1: G1.pos to F1.1, 14 RD
      w2: F1.2 to S1.1, 14 RD
      w3: S1.2 to E1.1, 14 GN
      w4: E1.2 to chassis, 14 BK
      w5: G1.neg to chassis, 2 BK
    """;

ReadResult read = Job.Read(text);
foreach (var diagnostic in read.Diagnostics) Console.Error.WriteLine(read.Print(diagnostic));
if (read.Job is not { } job) return 1;

Drawing drawing = job.Draw(View.Before);
drawing.SaveSvg("reversing-lamp.svg");
Console.WriteLine($"reversing-lamp.svg, {drawing.WidthInMillimetres} x {drawing.HeightInMillimetres} mm");
return 0;
