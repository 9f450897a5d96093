using System.Collections.Concurrent;
using Hotside.Proposals;
using Hotside.Tests.Support;

namespace Hotside.Tests.Proposals;

/// <summary>The circuits of the gallery and of the notation's job files, with what is proposed for them; each made once.</summary>
internal static class ProposalCases
{
    private static readonly ConcurrentDictionary<(string Name, string To), Lazy<(Job Job, Proposal Proposal)>> made = new();
    private static readonly ConcurrentDictionary<string, Lazy<ReadResult>> read = new(StringComparer.Ordinal);

    /// <summary>The gallery's cases.</summary>
    public static IEnumerable<string> Gallery => Directory.GetDirectories(Repository.Path("gallery")).Where(d => File.Exists(Path.Combine(d, "job.yaml"))).Select(d => "gallery/" + Path.GetFileName(d)).Order(StringComparer.Ordinal);

    /// <summary>All cases: the gallery, then the job files.</summary>
    public static IEnumerable<string> All => Gallery.Concat(JobFiles.All.Select(f => "jobs/" + f));

    /// <summary>The text of a case.</summary>
    public static string TextOf(string name) => name.StartsWith("gallery/", StringComparison.Ordinal)
        ? File.ReadAllText(Repository.Path("gallery", name["gallery/".Length..], "job.yaml")) : JobFiles.Text(name["jobs/".Length..]);

    /// <summary>The file that is proposed for a case, read.</summary>
    public static ReadResult Read(string name) => read.GetOrAdd(name, key => new(() => Job.Read(Of(key).Proposal.ToYaml()))).Value;

    /// <summary>The job of a case and what is proposed for it.</summary>
    public static (Job Job, Proposal Proposal) Of(string name, string to = "12 V negative") => made.GetOrAdd((name, to), key => new(() =>
    {
        var job = Job.Read(TextOf(key.Name)).OrThrow();
        return (job, job.Proposal(new() { To = key.To }));
    })).Value;
}
