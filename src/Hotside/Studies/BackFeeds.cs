using Hotside.Diagnostics;

namespace Hotside.Studies;

/// <summary>Loads that an alteration lets be fed past a switch which every way to them passed before: a second feed that ties circuits together.</summary>
internal static class BackFeeds
{
    public static IEnumerable<Diagnostic> Between(CircuitStudy before, CircuitStudy after)
    {
        foreach (var was in before.Loads.Where(l => l.Control.Any.Length > 0))
        {
            if (after.Loads.FirstOrDefault(l => l.Part.Id == was.Part.Id && l.Element.Name == was.Element.Name) is not { } now) continue;
            var always = Disconnects(was).ToArray();
            // A load that is re-fed on purpose loses its disconnect in all its combinations; a back-feed leaves some of them.
            foreach (string passed in always.Where(d => now.Control.Any.Any(c => !Names(c, d)) && now.Control.Any.Any(c => Names(c, d)) && after.Circuit.FindPart(d) is not null))
                if (was.Control.ToString() is var old && now.Control.Any.Any(c => !Names(c, passed) && c.All.Length > 1))
                    yield return StudyProblems.BackFeed.Of([was.Part.Id, passed], was.Name, passed) with { Hint = $"when {now.Control.Any.First(c => !Names(c, passed))}; before only when {old}" };
        }
    }

    private static IEnumerable<string> Disconnects(LoadStudy load) =>
        load.Control.Any.SelectMany(c => c.All).Select(s => s.Variable.Part).OfType<string>().Distinct().Where(id => load.Control.Any.All(c => Names(c, id)));

    private static bool Names(Combination combination, string part) => combination.All.Any(s => s.Variable.Part == part);
}
