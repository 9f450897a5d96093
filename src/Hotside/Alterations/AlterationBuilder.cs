using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;
using UnitsNet;

namespace Hotside.Alterations;

/// <summary>
/// Builds an alteration in code. Each call makes one number and checks at once, so that the line that throws is the line that is wrong; only what a
/// later line may cure, such as a wire still on a part that is taken out, waits for <see cref="Build"/>.
/// </summary>
/// <remarks>
/// Ends are written <c>K1.85</c>, <c>X1</c>, <c>chassis</c>; new ends are named as they are after the alteration. Numbers follow the order of work,
/// which is the order of the calls where that is sound. Not safe for use by several threads; what it builds is.
/// </remarks>
public sealed class AlterationBuilder
{
    private static readonly DiagnosticKind[] Curable =
        [TerminalsLost.StillWired, TerminalsLost.Unmapped, PartsAfter.JointLost, PartsAfter.CaseLost, PartsAfter.AssemblyLost];

    private readonly Circuit before;
    private readonly string title;
    private readonly List<EditGroup> groups = [];
    private readonly List<Setting> settings = [];
    private ElectricalSystem system;
    private EditResult latest;

    internal AlterationBuilder(Circuit before, string title)
    {
        this.before = before;
        this.title = title;
        system = before.System;
        latest = Apply(groups);
    }

    /// <summary>States the supply after; without it, it stays.</summary>
    /// <param name="voltage">The nominal voltage of the feed, above 0.</param>
    /// <param name="ground">Which pole is grounded.</param>
    /// <param name="isolatedReturn">The node that is the return of an isolated system, such as <c>X2</c>; else left out.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentException">The voltage is not above 0, or <paramref name="isolatedReturn"/> does not go with <paramref name="ground"/>.</exception>
    public AlterationBuilder System(ElectricPotential voltage, Ground ground, string? isolatedReturn = null)
    {
        var said = new CircuitBuilder(voltage, ground, isolatedReturn).System;
        system = system with { Volts = said.Volts, Ground = said.Ground, Return = said.Return };
        latest = Apply(groups);
        return this;
    }

    /// <summary>Fits a part.</summary>
    /// <param name="id">Its id, which nothing had before.</param>
    /// <param name="kind">Its kind.</param>
    /// <param name="details">Ratings, name, joints; what is left out takes the kind's default.</param>
    /// <param name="because">Why, in a few words.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentException">The id is taken, or the details name what does not exist.</exception>
    public AlterationBuilder Fit(string id, PartKind kind, PartDetails? details = null, string? because = null)
    {
        ArgumentNullException.ThrowIfNull(kind);
        ItemId.Check(id, nameof(id));
        return Add(new FitEdit([id], PartDetailsReader.Read(id, kind, details ?? new())), because,
            (EndNames.UnknownPart, nameof(details)), (EndNames.UnknownTerminal, nameof(details)), (EndNames.TerminalNotSaid, nameof(details)));
    }

    /// <summary>Takes out a part or a conductor.</summary>
    /// <param name="id">Its id. The conductors of a part go by lines of their own.</param>
    /// <param name="because">Why, in a few words.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentException">There is no such part or conductor, or it is changed already.</exception>
    public AlterationBuilder TakeOut(string id, string? because = null) => Add(new TakeOutEdit([Said(id)]), because);

    /// <summary>Takes out several parts and conductors under one number.</summary>
    /// <param name="ids">Their ids.</param>
    /// <param name="because">Why, in a few words.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentException">There are none, or one of them does not exist or is changed already.</exception>
    public AlterationBuilder TakeOut(IEnumerable<string> ids, string? because = null)
    {
        ArgumentNullException.ThrowIfNull(ids);
        string[] all = [.. ids];
        if (all.Length == 0 || all.Any(string.IsNullOrWhiteSpace)) throw new ArgumentException("At least one part or conductor is taken out, and each is named.", nameof(ids));
        return Add(new TakeOutEdit([.. all]), because, nameof(ids));
    }

    /// <summary>Puts another part in the place of one. Name, place, joints and case stay unless stated, ratings never.</summary>
    /// <param name="id">The part's id.</param>
    /// <param name="kind">The new part's kind.</param>
    /// <param name="details">What is said of the new part.</param>
    /// <param name="map">Old terminal to new terminal, for conductors on a terminal that the new part does not have.</param>
    /// <param name="because">Why, in a few words.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentException">There is no such part, it is changed already, or the details or the map name what does not exist.</exception>
    public AlterationBuilder Replace(
        string id, PartKind kind, PartDetails? details = null, IReadOnlyDictionary<string, string>? map = null, string? because = null) =>
        Replace(id, kind, details, map, because, reversed: false);

