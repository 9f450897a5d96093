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
            var kind = isBack ? SwitchingFindings.BackFeed : SwitchingFindings.SecondFeed;
            found.Add(kind.Of([load.Part.Id, .. combination.All.Select(s => s.Variable.Part).OfType<string>().Distinct()],
                load.Name, combination.ToString(), past.ToString()) with
            {
                Hint = isBack ? HintOf(load, past, after.Circuit) : null,
            });
        }
        return found.ToImmutable();
    }

    // Where the second feed passes a diode already, nobody needs to be told to put one in.
    private static string HintOf(LoadStudy load, PositionSet past, Circuit circuit)
    {
        string? diode = load.Paths.Select(p => p.HotWay.Concat(p.GroundWay)).Where(way => !way.Contains(past.Variable.Part))
            .SelectMany(way => way).FirstOrDefault(id => circuit.FindPart(id) is { } part && part.Kind.Elements.Any(e => e.Type == ElementType.Diode));
        return diode is null ? "find where the second feed joins the first and part them, by a diode, a relay or a switch with two poles"
            : $"{diode} keeps the two feeds apart; if {load.Name} is meant to have both, mark it at {past.Variable.Part ?? past.Variable.ToString()}, for who opens that relies on it";
    }

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
