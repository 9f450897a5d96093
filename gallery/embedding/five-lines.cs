// The five lines of the project's README, from the top of a clone:
//   dotnet run gallery/embedding/five-lines.cs
#:project ../../src/Hotside/Hotside.csproj

using Hotside;
using Hotside.Studies;

#region five lines
Job job = Job.ReadFile("gallery/horn/job.yaml").OrThrow();      // JobException carries every diagnostic
job.Draw(View.Pair).SaveSvg("horn.svg");                        // or SavePng("horn.png", 300), SavePdf("horn.pdf")
foreach (LoadStudy load in job.Study.After.Loads)
    Console.WriteLine($"{load.Name}: {load.Summary()}");        // H1: hot-switched by K1; on when S1 pressed
bool ground = job.Study.Before.Load("H1").Side == SwitchedSide.GroundSwitched;
#endregion

Console.WriteLine(ground ? "H1 was ground-switched" : "H1 was not ground-switched");