    /// <summary>Puts another part with two terminals in the place of one and swaps its leads, as a battery of the other polarity.</summary>
    /// <inheritdoc cref="Replace(string, PartKind, PartDetails?, IReadOnlyDictionary{string, string}?, string?)"/>
    public AlterationBuilder ReplaceReversed(
        string id, PartKind kind, PartDetails? details = null, IReadOnlyDictionary<string, string>? map = null, string? because = null) =>
        Replace(id, kind, details, map, because, reversed: true);

    /// <summary>Swaps the leads of a part with two terminals.</summary>
    /// <param name="id">The part's id.</param>
    /// <param name="because">Why, in a few words.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentException">There is no such part, it has not two terminals, or it is changed already.</exception>
    public AlterationBuilder Reverse(string id, string? because = null) => Add(new ReverseEdit(Said(id)), because);

    /// <summary>Puts a part's case on something else.</summary>
    /// <param name="id">The part's id.</param>
    /// <param name="on">What the case stands on, or <c>insulated</c>.</param>
    /// <param name="because">Why, in a few words.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentException">There is no such part, it has no case, it is changed already, or <paramref name="on"/> does not exist.</exception>
    public AlterationBuilder Remount(string id, string on, string? because = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(id);
        var mount = on == "insulated" ? CaseMount.Insulated : new(Landing(on, nameof(on)));
        return Add(new RemountEdit(id, mount), because);
    }

    /// <summary>Runs a conductor.</summary>
    /// <param name="id">Its id, which nothing had before.</param>
    /// <param name="from">One end.</param>
    /// <param name="to">The other end.</param>
    /// <param name="wire">What it is made of; left out when nothing is known.</param>
    /// <param name="because">Why, in a few words.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentException">The id is taken, or an end does not exist.</exception>
    public AlterationBuilder Run(string id, string from, string to, Wire? wire = null, string? because = null)
    {
        ItemId.Check(id, nameof(id));
        return Add(new RunEdit(new(id, Landing(from, nameof(from)), Landing(to, nameof(to)), wire ?? new())), because,
            (WiresAfter.SameEnds, nameof(to)), (WiresAfter.HangsFree, nameof(wire)));
    }

    /// <summary>Moves one end of a conductor.</summary>
    /// <param name="id">The conductor's id.</param>
    /// <param name="from">The end that moves, named as before.</param>
    /// <param name="to">Where it goes.</param>
    /// <param name="wire">What changes of the wire itself; <see langword="null"/>: nothing.</param>
    /// <param name="because">Why, in a few words.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentException">There is no such conductor, it has no such end, it is changed already, or <paramref name="to"/> does not exist.</exception>
    public AlterationBuilder Move(string id, string from, string to, Wire? wire = null, string? because = null) =>
        Add(new MoveEdit(Said(id), [(Written(from, nameof(from)), Landing(to, nameof(to)))], wire), because,
            (WiresAfter.EndNotThere, nameof(from)), (WiresAfter.NothingMoved, nameof(to)), (WiresAfter.SameEnds, nameof(to)), (WiresAfter.HangsFree, nameof(to)));

    /// <summary>Uses a conductor elsewhere: both its ends move, under one number.</summary>
    /// <param name="id">The conductor's id.</param>
    /// <param name="first">One end, named as before, and where it goes.</param>
    /// <param name="second">The other end, and where it goes.</param>
    /// <param name="wire">What changes of the wire itself; <see langword="null"/>: nothing.</param>
    /// <param name="because">Why, in a few words.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentException">There is no such conductor, it has no such end, it is changed already, or an end does not exist.</exception>
    public AlterationBuilder Move(string id, (string From, string To) first, (string From, string To) second, Wire? wire = null, string? because = null) =>
        Add(new MoveEdit(Said(id), [(Written(first.From, nameof(first)), Landing(first.To, nameof(first))), (Written(second.From, nameof(second)), Landing(second.To, nameof(second)))], wire),
            because, (WiresAfter.EndNotThere, nameof(first)), (WiresAfter.SameEndTwice, nameof(second)));

    /// <summary>Renews a conductor between the same ends.</summary>
    /// <param name="id">The conductor's id.</param>
    /// <param name="wire">What is new; what it leaves out stays.</param>
    /// <param name="because">Why, in a few words.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentException">There is no such conductor, it is changed already, or nothing is new.</exception>
    public AlterationBuilder Renew(string id, Wire wire, string? because = null)
    {
        ArgumentNullException.ThrowIfNull(wire);
        return Add(new RenewEdit([Said(id)], wire), because, (WiresAfter.NothingNew, nameof(wire)));
    }

    /// <summary>Cuts a conductor to insert something.</summary>
    /// <param name="id">The conductor's id; it keeps its first-written end.</param>
    /// <param name="first">Where it now ends.</param>
    /// <param name="second">Where the rest of it begins.</param>
    /// <param name="newId">The id of the rest.</param>
    /// <param name="because">Why, in a few words.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentException">There is no such conductor, it is changed already, an end does not exist, or the new id is taken.</exception>
    public AlterationBuilder Cut(string id, string first, string second, string newId, string? because = null)
    {
        ItemId.Check(newId, nameof(newId));
        return Add(new CutEdit(Said(id), Landing(first, nameof(first)), Landing(second, nameof(second)), newId), because,
            (EditRoster.IdTaken, nameof(newId)), (WiresAfter.SameEnds, nameof(first)));
    }

