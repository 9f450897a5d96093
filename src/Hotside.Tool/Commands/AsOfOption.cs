using System.CommandLine;
using System.Globalization;

namespace Hotside.Tool.Commands;

/// <summary>The state of the vehicle that a command looks at: before and after, or half-way through the work.</summary>
internal static class AsOfOption
{
    public static Option<string?> Make() => new("--as-of")
    {
        Description = "The vehicle as it stands after a step of the printed order: 14, or 14@0fd1edb9 with the mark on its foot; \"now\" for what the job says is done.", HelpName = "STEP",
    };

    /// <summary>The job as of what the option says; <see langword="null"/>, and a line that says why, when there is no such state.</summary>
    public static Job? Of(Job job, string? value, TextWriter error)
    {
        if (value is null) return job;
        if (value == "now") return job.AsItStands();
        string[] halves = value.Split('@');
        if (!int.TryParse(halves[0], NumberStyles.None, CultureInfo.InvariantCulture, out int step)) error.WriteLine($"hotside: \"{value}\" is no step; write its number, or now.");
        else if (halves.Length > 1 && halves[1] != job.WorkOrder.Mark) error.WriteLine($"hotside: the order has changed since it was printed: its mark is {job.WorkOrder.Mark}, not {halves[1]}. Print it anew.");
        else
        {
            try
            {
                return job.AsOf(step);
            }
            catch (ArgumentOutOfRangeException e)
            {
                error.WriteLine("hotside: " + e.Message.Split(" (Parameter")[0]);
            }
        }
        return null;
    }
}
