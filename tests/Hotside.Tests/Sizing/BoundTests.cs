using Hotside.Sizing;
using Hotside.Solving;
using Hotside.Tests.Support;

namespace Hotside.Tests.Sizing;

/// <summary>Laws over the gallery: no current that is computed in a setting is above the one that a conductor is sized by.</summary>
public class BoundTests
{
    public static TheoryData<string> Cases => [.. Directory.GetDirectories(Repository.Path("gallery")).Where(d => File.Exists(Path.Combine(d, "job.yaml"))).Select(d => Path.GetFileName(d)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Cases))]
    public void No_conductor_of_a_gallery_case_carries_more_than_it_is_sized_for(string name)
    {
        var job = Job.ReadFile(Repository.Path("gallery", name, "job.yaml")).OrThrow();
        foreach (var sizes in new[] { job.Sizes.Before, job.Sizes.After })
        {
            CircuitSolver solver = new(sizes.Circuit);
            foreach (var setting in sizes.Circuit.Settings)
            {
                var solution = solver.Solve(setting);
                // A cranking motor is no steady load, nor is a winding that is on while a relay moves.
                if (solution.Elements.Any(e => e.Part.IsStarter(e.Element) && Math.Abs(e.Amperes) > 1)) continue;
                for (int c = 0; c < sizes.Conductors.Length; c++)
                    if (sizes.Conductors[c].Basis == CurrentBasis.Bound)
                        Assert.True(Math.Abs(solution.Conductors[c].Amperes) <= (sizes.Conductors[c].Current.Amperes * 1.001) + 1e-3,
                            $"{name}, {setting.Name}: {sizes.Conductors[c].Conductor.Id} carries {solution.Conductors[c].Amperes:0.000} A, sized for {sizes.Conductors[c].Current.Amperes:0.000} A");
            }
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_size_that_is_needed_keeps_all_rules_once_it_is_there(string name)
    {
        var job = Job.ReadFile(Repository.Path("gallery", name, "job.yaml")).OrThrow();
        foreach (var sizing in job.Sizes.After.Conductors)
        {
            if (sizing.SizeNeeded is not { } needed || sizing.Conductor.Wire.Size is not { } size) continue;
            bool isKept = sizing.Rules.All(r => r.Outcome is SizingOutcome.NotJudged or SizingOutcome.Passed or SizingOutcome.Note);
            // Whoever keeps all rules needs no larger size, and the other way round; but for the drop, which another conductor of the way may make good.
            if (sizing.By(SizingRule.Drop)!.Outcome != SizingOutcome.Failed)
                Assert.True(isKept == (size.Area >= needed.Area * 0.999), $"{name}: {sizing.Conductor.Id} is {size}, needs {needed}, verdict {sizing.Verdict}");
        }
    }
}
