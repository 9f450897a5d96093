using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Studies;

namespace Hotside.Wording;

/// <summary>What the contacts of a part carry, by the ratings of the loads fed through them.</summary>
/// <param name="Loads">The loads fed through it.</param>
/// <param name="Amperes">Their rated amperes together, as far as they are stated.</param>
/// <param name="Peak">The most of it that positions allow at once, by the combinations of each load.</param>
/// <param name="Unstated">The names of the loads that state none.</param>
internal sealed record CarriedCurrent(ImmutableArray<LoadStudy> Loads, double Amperes, double Peak, ImmutableArray<string> Unstated)
{
    /// <summary>The load that is on while it carries <see cref="Solved"/>.</summary>
    private LoadStudy? While { get; init; }

    /// <summary>What it carries with that load on, in amperes, worked out; <see langword="null"/> where that is not known.</summary>
    private double? Solved { get; init; }

    /// <summary>What a part carries.</summary>
    /// <param name="part">The part's id.</param>
    /// <param name="load">The load that is told of; <see langword="null"/>: the first that it feeds.</param>
    /// <param name="study">The circuit.</param>
    public static CarriedCurrent Of(string part, LoadStudy? load, CircuitStudy study)
    {
        var rated = Of(part, study);
        var on = load ?? rated.Loads.FirstOrDefault();
        double? amperes = on is null ? null : study.FiguresOf(on)?.Through(part).Amperes;
        return rated with { While = on, Solved = amperes > 0.0005 ? amperes : null };
    }

    private static CarriedCurrent Of(string part, CircuitStudy study)
    {
        ImmutableArray<LoadStudy> loads = [.. study.Loads.Where(l => (l.Part.Id != part || l.Element.Type != ElementType.Coil) && !l.Element.IsInternal && !l.IsNeverFed && l.Side != SwitchedSide.InSeries)
            .Where(l => l.SwitchedBy.Contains(part) || (l.Chain.Contains(part) && l.Paths.Any(p => p.HotWay.Concat(p.GroundWay).Contains(part))))];
        return new(loads, loads.Sum(Rated), PeakOf(loads), [.. loads.Where(l => VerdictCaption.Amperes(l) is null).Select(NameOf)]);
    }

    /// <summary>In words: <c>7.8 A for H1</c>; <c>9.6 A with E1 on; 14 A by ratings if all it feeds is on at once (E1 10 A, E2 4 A)</c>.</summary>
    public string InWords() => Solved is not null && Loads.Length > 1 ? $"{Briefly()}; {ByRatings()}" : Briefly();

    /// <summary>The same for a comparison, without what else it may carry: <c>9.6 A with E1 on</c>.</summary>
    public string Briefly() =>
        Solved is not { } amperes ? ByRatings()
        : QuantityWords.Amperes(amperes) + (Loads.Length > 1 ? $" with {While!.Name} on" : Loads.IsEmpty ? "" : " for " + NameOf(Loads[0]));

    private string ByRatings()
    {
        if (Loads.IsEmpty) return "the current of a string, which is below the ratings in it";
        string unstated = Unstated.IsEmpty ? "" : $"; {PartWords.And(Unstated)} {(Unstated.Length == 1 ? "states" : "state")} no current";
        var stated = Loads.Where(l => VerdictCaption.Amperes(l) is not null).ToArray();
        if (stated.Length == 0) return $"the current of {PartWords.And(Unstated)}, not stated";
        if (stated.Length == 1) return $"{Drawn(stated[0])}, the rating of {NameOf(stated[0])}{unstated}";
        const int most = 6;
        string each = string.Join(", ", stated.Take(most).Select(l => $"{NameOf(l)} {Drawn(l)}"));
        string sum = Peak < Amperes - 0.001 ? $"up to {QuantityWords.Amperes(Peak)} by ratings, not all at once" : $"{QuantityWords.Amperes(Amperes)} by ratings if all it feeds is on at once";
        return $"{sum} ({each}{(stated.Length > most ? $" and {Numbers.Whole(stated.Length - most)} more" : "")}){unstated}";
    }

    private static string Drawn(LoadStudy load) => load.Part.Rated(load.Element.Name, Unit.Ampere) is { } said ? QuantityWords.StatedAmperes(said) : QuantityWords.Amperes(Rated(load));

    private static double Rated(LoadStudy load) => VerdictCaption.Amperes(load) ?? 0;

    // With each combination goes what some combination of its own allows beside it.
    private static double PeakOf(ImmutableArray<LoadStudy> loads) =>
        loads.SelectMany(l => l.Control.Whole is null ? l.Control.Any : []).Select(c => loads.Where(l => l.Control.Whole is not null || l.Control.Any.Any(o => AreCompatible(c, o))).Sum(Rated))
            .DefaultIfEmpty(loads.Sum(Rated)).Max();

    private static bool AreCompatible(Combination one, Combination other) =>
        one.All.All(s => other.All.All(t => t.Variable != s.Variable || t.Positions.Intersect(s.Positions).Any()));

    private static string NameOf(LoadStudy load) => load.Element.Type == ElementType.Coil && load.Part.Kind.Actuators.Length > 0 ? $"the coil of {load.Part.Id}" : load.Name;
}
