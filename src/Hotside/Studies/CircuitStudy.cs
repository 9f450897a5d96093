using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Studies.Excerpts;
using Hotside.Studies.Figures;
using Hotside.Studies.Figures.Budgets;
using Hotside.Studies.Switching;

namespace Hotside.Studies;

/// <summary>What was found of one circuit: on which side each load is switched, by what, and what is doubtful about it. Immutable; safe to share between threads.</summary>
public sealed record CircuitStudy
{
    internal CircuitStudy(Circuit circuit, ImmutableArray<LoadStudy> loads, ImmutableArray<Diagnostic> findings)
    {
        Circuit = circuit;
        Loads = loads;
        Findings = findings;
        Operation = new(circuit);
    }

    /// <summary>The circuit.</summary>
    public Circuit Circuit { get; }

    /// <summary>Every consuming element, parts in the order of the file, elements in the order of the kind; internal ones too, which tables leave out.</summary>
    public ImmutableArray<LoadStudy> Loads { get; private init; }

    /// <summary>What is wrong or doubtful, gravest first.</summary>
    public ImmutableArray<Diagnostic> Findings { get; }

    /// <summary>What is on in each of the circuit's named settings, in the order of the file.</summary>
    public ImmutableArray<SettingStudy> Settings { get; internal init => field = [.. value.Select(s => s with { Operation = Operation })]; } = [];

    /// <summary>The circuit's named sequences of settings, in the order of the file.</summary>
    public ImmutableArray<SequenceStudy> Sequences => [.. Circuit.Sequences.Select(s => new SequenceStudy(s, Operation))];

    /// <summary>
    /// The names of settings that may be asked for beside those of the job, where it names none such itself: <c>all off</c>, <c>everything on</c>, <c>cranking</c>,
    /// <c>charging</c>, <c>everything on, charging</c>, and each load alone, such as <c>H1 alone</c>.
    /// </summary>
    public ImmutableArray<string> ProposedSettings => new ProposedSettings(Whole).Names;

    /// <summary>
    /// The figures with one load on, in the first of its smallest combinations; <see langword="null"/> where it never comes on, does so for a moment only, or relays race for it.
    /// </summary>
    internal SettingFigures? FiguresOf(LoadStudy load) =>
        load.Control.Any.IsEmpty || load.IsMomentary || load.IsInRace ? null : Operation.In(Figures.ProposedSettings.Alone(load));

    /// <summary>What the loads need and the machines give, what is left for the starter, and how long it may stand; worked out when asked for.</summary>
    public ChargingBudget Budget => Whole.Operation.Budget(() => ChargingBudget.Of(Whole));

    /// <summary>What works figures out, when they are asked for.</summary>
    internal Operation Operation { get; }

    /// <summary>The study of which this is an excerpt; itself where it is none.</summary>
    internal CircuitStudy Whole { get => field ?? this; private init; }

    /// <summary>The same with the verdicts of some loads only.</summary>
    internal CircuitStudy Only(Excerpt excerpt) => this with { Loads = [.. Loads.Where(l => excerpt.Loads.Contains(l.Name))], Whole = Whole };

    /// <summary>A setting of the job by its name, or a proposed one; <see langword="null"/> where there is none such.</summary>
    internal SettingStudy? FindSetting(string name) => Settings.FirstOrDefault(s => s.Setting.Name == name) ?? new Figures.ProposedSettings(Whole).Find(name);

    /// <summary>A sequence of the job by its name; <see langword="null"/> where there is none such.</summary>
    internal SequenceStudy? FindSequence(string name) => Sequences.FirstOrDefault(s => s.Sequence.Name == name);

    /// <summary>A setting of the job by its name, or one of <see cref="ProposedSettings"/>.</summary>
    /// <param name="name">Its name.</param>
    /// <exception cref="ArgumentException">There is no such setting; the message names the nearest.</exception>
    public SettingStudy Setting(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return FindSetting(name) ?? throw UnknownSetting(name);
    }

    /// <summary>Says that there is no setting of a name, and names the nearest.</summary>
    internal ArgumentException UnknownSetting(string name)
    {
        string[] names = [.. Settings.Select(s => s.Setting.Name), .. ProposedSettings];
        return new($"There is no setting \"{name}\"" + (NearestName.Of(name, names) is { } near
            ? $"; did you mean \"{near}\"?" : $"; the settings are {string.Join(", ", names.Select(n => $"\"{n}\""))}."), nameof(name));
    }

    /// <summary>A named sequence.</summary>
    /// <param name="name">Its name.</param>
    /// <exception cref="ArgumentException">There is no such sequence; the message names the nearest.</exception>
    public SequenceStudy Sequence(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return FindSequence(name) ?? throw UnknownSequence(name);
    }

    /// <summary>Says that there is no sequence of a name, and names the nearest.</summary>
    internal ArgumentException UnknownSequence(string name) => new($"There is no sequence \"{name}\""
        + (Circuit.Sequences.IsEmpty ? "; the job names none." : NearestName.Suggestion(name, Circuit.Sequences.Select(s => s.Name))), nameof(name));

    /// <summary>Studies a circuit.</summary>
    /// <param name="circuit">The circuit.</param>
    /// <param name="cancel">Ends the work early.</param>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was triggered.</exception>
    public static CircuitStudy Of(Circuit circuit, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(circuit);
        return SwitchingStudy.Of(circuit, cancel);
    }

    /// <summary>The load of a name, or all loads of a part; empty when there are none.</summary>
    internal ImmutableArray<LoadStudy> LoadsNamed(string name)
    {
        ImmutableArray<LoadStudy> exact = [.. Loads.Where(l => l.Name == name || l.Part.Id + "." + l.Element.Name == name)];
        return exact.IsEmpty ? [.. Loads.Where(l => l.Part.Id == name && !l.Element.IsInternal)] : exact;
    }

    /// <summary>A load by its name: <c>H1</c>, <c>E3.tail</c>; <c>H1.horn</c> is understood too.</summary>
    /// <param name="name">The part's id, with the element where the part has several loads.</param>
    /// <exception cref="ArgumentException">There is no such load; the message names the nearest.</exception>
    public LoadStudy Load(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return Loads.FirstOrDefault(l => l.Name == name) ?? Loads.FirstOrDefault(l => l.Part.Id + "." + l.Element.Name == name)
            ?? throw new ArgumentException(NearestName.Of(name, Loads.Select(l => l.Name)) is { } near
                ? $"There is no load \"{name}\"; did you mean \"{near}\"?"
                : $"There is no load \"{name}\"; the loads are {string.Join(", ", Loads.Select(l => l.Name))}.", nameof(name));
    }
}
