// Colours of one's own: take a theme and change what should differ.
//   dotnet run theme.cs
#:project ../../src/Hotside/Hotside.csproj

using Hotside;
using Hotside.Drawings;

Theme slate = Theme.Dark with
{
    Ground = Colour.Hex("#20242b"),
    New = Colour.Hex("#7cc7ff"),
    Moved = Colour.Hex("#ffd479"),
};

Job job = Job.ReadFile("../horn/job.yaml").OrThrow();
Drawing drawing = job.Draw(View.Pair, new() { Theme = slate });
drawing.SaveSvg("horn-slate.svg");
drawing.SavePng("horn-slate.png", resolution: 96);
Console.WriteLine("horn-slate.svg, horn-slate.png");
