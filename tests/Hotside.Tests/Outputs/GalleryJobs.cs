using System.Collections.Immutable;
using Hotside.Tests.Support;

namespace Hotside.Tests.Outputs;

/// <summary>Jobs to draw: those of the gallery, and the headlamps of the tests.</summary>
internal static class GalleryJobs
{
    private static readonly Lazy<Drawing> Horn = new(() => Read("horn").Draw()), Overlay = new(() => Read("horn").Draw(View.Overlay));

    private static readonly Lazy<ImmutableArray<Drawing>> Van = new(() => Read("van").DrawSheets(View.Pair));

    /// <summary>Before and after of the horn, on A4; drawn once.</summary>
    public static Drawing HornPair => Horn.Value;

    /// <summary>Both circuits of the horn over each other; drawn once.</summary>
    public static Drawing HornOverlay => Overlay.Value;

    /// <summary>The van before and after, on as many sheets as it takes; drawn once.</summary>
    public static ImmutableArray<Drawing> VanPair => Van.Value;

    public static IEnumerable<string> Names => [.. Directory.GetDirectories(Repository.Path("gallery")).Where(d => File.Exists(Path.Combine(d, "job.yaml"))).Select(d => Path.GetFileName(d)).Order(StringComparer.Ordinal)];

    public static Job Read(string name) => Job.ReadFile(Repository.Path("gallery", name, "job.yaml")).OrThrow();

    public static Job Headlamps() => Job.Read(JobFiles.Text("headlamps.yaml")).OrThrow();
}
