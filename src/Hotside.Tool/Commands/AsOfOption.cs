using System.CommandLine;
using System.Globalization;
using Hotside.Diagnostics;
using Hotside.Orders;

namespace Hotside.Tool.Commands;

/// <summary>The state of the vehicle that a command looks at: before and after, or half-way through the work, with the battery that the order has there or another.</summary>
internal sealed class AsOfOption
{
    private readonly Option<string?> step = new("--as-of")
    {
        Description = "The vehicle as it stands after a step of the printed order: 14, or 14@0fd1edb9 with the mark on its foot; \"now\" for what the job says is done. The battery is as the order has it there.", HelpName = "STEP",
    };

    private readonly Option<string?> battery = new("--battery") { Description = "With --as-of: which battery is connected in thought, old, new, or none: out. Default: as the order has it." };

    public AsOfOption()
    {
        battery.AcceptOnlyFromAmong("out", "old", "new");
        battery.Validators.Add(result =>
        {
            if (result.Tokens.Count > 0 && result.GetResult(step) is null) result.AddError("--battery goes with --as-of; before and after the work the battery is connected.");
        });
    }

    /// <summary>Adds both options to a command.</summary>
    public void AddTo(Command command)
    {
        command.Options.Add(step);
        command.Options.Add(battery);
    }

    /// <summary>The job as of what the options say; <see langword="null"/>, and a line that says why, when there is no such state.</summary>
    /// <param name="job">The job.</param>
    /// <param name="parsed">The command line.</param>
    /// <param name="error">Where it is said why not, and what a battery that is connected in thought would harm.</param>
    /// <param name="needsPower">Whether the command has nothing to say of a vehicle without a battery.</param>
    public Job? Of(Job job, ParseResult parsed, TextWriter error, bool needsPower = false)
    {
        if (parsed.GetValue(step) is not { } value) return job;
        var which = parsed.GetValue(battery) switch { "out" => StandingBattery.Out, "old" => StandingBattery.Old, "new" => StandingBattery.New, _ => StandingBattery.AsOrdered };
        bool isNow = value == "now";
        if (StateOf(job, isNow ? null : value, error, until => until is { } number ? job.AsOf(number, which) : job.AsItStands(which)) is not { } state) return null;
        if (which is StandingBattery.Old or StandingBattery.New) Warn(job, isNow ? job.WorkOrder.DoneUntil : NumberOf(value) ?? 0, which, error);
        if (!needsPower || state.IsPowered) return state;
        error.WriteLine("hotside: the battery is out as it stands, and without it nothing is fed. Say --battery old or --battery new for the vehicle with one connected.");
        return null;
    }

    /// <summary>The job made of the number of a step; <see langword="null"/>, and a line that says why, when there is no such step or the order is another than the printed one.</summary>
    /// <param name="job">The job.</param>
    /// <param name="value">The number, with the mark or without; <see langword="null"/>: no step is meant.</param>
    /// <param name="error">Where it is said.</param>
    /// <param name="made">Makes it.</param>
    public static Job? StateOf(Job job, string? value, TextWriter error, Func<int?, Job> made)
    {
        string? mark = value?.Split('@').ElementAtOrDefault(1);
        int? until = value is null ? null : NumberOf(value);
        if (value is not null && until is null) error.WriteLine($"hotside: \"{value}\" is no step; write its number, or now.");
        else if (mark is not null && mark != job.WorkOrder.Mark) error.WriteLine($"hotside: the order has changed since it was printed: its mark is {job.WorkOrder.Mark}, not {mark}. Print it anew.");
        else
        {
            try
            {
                return made(until);
            }
            catch (ArgumentOutOfRangeException e)
            {
                error.WriteLine("hotside: " + e.Message.Split(" (Parameter")[0]);
            }
        }
        return null;
    }

    private static int? NumberOf(string value) => int.TryParse(value.Split('@')[0], NumberStyles.None, CultureInfo.InvariantCulture, out int number) ? number : null;

    // Who puts a battery back is told what the order knows of it.
    private static void Warn(Job job, int until, StandingBattery which, TextWriter error)
    {
        if (until == 0 || job.WorkOrder.Steps.ElementAtOrDefault(until - 1) is not { } step) return;
        var (isSafe, called, battery) = which == StandingBattery.Old ? (step.SafeWithOld, "old", Battery.Old) : (step.SafeWithNew, "new", Battery.New);
        if (isSafe != false) return;
        string harm = step.Harms.FirstOrDefault(h => h.Battery == battery && h.Severity >= Severity.Error)?.Text ?? "";
        error.WriteLine(Colouring.Of($"hotside: the {called} battery STAYS OUT after step {until}: {harm}. What follows is thought, not to be done.", Severity.Stop, error));
    }
}
