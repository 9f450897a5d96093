using System.Collections.Immutable;
using Hotside.Diagnostics;

namespace Hotside.Orders;

/// <summary>
/// The order of work of an alteration: steps with acts, why each stands where it stands, and what would come to harm if a battery were connected in between. Computed, never
/// stored. Immutable; safe to share between threads. An aid: the workshop manual, local codes and licensed practice take precedence.
/// </summary>
public sealed record WorkOrder
{
    internal WorkOrder(string title, ImmutableArray<WorkStep> steps) => (Title, Steps) = (title, steps);

    /// <summary>What the job is called.</summary>
    public string Title { get; }

    /// <summary>The steps in their order; none where the job alters nothing.</summary>
    public ImmutableArray<WorkStep> Steps { get; }

    /// <summary>The step after which the new battery may be connected, and stays out before; 0 where it may be from the beginning, <see langword="null"/> where it never may or there is none.</summary>
    public int? NewBatteryFrom { get; internal init; }

    /// <summary>The last step after which the old battery may go back, for a job that is interrupted; 0 where it may not after any, <see langword="null"/> where there is none.</summary>
    public int? OldBatteryUntil { get; internal init; }

    /// <summary>The step with which the new battery goes in; <see langword="null"/> where none does.</summary>
    public int? BatteryStep { get; internal init; }

    /// <summary>What to mind before the first step; the first says who decides.</summary>
    public ImmutableArray<string> Cautions { get; internal init; } = [];

    /// <summary>What is wrong with the order itself: rules in a circle, harm after the battery is in, progress that leaves something out.</summary>
    public ImmutableArray<Diagnostic> Findings { get; internal init; } = [];

    /// <summary>A short mark of this order, eight characters: what is printed with one mark has the same steps as everything with that mark.</summary>
    public string Mark { get; internal init; } = "";

    /// <summary>The last step whose acts are done; 0 where nothing is.</summary>
    public int DoneUntil => Steps.TakeWhile(s => s.IsDone).Count();
}
