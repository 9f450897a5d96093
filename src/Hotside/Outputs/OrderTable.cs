using System.Text;
using Hotside.Circuits;
using Hotside.Orders;
using Hotside.Outputs;

namespace Hotside;

/// <summary>A job's order of work as text to print. Immutable.</summary>
public sealed class OrderTable
{
    private readonly WorkOrder order;

    private OrderTable(WorkOrder order) => this.order = order;

    /// <summary>The order of a job.</summary>
    /// <param name="job">The job.</param>
    public static OrderTable Of(Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        return new(job.WorkOrder);
    }

    /// <summary>The order in plain text.</summary>
    public string ToText()
    {
        StringBuilder text = new();
        text.Append(order.Title).Append(": order of work\n\n");
        foreach (string caution in order.Cautions) text.Append("! ").Append(caution).Append('\n');
        foreach (var step in order.Steps)
        {
            text.Append('\n').Append("[ ] ").Append(Numbers.Whole(step.Number)).Append("  (").Append(step.Phase).Append(", ").Append(step.Place).Append(", ").Append(step.Circuit).Append(")\n");
            foreach (var act in step.Acts) text.Append("      ").Append(act.Change is { } n ? Numbers.Whole(n) : "").Append("  ").Append(act.Text).Append('\n');
            if (!step.Reasons.IsEmpty) text.Append("        because ").AppendJoin("; ", step.Reasons).Append('\n');
        }
        return text.ToString();
    }
}
