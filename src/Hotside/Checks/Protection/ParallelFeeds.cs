using Hotside.Diagnostics;

namespace Hotside.Checks.Protection;

/// <summary>Row 19: two fuses feed one load from one battery, so that pulling one leaves it live and each lets the other's share through.</summary>
internal static class ParallelFeeds
{
    public static readonly DiagnosticKind Kind = new("HS3319", Severity.Error, "Two fuses on one load",
        "{0} feed {1} side by side {2}: pulling one leaves all live, and a fault is fed through both")
    {
        Source = "common practice, no source",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit)
    {
        var found = from point in circuit.Points.All
                    where point.For is not null && !point.IsRunning
                    let ahead = FusesAhead.Of(circuit, point.For!, point)
                    let doubled = ahead.Where(a => ahead.Any(b => b != a && b.Feeds.Overlaps(a.Feeds))).Select(a => a.Protection).ToArray()
                    where doubled.Length > 1
                    select (Fuses: doubled, Load: point.For!, point.When);
        foreach (var group in found.GroupBy(f => string.Join(' ', f.Fuses.Select(e => $"{e.Id}.{e.Element!.Name}").Order(StringComparer.Ordinal)), StringComparer.Ordinal))
        {
            var first = group.First();
            string[] fuses = [.. first.Fuses.Select(e => e.Id).Distinct()], loads = [.. group.Select(f => f.Load.Part.Id).Distinct()];
            yield return Kind.Of([.. fuses, .. loads], Listing.Of(first.Fuses.Select(e => fuses.Length > 1 ? e.Id : $"{e.Id}.{e.Element!.Name}")), Listing.Of(group.Select(f => f.Load.Name)), first.When) with
            {
                Hint = "part the two feeds, or take one away, with the battery out; where both are meant, a diode or a relay keeps them apart",
            };
        }
    }
}
