using System.Collections.Immutable;

namespace Hotside.Symbols.Parts;

/// <summary>
/// Switches with several contacts on one link, in an enclosure: each contact a column, with the positions that close it beside its hinge.
/// Contacts with a common terminal hang on a bus.
/// </summary>
internal static class SwitchBoxSymbols
{
    /// <summary>The symbols of this family.</summary>
    public static readonly (string, Func<TerminalSet, SymbolOptions, Symbol?>)[] All =
    [
        Named("switch-light", Actuator.Rotary),
        Named("switch-column", Actuator.Toggle),
        Named("switch-key", Actuator.Key),
        Named("switch-knob", Actuator.Rotary),
        Named("switch-pull-box", Actuator.Pull),
    ];

    private static (string, Func<TerminalSet, SymbolOptions, Symbol?>) Named(string name, Actuator actuator) => (name, (t, o) => Draw(name, actuator, t, o));

    private static Symbol? Draw(string name, Actuator actuator, TerminalSet terminals, SymbolOptions options)
    {
        if (terminals.Count is 1 or 2)
            return ContactSymbols.Single(name, actuator, terminals, options);
        ImmutableArray<SymbolTerminal> all = terminals.Left;
        ImmutableArray<SymbolContact> contacts = InColumns(options.Contacts.IsEmpty ? FromTheFirst(all) : options.Contacts);
        if (contacts.IsEmpty || contacts.Select(c => c.From).Intersect(contacts.Select(c => c.To)).Any())
            return null;
        SwitchBoxPlan? plan = SwitchBoxPlan.Of(contacts, all, options);
        if (plan is null)
            return null;
        foreach (SymbolTerminal terminal in plan.Placed)
            terminals.Take(terminal.Name);
        return plan.Draw(name, actuator);
    }

    private static ImmutableArray<SymbolContact> FromTheFirst(ImmutableArray<SymbolTerminal> all)
    {
        SymbolTerminal? feed = all.FirstOrDefault(t => t.Side == SymbolSide.Top) ?? all.FirstOrDefault();
        return feed is null ? [] : [.. all.Where(t => t != feed).Select(t => new SymbolContact(feed.Name, t.Name))];
    }

    // Contacts of one feed stand side by side, in the order in which the feeds are first named; then by where they lead.
    private static ImmutableArray<SymbolContact> InColumns(ImmutableArray<SymbolContact> contacts)
    {
        List<string> feeds = [.. contacts.Select(c => c.From).Distinct()], ends = [.. contacts.Select(c => c.To).Distinct()];
        return [.. contacts.OrderBy(c => feeds.IndexOf(c.From)).ThenBy(c => ends.IndexOf(c.To))];
    }
}