    /// <summary>Adds work that changes no circuit.</summary>
    /// <param name="id">The part or conductor it is done to.</param>
    /// <param name="sentence">What to do.</param>
    /// <param name="because">Why, in a few words; it becomes part of the sentence.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentException">There is no such part or conductor.</exception>
    public AlterationBuilder Do(string id, string sentence, string? because = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(sentence);
        return Add(new DoEdit(Said(id), because is null ? sentence.Trim() : $"{sentence.Trim()}, because {because.Trim()}"), null);
    }

    /// <summary>Adds a setting of the after circuit, or changes the one of that name.</summary>
    /// <param name="name">Its name, such as <c>horn pressed</c>.</param>
    /// <param name="positions">Part or condition and position in turn: <c>("S1", "pressed")</c>.</param>
    /// <returns>This builder.</returns>
    /// <exception cref="ArgumentException">The name is empty, or a part, condition or position does not exist so far.</exception>
    public AlterationBuilder Setting(string name, params (string Of, string Position)[] positions)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        ArgumentNullException.ThrowIfNull(positions);
        settings.RemoveAll(s => s.Name == name);
        settings.Add(new(name, [.. positions.Select(p => SetPosition.Named(latest.Parts, p.Of, p.Position))], []));
        return this;
    }

    /// <summary>The alteration as built so far. Settings stay, but for what they say of parts that are gone.</summary>
    /// <exception cref="ArgumentException">Something is left hanging, such as a wire on a part that is taken out.</exception>
    public Alteration Build()
    {
        var built = latest.Alteration ?? throw Refused(latest.Problems.First(p => p.Diagnostic.Severity >= Severity.Error).Diagnostic, null);
        var kept = before.Settings.Where(s => settings.All(own => own.Name != s.Name)).Select(s => SettingsAfter.Of(s, latest.Parts, built.After.Conductors));
        return built.With(before.Settings, [.. kept, .. settings]);
    }

    private AlterationBuilder Replace(
        string id, PartKind kind, PartDetails? details, IReadOnlyDictionary<string, string>? map, string? because, bool reversed)
    {
        ArgumentNullException.ThrowIfNull(kind);
        var pairs = (map ?? ImmutableDictionary<string, string>.Empty).OrderBy(p => p.Key, StringComparer.Ordinal).Select(p => (p.Key, p.Value));
        return Add(new ReplaceEdit([Said(id)], PartDetailsReader.Read(id, kind, details ?? new()), reversed, [.. pairs]), because,
            (EndNames.UnknownTerminal, map is null ? nameof(details) : nameof(map)), (EndNames.UnknownPart, nameof(details)), (EndNames.TerminalNotSaid, nameof(details)));
    }

    private AlterationBuilder Add(Edit edit, string? because, params (DiagnosticKind Kind, string Argument)[] arguments) => Add(edit, because, "id", arguments);

    // An argument other than the item itself is at fault where the kind of the problem says so.
    private AlterationBuilder Add(Edit edit, string? because, string item, params (DiagnosticKind Kind, string Argument)[] arguments)
    {
        EditGroup[] sofar = [.. groups, new([edit], because)];
        var result = Apply(sofar);
        foreach (var (problem, _, _) in result.Problems)
        {
            if (problem.Severity < Severity.Error || Curable.Contains(problem.Kind)) continue;
            throw Refused(problem, arguments.FirstOrDefault(a => a.Kind == problem.Kind, (problem.Kind, item)).Item2);
        }
        groups.Add(sofar[^1]);
        latest = result;
        return this;
    }

    private EditResult Apply(IEnumerable<EditGroup> list) => EditList.Apply(before, title, system, [.. list]);

    private static string Said(string id)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(id);
        return id;
    }

    private static End Written(string text, string argument)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(text, argument);
        return End.Parse(text);
    }

    private End Landing(string text, string argument)
    {
        var written = Written(text, argument);
        var fault = EndNames.Resolve(written, id => latest.Parts.FirstOrDefault(p => p.Id == id), latest.Parts.Select(p => p.Id), out _);
        return fault is null ? written : throw Refused(fault, argument);
    }

    private static ArgumentException Refused(Diagnostic problem, string? argument)
    {
        string hint = problem.Hint is { } said ? $" ({said})" : "";
        // A message that begins with a word begins a sentence here; an id stays as it is.
        string message = char.IsLower(problem.Kind.Message[0]) ? char.ToUpperInvariant(problem.Message[0]) + problem.Message[1..] : problem.Message;
        return new(message + hint + ".", argument ?? problem.Items.FirstOrDefault());
    }
}
