using System.Collections.Immutable;
using Hotside.Alterations;
using Hotside.Circuits;
using Hotside.Notation;

namespace Hotside.Reading;

/// <summary>Writes the numbered changes of an alteration as lines that make the same changes again.</summary>
internal sealed class ChangeWriter(Alteration alteration)
{
    private readonly Circuit before = alteration.Before, after = alteration.After;

    public IEnumerable<string> Lines()
    {
        foreach (var change in alteration.Changes)
        {
            string[] lines = [.. change.Acts.Select(Line)];
            // A reason behind the sentence of a "do" would be part of the sentence.
            int first = Math.Max(0, Array.FindIndex([.. change.Acts], a => a is not Work));
            if (change.Reason is { } reason) lines[first] = $"{lines[first]}, because {reason}";
            for (int i = 0; i < lines.Length; i++)
                yield return (lines.Length == 1 ? "- " : i == 0 ? "- - " : "  - ") + Written(lines[i]);
        }
    }

    // A line with a colon is a key and its value to YAML; both are quoted as one where either needs quotes.
    private static string Written(string line)
    {
        int colon = line.IndexOf(": ", StringComparison.Ordinal);
        if (colon < 0) return YamlQuotes.Of(line);
        string head = line[..colon], rest = line[(colon + 2)..];
        return YamlQuotes.Of(rest) == rest && YamlQuotes.Of(head) == head ? line : YamlQuotes.Of(line);
    }

    private string Line(Act act)
    {
        string ids = string.Join(", ", act.Items);
        return act switch
        {
            TakeOut => "take out " + ids,
            Fit => $"fit {ids}: {LineWriter.Part(LineWriter.WithoutDefault(after.FindPart(act.Items[0])!.Spec), after)}",
            Replace replace => $"replace {ids}{(replace.Reversed ? " reversed" : "")}: {new ReplacementWriter(alteration, replace).Line()}",
            Reverse => "reverse " + ids,
            Remount => $"remount {ids}: {LineWriter.Case(after.FindPart(ids)!.Spec.Case!, after)}",
            Run => $"run {ids}: {LineWriter.Wire(after.FindConductor(ids)!, after)}",
            Move move => $"move {ids}: {string.Join(", ", move.Ends.Select(e => $"{before.TextOf(e.From)} to {after.TextOf(e.To)}").Concat(Renewed(act.Items, move.Ends)))}",
            Renew => $"renew {ids}: {string.Join(", ", Renewed(act.Items, []))}",
            Cut cut => $"cut {act.Items[0]}: {after.TextOf(cut.First)} and {after.TextOf(cut.Second)} as {act.Items[1]}",
            Work work => $"do {ids}: {work.Sentence}",
            _ => throw new ArgumentOutOfRangeException(nameof(act), act, "There is no line for this act."),
        };
    }

    // What is not said of a renewed wire stays, so only what differs is written.
    private IEnumerable<string> Renewed(ImmutableArray<string> ids, ImmutableArray<MovedEnd> moved)
    {
        var now = after.FindConductor(ids[0])!.Wire;
        bool New(Func<Wire, object?> said) => ids.Any(id => !Equals(said(before.FindConductor(id)!.Wire), said(after.FindConductor(id)!.Wire)));
        // New copper of the old size and colour: saying so is what takes bad joints, a bad state and what was measured away.
        bool isFresh = ids.Any(id => before.FindConductor(id)! is var was
            && (WireMaterial.IsRemade(WireMaterial.Remade(was.Wire, moved.Any(m => m.From == was.From), moved.Any(m => m.From == was.To)), now) || (was.Wire.Condition is not null && now.Condition is null)));
        bool hue = isFresh || New(w => w.Colour) || New(w => w.IsBraid);
        return LineWriter.WireItems(new()
        {
            Size = isFresh || New(w => w.Size) ? now.Size : null,
            Colour = hue ? now.Colour : null,
            IsBraid = hue && now.IsBraid,
            LengthInMetres = New(w => w.LengthInMetres) ? now.LengthInMetres : null,
            ResistanceInOhms = New(w => w.ResistanceInOhms) ? now.ResistanceInOhms : null,
            TemperatureInCelsius = New(w => w.TemperatureInCelsius) ? now.TemperatureInCelsius : null,
            Insulation = New(w => w.Insulation) ? now.Insulation : null,
            Loom = New(w => w.Loom) ? now.Loom : null,
            Name = New(w => w.Name) ? now.Name : null,
            Place = New(w => w.Place) ? now.Place : null,
            Role = New(w => w.Role) ? now.Role : default,
            Condition = New(w => w.Condition) ? now.Condition : null,
        });
    }
}
