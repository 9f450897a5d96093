using System.Collections.Immutable;
using Hotside.Alterations;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Kinds;
using Hotside.Notation;

namespace Hotside.Reading;

/// <summary>Reads a job file: everything wrong with it is reported in one run, and nothing it says throws.</summary>
internal sealed class JobReader
{
    private readonly ReadingContext context;
    private readonly Sections sections;
    private readonly Func<string, string?> include;

    private readonly bool isAfter;

    private YamlText? done;

    private YamlNode? rules;

    private ImmutableArray<KeyValuePair<string, string>> fittedBy = [];

    private JobReader(Catalogue kinds, Func<string, string?> include, bool isAfter)
    {
        context = new(kinds);
        sections = new(context, include, isAfter);
        this.include = include;
        this.isAfter = isAfter;
    }

    /// <summary>Reads a job.</summary>
    /// <param name="file">The name that places bear.</param>
    /// <param name="text">The file's text.</param>
    /// <param name="kinds">The kinds that it may use.</param>
    /// <param name="include">The text of another file by its path from the job's folder; <see langword="null"/> when there is none.</param>
    public static JobReading Read(string file, string text, Catalogue kinds, Func<string, string?> include) =>
        new JobReader(kinds, include, isAfter: false).Read(file, text);

    private JobReading Read(string file, string text)
    {
        Alteration? alteration = null;
        string title = "";
        ImmutableArray<KeyValuePair<string, string>> block = [];
        ImmutableArray<Acceptance> accepted = [];
        ImmutableArray<WrittenReading> readings = [];
        if (sections.Read(file, text))
        {
            Version();
            title = Text("title") ?? "";
            block = TitleBlockReader.Read(sections.Find("title block"), context);
            alteration = Alteration();
            if (!isAfter) readings = [.. Readings()];
            if (!isAfter) accepted = AcceptanceReader.Read(sections.Entries("accept"), id => alteration is null || IsItem(alteration.Before, id) || IsItem(alteration.After, id), context);
        }
        return new(title, block, alteration, context.Places.ToImmutableDictionary(StringComparer.Ordinal), Sorted(),
            sections.Sources.ToImmutableDictionary(StringComparer.Ordinal)) { Accepted = accepted, Done = done, Rules = rules, Fitted = fittedBy, Readings = readings, LaterPlaces = context.LaterPlaces.ToImmutableDictionary(StringComparer.Ordinal) };
    }

    private IEnumerable<WrittenReading> Readings() =>
        Readings(sections.Find("readings"), isLater: false).Concat(Readings((sections.Find("alteration") as YamlMap)?.Find("readings")?.Value, isLater: true));

    private IEnumerable<WrittenReading> Readings(YamlNode? node, bool isLater)
    {
        if (node is not (null or YamlList or YamlText { Value.Length: 0 })) context.Report(ReadingProblems.WrongShape.At(node.Span, "readings", "a list, a line for each, such as \"- H1.1 = 3.1 V @ horn pressed\""));
        return node is not YamlList list ? [] : list.Items.OfType<YamlText>().Where(t => t.Value.Length > 0).Select(t => new WrittenReading(t.Value, t.Span, isLater));
    }

    private static bool IsItem(Circuit circuit, string id) => circuit.FindPart(id) is not null || circuit.FindConductor(id) is not null;

    // By place, then code; what has no place comes last.
    private ImmutableArray<Diagnostic> Sorted() =>
    [
        .. context.Problems.Select(p => p.Span is null && p.Items.Select(i => context.Places.GetValueOrDefault(i)).FirstOrDefault(s => s is not null) is { } place ? p with { Span = place } : p)
            .OrderBy(p => p.Span is null ? 1 : 0).ThenBy(p => p.Span?.File, StringComparer.Ordinal).ThenBy(p => p.Span?.Line).ThenBy(p => p.Span?.Column).ThenBy(p => p.Code, StringComparer.Ordinal),
    ];

