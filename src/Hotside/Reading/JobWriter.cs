using System.Collections.Immutable;
using System.Text;
using Hotside.Alterations;
using Hotside.Circuits;
using Hotside.Kinds;
using Hotside.Notation;

namespace Hotside.Reading;

/// <summary>Writes a job in the line form. Reading it again gives the same circuits and the same changes.</summary>
internal sealed class JobWriter
{
    private readonly StringBuilder text = new();

    /// <summary>A whole job.</summary>
    /// <param name="title">Its title; may be empty.</param>
    /// <param name="titleBlock">The fields of its title block.</param>
    /// <param name="alteration">Its circuits and changes; kinds that the library lacks or has otherwise are written into the file.</param>
    /// <param name="notes">What else it says; nothing when left out.</param>
    public static string Write(string title, ImmutableArray<KeyValuePair<string, string>> titleBlock, Alteration alteration, JobNotes? notes = null)
    {
        notes ??= new();
        var writer = new JobWriter();
        writer.Head(title, titleBlock, alteration);
        writer.Circuit(alteration.Before);
        writer.Settings("settings", "", Common(alteration));
        writer.Sequences(alteration);
        writer.Readings("", notes.Readings.Where(r => !r.IsAfter));
        writer.Alteration(alteration.Plan ?? alteration, notes.Readings);
        if (notes.Done is { Length: > 0 } done && !alteration.Changes.IsEmpty) writer.text.Append("  done: ").Append(YamlQuotes.Of(done)).Append('\n');
        if (notes.Rules is not null && !alteration.Changes.IsEmpty) writer.Rules(notes.Rules);
        if (alteration.Otherwise is { } otherwise) writer.Otherwise(otherwise, notes.FittedBy);
        writer.Section("accept", "", notes.Accepted.Select(a => (a.Key, a.Reason)));
        return writer.text.ToString();
    }

    /// <summary>The text by which circuits are compared: equal circuits have equal texts.</summary>
    public static string Text(Circuit circuit) => Write("", [], new("", circuit, circuit, []));

    private void Head(string title, ImmutableArray<KeyValuePair<string, string>> titleBlock, Alteration alteration)
    {
        text.Append("hotside: 1\n");
        if (title.Length > 0) text.Append("title: ").Append(YamlQuotes.Of(title)).Append('\n');
        Section("title block", "", titleBlock.Select(f => (f.Key, f.Value)));
        text.Append("system: ").Append(YamlQuotes.Of(LineWriter.System(alteration.Before.System, alteration.Before))).Append('\n');
        PartKind[] own =
        [
            .. alteration.Before.Parts.Concat(alteration.After.Parts).Select(p => p.Kind.AsWritten).DistinctBy(k => k.Id).Where(IsOwn).OrderBy(k => k.Id, StringComparer.Ordinal),
        ];
        if (own.Length > 0) text.Append("kinds:\n");
        foreach (var kind in own)
        {
            text.Append("  ").Append(kind.Id).Append(":\n");
            foreach (string line in KindWriter.Lines(kind)) text.Append("    ").Append(line).Append('\n');
        }
    }

    private static bool IsOwn(PartKind kind) =>
        Catalogue.Standard.Find(kind.Id) is not { } known || (!ReferenceEquals(known, kind) && !KindWriter.Lines(known).SequenceEqual(KindWriter.Lines(kind)));

    private void Circuit(Circuit circuit)
    {
        Section("parts", "", circuit.Parts.Select(p => (p.Id, LineWriter.Part(LineWriter.WithoutDefault(p.Spec), circuit))));
        Section("wires", "", circuit.Conductors.Select(c => (c.Id, LineWriter.Wire(c, circuit))));
    }

    private void Settings(string name, string indent, IEnumerable<Setting> settings) =>
        Section(name, indent, settings.Select(s => (s.Name, string.Join(", ", LineWriter.SettingItems(s)))));

    // A list, since a setting's name may hold any word.
    private void Sequences(Alteration alteration)
    {
        Sequence[] all = [.. alteration.Before.Sequences.Concat(alteration.After.Sequences).DistinctBy(s => s.Name)];
        if (all.Length > 0) text.Append("sequences:\n");
        foreach (var sequence in all)
        {
            text.Append("  ").Append(YamlQuotes.Of(sequence.Name)).Append(":\n");
            foreach (var step in sequence.Steps) text.Append("    - ").Append(YamlQuotes.Of(step.Name)).Append('\n');
        }
    }

