using System.CommandLine;
using Hotside.Diagnoses;

namespace Hotside.Tool.Commands;

/// <summary><c>hotside diagnose JOB</c>: what may be wrong, and which reading to take next.</summary>
internal static class DiagnoseCommand
{
    private static readonly (string, string)[] Endings = [(".svg", "svg"), (".png", "png"), (".pdf", "pdf")];

    public static Command Make()
    {
        var job = JobArgument.Make();
        var view = Choice.Of("--view", "Which circuit the vehicle has now: before or after the alteration. Default: after.", View.After);
        Option<string[]> dead = Many("--dead", "Loads that do nothing though they should be on, such as H1; where it matters with the setting: \"E1.low @ low beam\". May be repeated, as all these."),
            dim = Many("--dim", "Loads that do less than they should."), strong = Many("--strong", "Loads that do more than they should."),
            on = Many("--on-though-off", "Loads that work though they should be off."), works = Many("--works", "Loads that work as they should."), blown = Many("--blown", "Fuses that are blown."),
            reading = Many("--reading", "A reading: \"H1.1 = 3.1 V @ horn pressed\", \"F2.2 to H1.1 = 0.3 V @ horn pressed\", \"F2.2 = 0.4 ohm\", \"H1.1 = lamp bright @ horn pressed\" (or dim, dark: a 21 W test lamp to the chassis), \"E1 = dim @ low beam\".");
        var smoke = new Option<bool>("--smoke") { Description = "It smokes or smells: then only ohms are asked for, the battery taken out." };
        var file = new Option<string?>("--readings") { Description = "A file of readings, a line each, or a filled check sheet as .csv." };
        Option<string?> faults = new("--faults") { Description = "A file of your own weights of faults, .yaml: modes: {lamp burnt: 12}; what it leaves out stays as the library's list has it." },
            effort = new("--effort") { Description = "A file of your own numbers for the trouble of readings, .yaml: places: {K: 4}." };
        var ask = new Option<bool>("--ask") { Description = "Asks for one reading after the other. \"?\" says why, \"-\" that the point cannot be reached, \"u\" takes the last answer back, \"m\" says that the first suspect is mended, nothing ends it." };
        var top = new Option<int>("--top") { Description = "How many suspects are listed.", DefaultValueFactory = _ => 5 };
        var json = new Option<bool>("--json") { Description = "As JSON of the contract hotside-diagnosis/1." };
        var drawing = new Option<string?>("--output", "-o") { Description = "Also draws what is concerned, suspects and the next point marked: a .svg, .png or .pdf." };
        var words = WordsOption.Make();
        AsOfOption asOf = new();
        var command = new Command("diagnose", """
            Says what may be wrong with a vehicle, likeliest first, and which reading to take next, with what each of
            the leading suspects would make it. The netlist is solved with every single fault of a list.

            Example:
              hotside diagnose gallery/horn/job.yaml --dead H1
              hotside diagnose gallery/horn/job.yaml --dead H1 --reading "H1.1 = 0 V @ horn pressed" --ask
              hotside diagnose gallery/horn/job.yaml --as-of 8 --battery old --dead H1
            """) { job, view, dead, dim, strong, on, works, blown, reading, smoke, file, faults, effort, ask, top, json, drawing, words };
        asOf.AddTo(command);
        command.SetAction(parsed =>
        {
            var (error, output) = (parsed.InvocationConfiguration.Error, parsed.InvocationConfiguration.Output);
            string? wrong = null;
            string? path = parsed.GetValue(drawing);
            var target = path is null ? null : Target.Of(path, null, "svg", Endings, out wrong);
            if (path is "-") wrong = "-o names a file; suspects go to standard output.";
            if (parsed.GetValue(top) < 1) wrong = "--top is 1 or more.";
            if (wrong is not null)
            {
                error.WriteLine("hotside: " + wrong);
                return ExitCode.WrongUsage;
            }
            if (JobArgument.Read(parsed.GetRequiredValue(job), error) is not { } whole) return ExitCode.InputUnreadable;
            if (asOf.Of(whole, parsed, error, needsPower: !parsed.GetValue(smoke)) is not { } read) return ExitCode.WrongUsage;
            if (ReadingFile.Of(parsed.GetValue(file), error) is not { } lines) return ExitCode.InputUnreadable;
            if (OwnLists(parsed.GetValue(faults), parsed.GetValue(effort), whole, error) is not { } lists) return ExitCode.InputUnreadable;
            Complaint complaint = new()
            {
                Lists = lists,
                Dead = [.. parsed.GetValue(dead)!], Dim = [.. parsed.GetValue(dim)!], Strong = [.. parsed.GetValue(strong)!], OnThoughOff = [.. parsed.GetValue(on)!],
                Works = [.. parsed.GetValue(works)!], Blown = [.. parsed.GetValue(blown)!], Readings = [.. lines, .. parsed.GetValue(reading)!], IsSmoking = parsed.GetValue(smoke),
            };
            try
            {
                var diagnosis = read.Diagnose(complaint, parsed.GetValue(view), WordsOption.Of(parsed.GetValue(words)));
                if (parsed.GetValue(ask)) diagnosis = new AskingTerminal(Console.In, output, parsed.GetValue(top)).Ask(diagnosis);
                output.Write(parsed.GetValue(json) ? diagnosis.ToJson() : diagnosis.ToText(parsed.GetValue(top)));
                // How a reading is given is the tool's affair; the library tells what.
                if (!parsed.GetValue(json) && !parsed.GetValue(ask) && diagnosis.Next is { } next) output.WriteLine($"Then once more with: --reading \"{next.Entry}\"");
                if (target is not null) Draw(target, read.DrawDiagnosis(diagnosis, parsed.GetValue(view), new() { Words = WordsOption.Of(parsed.GetValue(words)) }));
                return ExitCode.Done;
            }
            catch (ArgumentException e)
            {
                error.WriteLine("hotside: " + e.Message.Split(" (Parameter")[0]);
                // What was complained of is none of these: said with the names of options, which the library does not know.
                if (e.ParamName == "complaint") error.WriteLine("Loads are named by --dead, --dim, --strong, --on and --works, fuses by --blown, readings by --reading.");
                return ExitCode.WrongUsage;
            }
        });
        return command;
    }

    private static DiagnosisLists? OwnLists(string? faults, string? effort, Job job, TextWriter error)
    {
        var lists = DiagnosisLists.Standard;
        try
        {
            if (faults is not null) lists = lists.WithFaults(File.ReadAllText(faults), faults);
            if (effort is not null) lists = lists.WithEffort(File.ReadAllText(effort), effort, job.Alteration.Before.Parts.Concat(job.Alteration.After.Parts).Select(p => p.Kind));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            error.WriteLine($"hotside: {e.Message}");
            return null;
        }
        foreach (var problem in lists.Problems) error.WriteLine(Colouring.Of(problem.ToString(), problem.Severity, error));
        return lists.Problems.IsEmpty ? lists : null;
    }

    private static void Draw(Target target, Drawing drawing)
    {
        switch (target.Format)
        {
            case "png":
                drawing.SavePng(target.Path!);
                break;
            case "pdf":
                drawing.SavePdf(target.Path!);
                break;
            default:
                drawing.SaveSvg(target.Path!);
                break;
        }
    }

    private static Option<string[]> Many(string name, string description) => new(name) { Description = description, DefaultValueFactory = _ => [] };
}
