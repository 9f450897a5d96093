using Hotside.Orders;
using Hotside.Tests.Support;

namespace Hotside.Tests.Orders;

/// <summary>Jobs with their plans, each read once.</summary>
internal static class OrderJobs
{
    public static string[] Gallery { get; } =
        [.. Directory.GetDirectories(Repository.Path("gallery")).Where(d => File.Exists(Path.Combine(d, "job.yaml"))).Select(d => Path.GetFileName(d)).Order(StringComparer.Ordinal)];

    public static Job OfGallery(string name) => Job.ReadFile(Repository.Path("gallery", name, "job.yaml")).OrThrow();

    public static Job OfFile(string name) => Job.ReadFile(Repository.Path("tests", "Hotside.Tests", "Reading", "jobs", name + ".yaml")).OrThrow();

    /// <summary>The small horn circuit with an alteration of its own.</summary>
    public static Job Horn(params string[] changes) =>
        Job.Read(HornJob.With("alteration:\n  changes:\n" + string.Concat(changes.Select(c => $"    - {c}\n")))).OrThrow();

    /// <summary>The acts of a plan in their order, as a job would name them, those that every order has left out.</summary>
    public static string[] Named(WorkPlan plan) => [.. plan.Order.Where(i => i < plan.Count).Select(i => Progress.Named(plan.Acts[i]))];
}
