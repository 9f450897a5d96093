using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Studies.Switching;

namespace Hotside.Studies;

/// <summary>
/// Finds loads that an alteration feeds past a disconnect that all their combinations passed before. Where such a combination still passes a switch of the load's
/// own, the new feed comes back through others' switches: a back-feed. Where it does not, the load was given a feed of its own.
/// </summary>
internal static class BackFeeds
{
    public static ImmutableArray<Diagnostic> Between(CircuitStudy before, CircuitStudy after)
    {
        var found = ImmutableArray.CreateBuilder<Diagnostic>();
        foreach (var load in after.Loads.Where(l => !l.Element.IsInternal))
        {
            var old = before.Loads.FirstOrDefault(l => l.Part.Id == load.Part.Id && l.Element.Name == load.Element.Name);
            if (old is null || Judge(old.Control, load.Control) is not var (past, combination, isBack)) continue;
            // What a diode parts already comes back to nobody.
            string? diode = DiodeBefore(load, past, after.Circuit);
            var kind = isBack && diode is null ? SwitchingFindings.BackFeed : SwitchingFindings.SecondFeed;
            found.Add(kind.Of([load.Part.Id, .. combination.All.Select(s => s.Variable.Part).OfType<string>().Distinct()],
                load.Name, combination.ToString(), past.ToString()) with
            {
                Hint = diode is not null ? $"{diode} keeps the two feeds apart; mark the second feed at {past.Variable.Part ?? past.Variable.ToString()}, for who opens that relies on it"
                    : isBack ? "find where the second feed joins the first and part them, by a diode, a relay or a switch with two poles" : null,
            });
        }
        return found.ToImmutable();
    }

    // The diode on the way of the second feed, where it passes one.
    private static string? DiodeBefore(LoadStudy load, PositionSet past, Circuit circuit) =>
        load.Paths.Select(p => p.HotWay.Concat(p.GroundWay)).Where(way => !way.Contains(past.Variable.Part))
            .SelectMany(way => way).FirstOrDefault(id => circuit.FindPart(id) is { } part && part.Kind.Elements.Any(e => e.Type == ElementType.Diode));

    private static (PositionSet Past, Combination By, bool IsBack)? Judge(Control before, Control after)
    {
        if (before.Any.IsEmpty || before.IsAlways) return null;
        foreach (var gate in before.Any[0].All)
        {
            bool allPassed = before.Any.All(c => c.All.Any(s => s.Variable == gate.Variable));
            bool stillPassed = after.Any.Any(c => c.All.Any(s => s.Variable == gate.Variable));
            if (!allPassed || !stillPassed) continue;
            foreach (var combination in after.Any.Where(c => c.All.All(s => s.Variable != gate.Variable)))
            {
                bool isBack = combination.All.Any(s => before.Any.Any(c => c.All.Any(t => t.Variable == s.Variable)));
                return (gate, combination, isBack);
            }
        }
        return null;
    }
}
