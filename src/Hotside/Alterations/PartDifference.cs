using Hotside.Circuits;

namespace Hotside.Alterations;

/// <summary>What two circuits differ in about one part: another in its place, its leads swapped, its case mounted otherwise.</summary>
internal sealed record PartDifference(string Id, Edit Edit, Replacement? Replacement)
{
    /// <summary>Whether it is a battery, which comes back last.</summary>
    public bool IsBattery => Replacement?.New.Kind.Elements.Any(e => e is { IsSource: true, When: null }) == true;

    /// <summary>Where what was on a terminal goes.</summary>
    public End Carried(End end) => Replacement?.TerminalFor(end.Terminal) is { } terminal ? End.At(Id, terminal) : end;

    /// <summary>The difference; <see langword="null"/> when there is none.</summary>
    public static PartDifference? Of(Part was, Circuit before, Circuit after)
    {
        var now = after.FindPart(was.Id)!;
        bool another = was.Kind.Id != now.Kind.Id || !Same(was, now) || was.Name != now.Name;
        bool reversed = now.Kind.Terminals.Length == 2 && IsReversed(was, now, before, after);
        if (another || reversed)
        {
            var map = another ? Map(was, now, before, after) : [];
            var replacement = new Replacement(was, now, reversed, [.. map]);
            return new(was.Id, another ? new ReplaceEdit([was.Id], now.Spec, reversed, replacement.Map) : new ReverseEdit(was.Id), replacement);
        }
        return was.Spec.Case != now.Spec.Case ? new(was.Id, new RemountEdit(was.Id, now.Spec.Case!), null) : null;
    }

    private static bool Same(Part was, Part now) =>
        was.Ratings.SequenceEqual(now.Ratings) && was.Spec.Options.SequenceEqual(now.Spec.Options) && was.Joints.SequenceEqual(now.Joints);

    // Every wire that is on the part in both circuits has changed its terminal.
    private static bool IsReversed(Part was, Part now, Circuit before, Circuit after)
    {
        var pairs = Wires(was, before, after).ToArray();
        return pairs.Length > 0 && pairs.All(p => now.Kind.TerminalNamed(p.Old) is { } same && same != p.New);
    }

    // Where the terminal names differ, the wires that stayed tell which became which.
    private static IEnumerable<(string Old, string New)> Map(Part was, Part now, Circuit before, Circuit after)
    {
        var bare = new Replacement(was, now, false, []);
        return Wires(was, before, after).Where(p => bare.TerminalFor(p.Old) is null).DistinctBy(p => p.Old);
    }

    private static IEnumerable<(string Old, string New)> Wires(Part part, Circuit before, Circuit after) =>
        from wire in before.Conductors
        let now = after.FindConductor(wire.Id)
        where now is not null
        from pair in new[] { (Was: wire.From, Now: now.From), (Was: wire.To, Now: now.To) }
        where pair.Was.Part == part.Id && pair.Now.Part == part.Id
        select (pair.Was.Terminal, pair.Now.Terminal);
}
