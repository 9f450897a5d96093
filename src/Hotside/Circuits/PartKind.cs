using System.Collections.Immutable;

namespace Hotside.Circuits;

/// <summary>What all parts of a sort have in common: terminals, inner elements, actuators, ratings, case, sensitivities, symbol. It is data, never code.</summary>
/// <param name="Id">Its name in lower case with hyphens, such as <c>horn-relay</c>.</param>
public sealed record PartKind(string Id)
{
    /// <summary>The class letter of its reference designations (IEC 60750, from memory); users' ids are never checked against it.</summary>
    public string Letter { get; init; } = "";

    /// <summary>What a sentence calls it, in American words: <c>starter relay</c> for a <c>starter-relay-internal</c>; the id with spaces where not said.</summary>
    public string Noun { get; init; } = Id.Replace('-', ' ');

    /// <summary>What a sentence calls it in British words; <see langword="null"/> when both say the same.</summary>
    public string? BritishNoun { get; init; }

    /// <summary>What it is, in a line.</summary>
    public string Summary { get; init; } = "";

    /// <summary>The name of its symbol; <see langword="null"/>: a box with named pins.</summary>
    public string? Symbol { get; init; }

    /// <summary>The terminals in the order of the data; connectors repeat theirs for each way.</summary>
    public ImmutableArray<KindTerminal> Terminals { get; init; } = [];

    /// <summary>Whether any terminal name is allowed, as at the end of a page.</summary>
    public bool TakesAnyTerminal { get; init; }

    /// <summary>Nodes inside the part that have no terminal.</summary>
    public ImmutableArray<string> InnerNodes { get; init; } = [];

    /// <summary>The inner elements.</summary>
    public ImmutableArray<Element> Elements { get; init; } = [];

    /// <summary>The actuators, the relay's own among them.</summary>
    public ImmutableArray<Actuator> Actuators { get; init; } = [];

    /// <summary>The ratings that a part may state.</summary>
    public ImmutableArray<RatingRule> Ratings { get; init; } = [];

    /// <summary>Words that a part line may add, such as <c>wound</c>, with what each means.</summary>
    public ImmutableDictionary<string, string> Options { get; init; } = ImmutableDictionary<string, string>.Empty;

    /// <summary>What the case is.</summary>
    public CaseKind Case { get; init; }

    /// <summary>How it minds another voltage, in the catalogue's words: indifferent, contact, brief, match, misreads, selfregulating.</summary>
    public string Voltage { get; init; } = "indifferent";

    /// <summary>How it minds another polarity, in the catalogue's words: indifferent, reverses, weaker, polarise, destroyed, test.</summary>
    public string Polarity { get; init; } = "indifferent";

    /// <summary>How it minds the current through it, in the catalogue's words: indifferent, contact, carries, opens, timed, scale, limited.</summary>
    public string Current { get; init; } = "indifferent";

    /// <summary>Where its terminals and its behaviour are from: a standard, a handbook, "common practice, no source", "from memory".</summary>
    public string Source { get; init; } = "";

    /// <summary>The fewest and most ways of a kind whose terminals repeat; <see langword="null"/> for all others.</summary>
    public (int Least, int Most)? Ways { get; init; }

    /// <summary>Whether it is a splice: one terminal on which wires meet.</summary>
    public bool IsSplice => Symbol == "splice" && OnlyTerminal is not null;

    /// <summary>Whether it is a box that holds parts and has no terminal of its own.</summary>
    public bool HoldsParts => Terminals.IsEmpty && !TakesAnyTerminal;

    /// <summary>Whether the case is a terminal that conductors may end on.</summary>
    public bool HasCaseTerminal => Case is CaseKind.Grounded or CaseKind.Optional or CaseKind.Isolated || Terminals.Any(t => t.IsCase);

    /// <summary>What the case stands on where a part does not say.</summary>
    internal CaseMount DefaultMount => Case == CaseKind.Grounded ? CaseMount.OnChassis : CaseMount.Insulated;

    /// <summary>Whether it parts the battery from everything (class Q): a hand opens it to lay the vehicle up, not to work a load.</summary>
    internal bool IsDisconnect => Letter == "Q";

    /// <summary>The kind as its data has it, for one whose ways are written out or whose terminals a part bears by other marks; else itself.</summary>
    internal PartKind AsWritten { get => field ?? this; init; }

    /// <summary>The only terminal of a kind that has just one, the case not counted; else <see langword="null"/>.</summary>
    public string? OnlyTerminal => Terminals.Length == 1 && !TakesAnyTerminal ? Terminals[0].Name : null;