    private void Readings(string indent, IEnumerable<WrittenReading> readings)
    {
        var all = readings.ToArray();
        if (all.Length > 0) text.Append(indent).Append("readings:\n");
        foreach (var reading in all) text.Append(indent).Append("  - ").Append(YamlQuotes.Of(reading.Text)).Append('\n');
    }

    private void Alteration(Alteration alteration, ImmutableArray<WrittenReading> readings)
    {
        if (ReferenceEquals(alteration.Before, alteration.After) && alteration.Title.Length == 0) return;
        text.Append("alteration:\n");
        if (alteration.Title.Length > 0) text.Append("  title: ").Append(YamlQuotes.Of(alteration.Title)).Append('\n');
        text.Append("  system: ").Append(YamlQuotes.Of(LineWriter.System(alteration.After.System, alteration.After))).Append('\n');
        Settings("settings", "  ", alteration.After.Settings.Where(s => !Agrees(s, alteration)));
        Readings("  ", readings.Where(r => r.IsAfter));
        if (alteration.Changes.IsEmpty) return;
        Changes("changes", alteration);
    }

    private void Changes(string section, Alteration alteration, string indent = "  ")
    {
        text.Append(indent).Append(section).Append(":\n");
        foreach (string line in new ChangeWriter(alteration).Lines()) text.Append(indent).Append("  ").Append(line).Append('\n');
    }

    private void Otherwise(Alteration fitted, ImmutableArray<KeyValuePair<string, string>> by)
    {
        if (by.IsEmpty)
        {
            Changes("as fitted", fitted);
            return;
        }
        text.Append("  as fitted:\n");
        foreach (var (key, value) in by) text.Append("    ").Append(key).Append(": ").Append(YamlQuotes.Of(value)).Append('\n');
        Changes("changes", fitted, "    ");
    }

    private void Rules(YamlNode rules)
    {
        text.Append("  order:\n");
        foreach (var rule in (rules is YamlList list ? list.Items : [rules]).OfType<YamlMap>())
            for (int i = 0; i < rule.Entries.Length; i++)
                if (rule.Entries[i].Value is YamlText said)
                    text.Append(i == 0 ? "    - " : "      ").Append(YamlQuotes.Of(rule.Entries[i].Key.Value)).Append(": ").Append(YamlQuotes.Of(said.Value)).Append('\n');
    }

    // One line serves both circuits where they agree; what only one of them has is silent in the other.
    private static IEnumerable<Setting> Common(Alteration alteration) =>
        from was in alteration.Before.Settings
        let now = alteration.After.Settings.FirstOrDefault(s => s.Name == was.Name)
        select now is null || !Agrees(now, alteration) ? was : was with
        {
            Positions = [.. Merged(was.Positions, now.Positions)],
            Values = [.. Merged(was.Values, now.Values)],
        };

    // Both orders are kept: what only the second has stands before the next that both have.
    private static IEnumerable<T> Merged<T>(ImmutableArray<T> first, ImmutableArray<T> second)
    {
        int done = 0;
        foreach (var item in first)
        {
            int at = second.IndexOf(item);
            for (; done < at; done++)
                if (!first.Contains(second[done])) yield return second[done];
            yield return item;
        }
        for (; done < second.Length; done++)
            if (!first.Contains(second[done])) yield return second[done];
    }

    private static bool Agrees(Setting now, Alteration alteration) =>
        alteration.Before.Settings.FirstOrDefault(s => s.Name == now.Name) is { } was
        && was.Positions.Except(now.Positions).All(p => !Has(alteration.After, p.Part)) && now.Positions.Except(was.Positions).All(p => !Has(alteration.Before, p.Part))
        && was.Values.Except(now.Values).All(v => !v.IsThere(alteration.After.Parts, alteration.After.Conductors))
        && now.Values.Except(was.Values).All(v => !v.IsThere(alteration.Before.Parts, alteration.Before.Conductors));

    private static bool Has(Circuit circuit, string? part) => part is null || circuit.FindPart(part) is not null;

    private void Section(string name, string indent, IEnumerable<(string Key, string Value)> entries)
    {
        var all = entries.ToArray();
        if (all.Length == 0) return;
        text.Append(indent).Append(name).Append(":\n");
        foreach (var (key, value) in all) text.Append(indent).Append("  ").Append(YamlQuotes.Of(key)).Append(": ").Append(YamlQuotes.Of(value)).Append('\n');
    }
}
