// On which side is each load switched, by what, and when is it on?
//   dotnet run sides.cs [JOB]
#:project ../../src/Hotside/Hotside.csproj

using Hotside;
using Hotside.Studies;

Job job = Job.ReadFile(args is [var path] ? path : "../horn/job.yaml").OrThrow();
foreach (var (when, study) in new[] { ("before", job.Study.Before), ("after", job.Study.After) })
    foreach (LoadStudy load in study.Loads)
        Console.WriteLine($"{when}: {load.Name} is {load.Summary()}");