    private void Version()
    {
        if (sections.Find("hotside") is not { } node)
            context.Report(ReadingProblems.NoVersion.At(sections.Top) with { Hint = "begin with the line \"hotside: 1\"" });
        else if (node is not YamlText { Value: "1" })
            context.Report(ReadingProblems.WrongVersion.At(node.Span, node is YamlText text ? text.Value : "this") with { Hint = "this program reads version 1" });
    }

    private string? Text(string section)
    {
        var node = sections.Find(section);
        if (node is not null and not YamlText) context.Report(ReadingProblems.WrongShape.At(node.Span, section, "a text"));
        return node is YamlText { Value.Length: > 0 } text ? text.Value : null;
    }

    // Whether every line could be read: of a part whose wire, or whose section, has a typing mistake nobody can say that it has no wires.
    private bool IsRead => context.Problems.All(p => p.Severity < Severity.Error || !p.Code.StartsWith("HS1", StringComparison.Ordinal));

    private Alteration? Alteration()
    {
        if (new CircuitReader(sections, context).Read() is not { } before) return null;
        foreach (var problem in CircuitCheck.Of(before, IsRead)) context.Report(problem);
        var section = sections.Find("alteration") as YamlMap;
        if (sections.Find("alteration") is { } other and not YamlMap and not YamlText { Value.Length: 0 })
            context.Report(ReadingProblems.WrongShape.At(other.Span, "alteration", "a map with title, system and changes"));
        if (section is null || isAfter) return Unaltered(before);
        Check(section);
        rules = section.Find("order")?.Value;
        done = section.Find("done")?.Value as YamlText;
        if (section.Find("done")?.Value is { } odd and not YamlText) context.Report(ReadingProblems.WrongShape.At(odd.Span, "done", "a text such as \"1-6, 8, w4 off\""));
        string title = section.Find("title")?.Value is YamlText text ? text.Value : "";
        var planned = section.Find("after")?.Value is YamlText file ? Between(before, title, file, section) : Edited(before, title, section);
        return planned is null ? null : AsFitted(planned, section);
    }

    private Alteration Unaltered(Circuit before)
    {
        before = before.With(Settings(SettableItems.Of(before), SettableItems.Of(before), null).Before);
        before = before.With(Sequences(before.Settings, before.Settings).Before);
        return new("", before, before, []);
    }

    private void Check(YamlMap section)
    {
        foreach (var entry in section.Entries.Where(e => !Sections.OfAlteration.Contains(e.Key.Value)))
            context.Report(ReadingProblems.UnknownSection.At(entry.Key.Span, entry.Key.Value) with { Hint = Names.Meant(entry.Key.Value, Sections.OfAlteration) });
    }

    private Alteration? Edited(Circuit before, string title, YamlMap section)
    {
        var system = section.Find("system") is { } said ? SystemReader.Read(said.Value, before.System, context) ?? before.System : before.System;
        // Sizes without a unit mean the same throughout a file.
        var (groups, places) = section.Find("changes") is { } changes ? new ChangeReader(context).Read(changes.Value) : ([], []);
        var result = EditList.Apply(before, title, system, groups);
        var (first, second) = Settings(SettableItems.Of(before), new(result.Parts, result.Alteration?.After.Conductors ?? before.Conductors), section);
        foreach (var (problem, group, edit) in result.Problems.Where(p => !p.Diagnostic.Items.Any(context.Unreadable.Contains)))
            context.Report(problem with { Span = group < 0 ? section.Span with { EndLine = section.Span.Line, EndColumn = section.Span.Column + 1 } : AtWord(problem, places[group][edit]) });
        var (steps, laterSteps) = Sequences(first, second);
        if (result.Alteration?.With(first, second).With(steps, laterSteps) is { } alteration)
        {
            var known = context.Problems.ToArray();
            // What was loose before is not told twice.
            foreach (var problem in CircuitCheck.Of(alteration.After, IsRead).Where(p => known.All(k => k.Message != p.Message)))
                context.Report(problem.Items.Select(i => context.Places.GetValueOrDefault(i)).FirstOrDefault(s => s is not null) is null ? problem with { Span = section.Span with { EndLine = section.Span.Line, EndColumn = section.Span.Column + 1 } } : problem);
            return alteration;
        }
        return null;
    }

