using System.Text;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Orders;

namespace Hotside.Outputs;

/// <summary>Writes an order of work to be printed: steps on the left, beside them what a battery would do.</summary>
internal static class OrderSheet
{
    private const int Left = 68, Right = 29, MostHarms = 3;

    private const string NoPlace = "Place not stated";

    /// <summary>What stands above everything where the check finds what forbids the work.</summary>
    public static string DoNotBegin(int stops) => $"DO NOT WORK TO THIS ORDER: the check finds {Numbers.Whole(stops)} {(stops == 1 ? "stop" : "stops")}. Mend the job file first.";

    public static string Write(WorkOrder order, string supply, IReadOnlyList<Diagnostic> stops)
    {
        StringBuilder text = new();
        text.Append(order.Title).Append(": order of work\n").Append(supply).Append("\n\n");
        if (order.Steps.IsEmpty) return text.Append("Nothing is altered.\n").ToString();
        if (stops.Count > 0)
        {
            Block(text, "!! ", DoNotBegin(stops.Count), Left + Right + 3);
            foreach (var stop in stops) Block(text, "!! ", $"{stop.Code}: {stop.Message}", Left + Right + 3);
            text.Append('\n');
        }
        foreach (string caution in order.Cautions) Block(text, "! ", caution, Left + Right + 3);
        text.Append('\n');
        foreach (string line in Proof(order)) Block(text, "", line, Left + Right + 3);
        string? heading = null;
        string[] last = [];
        foreach (var step in order.Steps)
        {
            string now = Heading(step);
            if (now != heading) text.Append('\n').Append(now).Append('\n').Append('-', Math.Min(now.Length, Left + Right + 3)).Append('\n');
            heading = now;
            Step(text, step, order.BatteryStep is null ? "battery" : "new", ref last);
        }
        text.Append('\n');
        Block(text, "", "A box is ticked when all its lines are done; in the middle of a step no battery is connected. \"May\" says that this battery would harm nothing if it were connected as the vehicle stands after the step; "
            + "computed from the job file, engine standing, at rest, with each switch moved, and with each load alone.", Left + Right + 3);
        return text.Append("Order ").Append(order.Mark).Append(". Stopped after step ____  date ________  initials ____\n").ToString();
    }

    /// <summary>What steps stand under: a phase that is the same wherever it is done, else a place.</summary>
    public static string Heading(WorkStep step) => step.StandsUnderPhase ? Capital(step.Phase) : step.Place is { Length: > 0 } place ? Capital(place) : NoPlace;

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>The proof: between which steps which battery has to stay out.</summary>
    public static IEnumerable<string> Proof(WorkOrder order)
    {
        if (order.NewBatteryFrom is { } from)
            yield return from == 0 ? $"The battery would do no harm in any state between; it stays out all the same{(BatteryIn(order) is { } step ? $" until step {Numbers.Whole(step)}" : "")}."
                : $"The new battery stays out until step {Numbers.Whole(from)} is done{(order.BatteryStep is { } at && at > from + 1 ? $"; it goes in with step {Numbers.Whole(at)}, after the dead tests" : "")}.";
        else
            yield return "The new battery must not go in: something comes to harm even when all is done.";
        if (order.OldBatteryUntil is not { } until) yield break;
        bool isLast = order.BatteryStep is { } with && until == with - 1;
        yield return isLast ? $"The old battery may go back, to move the vehicle, after every step before step {Numbers.Whole(until + 1)}."
            : until == 0 ? "The old battery must not go back once the first wire is off."
            : $"The old battery may go back, to move the vehicle, up to step {Numbers.Whole(until)}; not after step {Numbers.Whole(until + 1)}.";
        if (order.NewBatteryFrom is { } free && free > until + 1) yield return $"From step {Numbers.Whole(until + 1)} to step {Numbers.Whole(free)} it cannot move under its own power.";
    }

    // The step with which a battery is in, be it the old one.
    private static int? BatteryIn(WorkOrder order) => order.BatteryStep ?? order.Steps.FirstOrDefault(s => s.Acts.Any(a => a.Type is WorkActType.PowerUp or WorkActType.CableOn))?.Number;

    private static void Step(StringBuilder text, WorkStep step, string which, ref string[] last)
    {
        List<string> left = [], right = Margin(step, which, ref last);
        if (step.Caution is { } caution) left.AddRange(WordWrap.Lines(caution, Left - 6).Select((l, i) => (i == 0 ? "    ! " : "      ") + l));
        for (int a = 0; a < step.Acts.Length; a++)
        {
            var act = step.Acts[a];
            string number = act.Label;
            string head = a == 0 ? $"[{(step.IsDone ? "x" : " ")}] {Numbers.Whole(step.Number).PadRight(4)}" : act.IsDone && !step.IsDone ? " x      " : "        ";
            left.AddRange(WordWrap.Lines(act.Text, Left - 13).Select((l, i) => i == 0 ? $"{head}{number.PadLeft(3)}  {l}" : "             " + l));
        }
        foreach (string remark in step.Remarks) left.AddRange(WordWrap.Lines(remark, Left - 13).Select(l => "             " + l));
        if (!step.Reasons.IsEmpty) left.AddRange(WordWrap.Lines("because " + string.Join("; ", step.Reasons), Left - 16).Select(l => "                " + l));
        for (int i = 0; i < Math.Max(left.Count, right.Count); i++)
            text.Append($"{(i < left.Count ? left[i] : "").PadRight(Left)} | {(i < right.Count ? right[i] : "")}".TrimEnd()).Append('\n');
    }

    private static List<string> Margin(WorkStep step, string which, ref string[] last)
    {
        string[] words = [.. new[] { Verdict("old", step.SafeWithOld), Verdict(which, step.SafeWithNew) }.Where(w => w.Length > 0)];
        List<string> lines = [string.Join(", ", words)];
        string[] harms = [.. step.Harms.Where(h => h.Severity >= Severity.Error).Select(h => (h.Battery == Battery.Old ? "old: " : which == "new" ? "new: " : "") + h.Text)];
        if (harms.Length > 0 && harms.SequenceEqual(last)) lines.Add("as before");
        else
            foreach (string harm in harms.Take(MostHarms)) lines.AddRange(WordWrap.Lines(harm, Right - 1).Select((l, i) => i == 0 ? l : " " + l));
        if (harms.Length > MostHarms && !harms.SequenceEqual(last)) lines.Add($"and {Numbers.Whole(harms.Length - MostHarms)} more");
        last = harms;
        return lines;
    }

    private static string Verdict(string which, bool? isSafe) => isSafe switch { true => which + " may", false => which + " STAYS OUT", _ => "" };

    private static void Block(StringBuilder text, string mark, string sentence, int width)
    {
        foreach (string line in WordWrap.Lines(sentence, width - mark.Length))
        {
            text.Append(mark).Append(line).Append('\n');
            mark = new(' ', mark.Length);
        }
    }
}