    /// <summary>The terminal that a name or an alias means.</summary>
    /// <param name="name">A name, an alias or <c>case</c>.</param>
    /// <returns>The terminal's own name; <see langword="null"/> when the kind has none such.</returns>
    public string? TerminalNamed(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        foreach (var terminal in Terminals)
            if (terminal.Name == name)
                return name;
        foreach (var terminal in Terminals)
            if (terminal.Aliases.Contains(name) || (terminal.IsCase && name == "case"))
                return terminal.Name;
        return (name == "case" && HasCaseTerminal) || TakesAnyTerminal ? name : null;
    }

    /// <summary>The element of a name.</summary>
    /// <param name="name">The element's name.</param>
    /// <returns>The element, or <see langword="null"/>.</returns>
    public Element? ElementNamed(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return Elements.FirstOrDefault(e => e.Name == name);
    }

    /// <summary>The rating of a name, its own or one of those that every kind with such elements has.</summary>
    internal RatingRule? RatingNamed(string name) => Ratings.FirstOrDefault(r => r.Name == name) ?? CommonRatings.FirstOrDefault(r => r.Name == name);

    /// <summary>
    /// Ratings that no kind need list: for what part of the time a load is on, an element each; what contacts, fuses and breakers have in ohms, where the kind has no rating for that.
    /// </summary>
    public ImmutableArray<RatingRule> CommonRatings
    {
        get
        {
            ImmutableArray<string> loads = [.. Elements.Where(e => e.IsConsumer && !e.IsInternal).Select(e => e.Name)];
            ImmutableArray<string> contacts =
            [
                .. Elements.Where(e => e.Type is ElementType.Contact or ElementType.Fuse or ElementType.Breaker && Ratings.All(r => r.Unit != Unit.Ohm || !r.Elements.Contains(e.Name))).Select(e => e.Name),
            ];
            return
            [
                .. loads.IsEmpty ? Array.Empty<RatingRule>() : [new(RatingRule.Duty, Unit.Percent, loads, loads.Length > 1)],
                .. contacts.IsEmpty ? Array.Empty<RatingRule>() : [new(RatingRule.ContactOhms, Unit.Ohm, contacts, contacts.Length > 1)],
            ];
        }
    }

    /// <summary>The ratings of a unit that belong to an element; one that is named ("coil A") is meant for it in particular and comes before a main one.</summary>
    internal IEnumerable<RatingRule> RulesOf(string element, Unit unit) =>
        OwnRulesOf(element, unit) is { Length: > 0 } own ? own : unit is Unit.Percent or Unit.Ohm ? CommonRatings.Where(r => r.Unit == unit && r.Elements.Contains(element)) : [];

    private RatingRule[] OwnRulesOf(string element, Unit unit) =>
        [.. Ratings.Where(r => r.Unit == unit && !r.IsAside && r.Elements.Contains(element)).OrderBy(r => r.IsMain ? 1 : 0)];

    /// <summary>The kind with its repeated terminals and elements written out for a number of ways; itself when it has no ways.</summary>
    /// <param name="ways">The number of ways, within <see cref="Ways"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="ways"/> is outside <see cref="Ways"/>.</exception>
    public PartKind WithWays(int ways)
    {
        if (Ways is not { } range) return this;
        if (ways < range.Least || ways > range.Most) throw new ArgumentOutOfRangeException(nameof(ways), ways, $"{Id} has {range.Least} to {range.Most} ways.");
        const string each = "(n)";
        bool Repeats(string name) => name.Contains(each, StringComparison.Ordinal);
        IEnumerable<string> Numbered(string name) => Repeats(name) ? Enumerable.Range(1, ways).Select(n => At(name, n)) : [name];
        static string At(string name, int n) => name.Replace(each, Numbers.Whole(n), StringComparison.Ordinal);
        return this with
        {
            AsWritten = this,
            Ways = null,
            Terminals = [.. Terminals.SelectMany(t => Numbered(t.Name).Select((name, i) => t with
            {
                Name = name,
                Aliases = [.. t.Aliases.Select(a => At(a, i + 1))],
            }))],
            Elements = [.. Elements.SelectMany(e => Numbered(e.Name).Select((name, i) => e with
            {
                Name = name,
                From = At(e.From, i + 1),
                To = At(e.To, i + 1),
            }))],
            Ratings = [.. Ratings.Select(r => r with { Elements = [.. r.Elements.SelectMany(Numbered)] })],
        };
    }
}
