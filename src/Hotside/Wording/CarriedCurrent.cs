using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Studies;

namespace Hotside.Wording;

/// <summary>What the contacts of a part carry, by the ratings of the loads fed through them.</summary>
/// <param name="Loads">The loads fed through it.</param>
/// <param name="Amperes">Their rated amperes together, as far as they are stated.</param>
/// <param name="Unstated">The names of the loads that state none.</param>
internal sealed record CarriedCurrent(ImmutableArray<LoadStudy> Loads, double Amperes, ImmutableArray<string> Unstated)
{
    public static CarriedCurrent Of(string part, CircuitStudy study)
    {
        ImmutableArray<LoadStudy> loads = [.. study.Loads.Where(l => l.Part.Id != part && !l.Element.IsInternal && l.Side is not (SwitchedSide.Dead or SwitchedSide.InSeries))
            .Where(l => l.SwitchedBy.Contains(part) || (l.Chain.Contains(part) && l.Paths.Any(p => p.HotWay.Concat(p.GroundWay).Contains(part))))];
        return new(loads, loads.Sum(l => VerdictCaption.Amperes(l) ?? 0), [.. loads.Where(l => VerdictCaption.Amperes(l) is null).Select(NameOf)]);
    }

    /// <summary>In words: <c>8 A, the rating of H1</c>; <c>14 A if all are on: E1 10 A, E2 4 A</c>.</summary>
    public string InWords()
    {
        if (Loads.IsEmpty) return "nothing";
        string unstated = Unstated.IsEmpty ? "" : $"; {PartWords.And(Unstated)} {(Unstated.Length == 1 ? "states" : "state")} no current";
        var stated = Loads.Where(l => VerdictCaption.Amperes(l) is not null).ToArray();
        if (stated.Length == 0) return $"the current of {PartWords.And(Unstated)}, not stated";
        if (stated.Length == 1) return $"{QuantityWords.Amperes(Amperes)}, the rating of {NameOf(stated[0])}{unstated}";
        const int most = 6;
        string each = string.Join(", ", stated.Take(most).Select(l => $"{NameOf(l)} {QuantityWords.Amperes(VerdictCaption.Amperes(l)!.Value)}"));
        return $"{QuantityWords.Amperes(Amperes)} by ratings if all it feeds is on at once ({each}{(stated.Length > most ? $" and {Numbers.Whole(stated.Length - most)} more" : "")}){unstated}";
    }

    private static string NameOf(LoadStudy load) => load.Element.Type == ElementType.Coil && load.Part.Kind.Actuators.Length > 0 ? $"the coil of {load.Part.Id}" : load.Name;
}
