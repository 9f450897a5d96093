// Every wire with its ends, size, colour, length and what becomes of it, for a spreadsheet or a parts list.
//   dotnet run wire-table.cs
#:project ../../src/Hotside/Hotside.csproj

using Hotside;

WireList wires = WireList.Of(Job.ReadFile("../horn/job.yaml").OrThrow());
wires.SaveCsv("horn-wires.csv");
foreach (var group in wires.Rows.Where(r => r.Change == "run new").GroupBy(r => $"{r.Size} {r.Colour}"))
    Console.WriteLine($"{group.Key}: {group.Sum(r => r.LengthInMetres):0.0} m to buy");
