using System.Collections.Immutable;
using Hotside.Studies;

namespace Hotside.Wording;

/// <summary>What an alteration changes about a load, in sentences.</summary>
internal static class LoadChanges
{
    public static ImmutableArray<string> Of(string name, LoadStudy[] before, LoadStudy[] after, Study study, Vocabulary words)
    {
        var sentences = ImmutableArray.CreateBuilder<string>();
        foreach (var now in after)
            if (before.FirstOrDefault(l => l.Element.Name == now.Element.Name) is { } was)
                sentences.AddRange(Between(was, now, study, words));
        if (before.Length == 0) sentences.Add($"{name} is new.");
        if (after.Length == 0) sentences.Add($"{name} goes.");
        foreach (string id in Switches(before, study.Before).Union(Switches(after, study.After)))
        {
            if (study.Before.Circuit.FindPart(id) is null || study.After.Circuit.FindPart(id) is null) continue;
            string was = Carried(id, before, study.Before), now = Carried(id, after, study.After);
            if (was != now) sentences.Add($"{PartWords.Named(id, study.After.Circuit, words)} carried {was}; now it carries {now}.");
        }
        int[] numbers = [.. before.Concat(after).SelectMany(Items).Append(name.Split('.')[0]).Distinct().SelectMany(i => study.Alteration.NumbersOf(i)).Distinct().Order()];
        if (numbers.Length > 0)
            sentences.Add($"{(numbers.Length == 1 ? "Change" : "Changes")} {PartWords.And([.. numbers.Select(n => study.Alteration.Changes.First(c => c.Number == n).Label)])} of the list {(numbers.Length == 1 ? "touches" : "touch")} it or its ways.");
        return sentences.Count == 0 ? [$"Nothing about {name} changes."] : sentences.ToImmutable();
    }

    private static IEnumerable<string> Between(LoadStudy was, LoadStudy now, Study study, Vocabulary words)
    {
        yield return was.Side == now.Side ? $"{now.Name} is {SideText.Of(now.Side, words)} before and after."
            : $"{now.Name} was {SideText.Of(was.Side, words)}; now it is {SideText.Of(now.Side, words)}.";
        if (was.Control.ToString() != now.Control.ToString())
            yield return $"It came on when {Clause(was, study.Before, words)}; now it comes on when {Clause(now, study.After, words)}.";
        else if (!now.SwitchedBy.SequenceEqual(was.SwitchedBy) || !now.Chain.SequenceEqual(was.Chain))
            yield return $"It is operated as it was: it is on when {Clause(now, study.After, words)}.";
        string[] fresh = [.. now.Chain.Except(was.Chain)], gone = [.. was.Chain.Except(now.Chain)];
        if (fresh.Length > 0) yield return $"{PartWords.And([.. fresh.Select(f => PartWords.Named(f, study.After.Circuit, words))])} now {(fresh.Length == 1 ? "stands" : "stand")} between the switch and {now.Name}.";
        if (gone.Length > 0) yield return $"{PartWords.And([.. gone.Select(f => PartWords.Named(f, study.Before.Circuit, words))])} no longer {(gone.Length == 1 ? "stands" : "stand")} in between.";
    }

    private static string Clause(LoadStudy load, CircuitStudy study, Vocabulary words) =>
        load.Control.IsAlways ? "its source is connected" : load.Control.Any.IsEmpty ? "nothing whatever is done" : PartWords.Clause(load.Control, study.Circuit, words);

    private static string Carried(string id, LoadStudy[] loads, CircuitStudy study) =>
        CarriedCurrent.Of(id, loads.FirstOrDefault(l => Switches([l], study).Contains(id)), study).Briefly();

    private static IEnumerable<string> Switches(LoadStudy[] loads, CircuitStudy study) =>
        loads.SelectMany(l => l.SwitchedBy.Concat(study.Loads.Where(c => l.Chain.Contains(c.Part.Id)).SelectMany(c => c.SwitchedBy))).Distinct();

    private static IEnumerable<string> Items(LoadStudy load) => load.Paths.SelectMany(p => p.HotWay.Concat(p.GroundWay));
}
