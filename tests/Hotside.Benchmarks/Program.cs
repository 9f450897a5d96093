using Hotside.Benchmarks;

// A benchmark a command; each prints what it measured and returns 1 where it is slower than it may be.
string command = args.Length > 0 ? args[0] : "";
string[] rest = args.Length > 1 ? args[1..] : [];
switch (command)
{
    case "study": return StudyBenchmark.Run(rest, Console.Out);
    case "faults": return FaultBenchmark.Run(rest, Console.Out);
    case "diagnose": return DiagnoseBenchmark.Run(rest, Console.Out);
    case "layout": return LayoutBenchmark.Run(rest, Console.Out);
    case "growth": return GrowthBenchmark.Run(rest, Console.Out);
    case "kept": return KeptBenchmark.Run(rest, Console.Out);
    case "order": return OrderBenchmark.Run(rest, Console.Out);
    case "best": return BestOrderBenchmark.Run(rest, Console.Out);
    case "solve": return SolveBenchmark.Run(rest, Console.Out);
    case "vehicle": return VehicleCommand.Run(rest, Console.Out);
    default:
        Console.Error.WriteLine("""
            Usage: dotnet run -c Release --project tests/Hotside.Benchmarks -- COMMAND
              study [COUNT]   studies COUNT generated whole vehicles (10) and small circuits, beside a peer on the same work
              faults [COUNT]  all single faults of COUNT generated vehicles (5) in one setting, and how long sizing them takes
              diagnose [before|after] [NAME ...] [some=N]  how well single faults of the gallery's circuits are found; ends with 1 below what it promises
              layout CASES OUT  lays out each circuit of a folder and writes the drawings into another, each with its time
              growth CASES    how the time of a layout grows up to 3,000 conductors
              kept CASES [OUT]  how much of a drawing stays where it was when a conductor is taken out, without and with the
                              previous layout; the drawings of what is left into OUT
              order FOLDER    states that a battery would harm, as the list is written and as it is planned, of each job of a folder
              best JOB ...    whether any order that the hard rules allow harms in fewer states than the planned one
              solve           operating points at 100, 1,000 and 10,000 conductors, beside ngspice on the same netlists
              vehicle SEED    writes the job file of a generated vehicle, to be looked at
            """);
        return 64;
}