    private Alteration? Between(Circuit before, string title, YamlText file, YamlMap section)
    {
        if (sections.Load(file) is not { } loaded) return null;
        // A complete file of its own: its ids are its own affair until they are compared, and what it alters itself is another job.
        var reading = new JobReader(context.Kinds, include, isAfter: true).Read(loaded.Path, loaded.Text);
        foreach (var problem in reading.Diagnostics) context.Report(problem);
        foreach (var (name, source) in reading.Sources) sections.Sources.TryAdd(name, source);
        if (reading.Alteration is not { } other) return null;
        var same = MapForm.Texts(section, "same").SelectMany(t => LineItems.Split(t, context.Problems))
            .Select(i => i.Text.Split('=', StringSplitOptions.TrimEntries)).Where(p => p.Length == 2).Select(p => (p[0], p[1]));
        before = before.With(Settings(SettableItems.Of(before), SettableItems.Of(other.Before), section).Before);
        before = before.With(Sequences(before.Settings, other.Before.Settings).Before);
        try
        {
            return Alterations.Alteration.Between(before, other.Before, title, [.. same]);
        }
        catch (ArgumentException e)
        {
            context.Report(ReadingProblems.BadSame.At(section.Find("same")?.Value.Span ?? section.Span, e.Message.Split(" (Parameter", 2)[0]));
            return null;
        }
    }

    // The word at fault within its line of the list.
    private SourceSpan AtWord(Diagnostic problem, SourceSpan line) => problem.Word is { } word && sections.Sources.TryGetValue(line.File, out var source) ? source.Find(word, line) ?? line : line;

    // A list of changes, or a map with it and who wrote it when.
    private Alteration? AsFitted(Alteration planned, YamlMap section)
    {
        if (section.Find("as fitted")?.Value is not { } node || node is YamlText { Value.Length: 0 }) return planned;
        if (node is YamlMap { Entries: var entries } map && map.Find("changes") is { } inner)
        {
            string[] known = ["date", "by", "changes"];
            foreach (var odd in entries.Where(e => !known.Contains(e.Key.Value))) context.Report(ReadingProblems.UnknownSection.At(odd.Key.Span, odd.Key.Value) with { Hint = Names.Meant(odd.Key.Value, known) });
            fittedBy = [.. entries.Where(e => e.Key.Value is "date" or "by").Select(e => KeyValuePair.Create(e.Key.Value, (e.Value as YamlText)?.Value ?? ""))];
            node = inner.Value;
        }
        var (groups, places) = new ChangeReader(context).Read(node);
        var result = FittedOtherwise.Apply(planned, groups);
        foreach (var (problem, group, edit) in result.Problems.Where(p => !p.Diagnostic.Items.Any(context.Unreadable.Contains)))
            context.Report(problem with { Span = group < 0 ? node.Span : AtWord(problem, places[group][edit]) });
        if (result.Alteration is not { } fitted) return null;
        // Settings keep what is still there to be set.
        var after = planned.After.Settings.Select(s => SettingsAfter.Of(s, fitted.After.Parts, fitted.After.Conductors));
        foreach (var problem in CircuitCheck.Of(fitted.After, IsRead).Where(p => context.Problems.All(k => k.Message != p.Message))) context.Report(problem);
        return fitted.With(planned.Before.Settings, [.. after]);
    }

    private (ImmutableArray<Sequence> Before, ImmutableArray<Sequence> After) Sequences(ImmutableArray<Setting> before, ImmutableArray<Setting> after) =>
        SequenceReader.Read(sections.Entries("sequences"), before, after, context);

    private (ImmutableArray<Setting> Before, ImmutableArray<Setting> After) Settings(SettableItems before, SettableItems after, YamlMap? alteration)
    {
        var reader = new SettingReader(context, before, after);
        var common = reader.Read(new([.. sections.Entries("settings")], sections.Top));
        if (alteration?.Find("settings")?.Value is not YamlMap own) return common;
        var later = new SettingReader(context, after, after).Read(own).After;
        return (common.Before, [.. common.After.Where(s => later.All(l => l.Name != s.Name)), .. later]);
    }
}
