using System.Collections.Immutable;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Symbols.Parts;

/// <summary>Where the columns and buses of a switch with several contacts lie.</summary>
/// <param name="Contacts">The contacts, one a column.</param>
/// <param name="Feeds">Terminals above, each with the columns it feeds.</param>
/// <param name="Ends">Terminals below, each with the columns it joins and the level of its bus.</param>
/// <param name="Pitch">Modules between columns.</param>
/// <param name="Options">Options.</param>
internal sealed record SwitchBoxPlan(
    ImmutableArray<SymbolContact> Contacts,
    ImmutableArray<SwitchBoxBus> Feeds,
    ImmutableArray<SwitchBoxBus> Ends,
    int Pitch,
    SymbolOptions Options)
{
    private const int FirstColumn = 4;
    private const int Rheostat = 4;
    private const int Breaker = 3;

    /// <summary>The terminals that have a place.</summary>
    public IEnumerable<SymbolTerminal> Placed => Feeds.Concat(Ends).Select(b => b.Terminal);

    private int LowestBus => Ends.Select(e => e.Columns.Length > 1 ? e.Level : 0).DefaultIfEmpty(0).Max();

    private int Centre => 4 + (Contacts.Any(c => c.BehindBreaker) ? Breaker : 0);

    private int FeedBus => Centre - 2;

    // A contact's positions, and below them the marks of the terminals.
    private int Marks => (int)Math.Ceiling(1.85 + (1.3 * Options.Lettering.Small.CapHeight / Symbol.Module));

    private int Bottom => Centre + Marks + LowestBus + (Contacts.Any(c => c.BeforeRheostat) ? Rheostat : 0);

    /// <summary>Plans the columns; <see langword="null"/> where a contact begins at a terminal that is not there.</summary>
    public static SwitchBoxPlan? Of(ImmutableArray<SymbolContact> contacts, ImmutableArray<SymbolTerminal> all, SymbolOptions options)
    {
        ImmutableArray<SwitchBoxBus> feeds = Buses(contacts, c => c.From, all, levels: false);
        if (feeds.Sum(f => f.Columns.Length) < contacts.Length)
            return null;
        ImmutableArray<SwitchBoxBus> ends = Buses(contacts, c => c.To, all, levels: true);
        double marks = TextMeasure.Widest(ends.Concat(feeds).Select(b => b.Terminal.Label), options.Lettering.Small);
        double positions = TextMeasure.Widest(contacts.Select(c => c.ClosedIn), options.Lettering.SmallBold);
        double need = Math.Max((marks / Symbol.Module) + 0.9, (positions / Symbol.Module) + 2.1);
        return new(contacts, feeds, ends, Math.Max(4, (int)Math.Ceiling(need)), options);
    }

    /// <summary>Draws the switch.</summary>
    public Symbol Draw(string name, Actuator actuator)
    {
        int width = X(Contacts.Length - 1) + Math.Max(2, Pitch - 1);
        var s = new SymbolSketch(width, Bottom, Options.Lettering);
        s.Enclosure(0, 0, width, Bottom);
        s.Line(Pen.Link, 1.2, Centre, X(Contacts.Length - 1) + (Contacts[^1].ClosedAtRest ? 0.25 : -0.6), Centre);
        for (int i = 0; i < Contacts.Length; i++)
            Column(s, i);
        Contact.Actuate(s, actuator, 1.2, Centre);
        foreach (SwitchBoxBus feed in Feeds)
            Bus(s, feed, FeedBus, 0, SymbolSide.Top);
        foreach (SwitchBoxBus end in Ends)
            Bus(s, end, Centre + 1 + end.Level, Bottom, SymbolSide.Bottom);
        return s.Done(name);
    }

    private static ImmutableArray<SwitchBoxBus> Buses(
        ImmutableArray<SymbolContact> contacts, Func<SymbolContact, string> terminal, ImmutableArray<SymbolTerminal> all, bool levels)
    {
        var buses = ImmutableArray.CreateBuilder<SwitchBoxBus>();
        foreach (string name in contacts.Select(terminal).Distinct())
        {
            if (all.FirstOrDefault(t => t.Name == name) is not { } found)
                continue;
            ImmutableArray<int> columns = [.. Enumerable.Range(0, contacts.Length).Where(i => terminal(contacts[i]) == name)];
            int level = 1;
            while (levels && columns.Length > 1 && buses.Any(b => b.Columns.Length > 1 && b.Level == level && b.Meets(columns[0], columns[^1])))
                level++;
            buses.Add(new(found, columns, level));
        }

        return buses.ToImmutable();
    }

    private int X(int column) => FirstColumn + (column * Pitch);

    private void Column(SymbolSketch s, int i)
    {
        SwitchBoxBus? end = Ends.FirstOrDefault(e => e.Columns.Contains(i));
        bool toCase = end is null;
        double down = toCase ? 1.8 : end!.Columns.Length > 1 ? 1 + end.Level : Contacts[i].BeforeRheostat ? Bottom - Centre - 5 : Bottom - Centre;
        double up = Feeds.First(f => f.Columns.Contains(i)) is { Columns.Length: > 1 } || Contacts[i].BehindBreaker ? Centre - FeedBus : Centre;
        if (Contacts[i].BeforeRheostat)
        {
            ResistorSymbols.Variable(s, X(i), Bottom - 3.2);
            s.Line(Pen.Medium, X(i), Bottom - 1.2, X(i), Bottom);
        }

        if (Contacts[i].ClosedAtRest)
            Contact.Break(s, X(i), Centre, up, down);
        else
            Contact.Make(s, X(i), Centre, up, down);
        if (toCase)
            s.CaseGround(X(i), Centre + 1.8);
        if (Contacts[i].ClosedIn.Length > 0)
            s.Letter(Contacts[i].ClosedIn, X(i) + 0.6, Centre + 1.2, Options.Lettering.SmallBold, Anchor.Start);
    }

    private void Bus(SymbolSketch s, SwitchBoxBus bus, double y, int edge, SymbolSide side)
    {
        int first = X(bus.Columns[0]);
        if (side == SymbolSide.Top && Contacts[bus.Columns[0]].BehindBreaker)
        {
            s.Line(Pen.Medium, first, 0, first, FeedBus);
            FuseSymbols.Heater(s, first, 2.3);
            FuseSymbols.Cross(s, first, 3.5);
        }

        if (bus.Columns.Length > 1)
        {
            s.Line(Pen.Medium, first, y, X(bus.Columns[^1]), y);
            s.Line(Pen.Medium, first, edge, first, y);
            foreach (int column in bus.Columns.SkipLast(1))
                s.Dot(X(column), y);
        }

        s.Stud(bus.Terminal, first, edge, side);
    }
}

/// <summary>A terminal of a switch with the columns that it joins.</summary>
internal sealed record SwitchBoxBus(SymbolTerminal Terminal, ImmutableArray<int> Columns, int Level)
{
    /// <summary>Whether the bus shares a column with a span.</summary>
    public bool Meets(int first, int last) => Columns[0] <= last && first <= Columns[^1];
}
