using System.Collections.Immutable;

namespace Hotside.Circuits;

/// <summary>Turns what a caller says of a part into its specification, and refuses what the kind does not have.</summary>
internal static class PartDetailsReader
{
    /// <summary>The specification; the nodes of its joints and case are looked up later.</summary>
    /// <param name="id">The part's id, for messages.</param>
    /// <param name="kind">Its kind.</param>
    /// <param name="details">What is said of it.</param>
    /// <exception cref="ArgumentException">The kind lacks a rating, terminal or option that is stated, or a value is out of range.</exception>
    public static PartSpec Read(string id, PartKind kind, PartDetails details)
    {
        var ratings = details.AllRatings().ToImmutableArray();
        var whole = WithWays(kind, ratings).MarkedAs(details.Joints.Keys.Order(StringComparer.Ordinal).Concat(details.FreeTerminals));
        foreach (var rating in ratings) Check(whole, rating);
        foreach (string option in details.Options)
            if (!kind.Options.ContainsKey(option))
                throw Refused($"{Start(kind)} has no option \"{option}\"{NearestName.Suggestion(option, kind.Options.Keys.Order(StringComparer.Ordinal))}");
        // Where the shell is one of the terminals, a case on something is a joint of that terminal.
        var shell = whole.Terminals.FirstOrDefault(t => t.IsCase);
        var joints = details.Joints.OrderBy(j => j.Key, StringComparer.Ordinal).Select(j => new Joint(Terminal(id, whole, j.Key), On(j.Value)));
        if (shell is not null && details.Case is { } node and not "insulated") joints = joints.Append(new(shell.Name, On(node)));
        return new(whole)
        {
            Name = FreeText.Checked(details.Name, nameof(details)),
            Ratings = ratings,
            Options = [.. details.Options],
            Joints = [.. joints],
            FreeTerminals = [.. details.FreeTerminals.Select(t => Terminal(id, whole, t))],
            Case = details.Case is null || shell is not null ? null : Mount(id, whole, details.Case),
            Assembly = details.Assembly,
            Place = FreeText.Checked(details.Place, nameof(details)),
        };
    }

    private static PartKind WithWays(PartKind kind, ImmutableArray<Rating> ratings)
    {
        var said = ratings.FirstOrDefault(r => r.Name == "ways")?.Quantity.Value;
        if (kind.Ways is not { } range)
            return said is null || kind.Ratings.Any(r => r.Name == "ways") ? kind : throw Refused($"{Start(kind)} has no ways.");
        if (said is null) throw Refused($"{Start(kind)} needs its number of ways, {range.Least} to {range.Most}: say Ways = {range.Least}.");
        if (said != Math.Floor(said.Value) || said < range.Least || said > range.Most)
            throw Refused($"{Start(kind)} has {range.Least} to {range.Most} ways, not {Numbers.Plain(said.Value)}.");
        return kind.WithWays((int)said);
    }

    private static void Check(PartKind kind, Rating rating)
    {
        if (rating.Name == "ways") return;
        var rule = kind.RatingNamed(rating.Name)
            ?? throw Refused($"{Start(kind)} has no rating \"{rating.Name}\"{NearestName.Suggestion(rating.Name, kind.Ratings.Select(r => r.Name))}");
        if (rule.Unit != rating.Quantity.Unit)
            throw Refused($"The rating \"{rating.Name}\" is in {QuantityText.Symbol(rule.Unit)}, not in {QuantityText.Symbol(rating.Quantity.Unit)}.");
        if (!rule.IsInRange(rating.Quantity))
            throw Refused($"The rating \"{rating.Name}\" must be {(rule.Unit == Unit.Ohm ? "0 or more" : rule.Unit == Unit.Percent ? "0 to 100" : "above 0")}, not {rating.Quantity}.");
        if (rating.Quantity.Values.Length > rule.MostValues)
            throw Refused($"The rating \"{rating.Name}\" of {kind.WithArticle()} takes {(rule.MostValues == 1 ? "one value" : $"{rule.MostValues} values at most")}, not {rating.Quantity}.");
    }

    private static string Terminal(string id, PartKind kind, string name) =>
        kind.TerminalNamed(name) ?? throw Refused($"{id} has no terminal \"{name}\"; {kind.TerminalSentence(name)}");

    private static End On(string node) => string.IsNullOrWhiteSpace(node) ? throw Refused("A joint names the node it is bolted to, such as \"X1\".") : End.Parse(node);

    private static CaseMount Mount(string id, PartKind kind, string on) =>
        !kind.HasCaseTerminal ? throw Refused($"{id} has no case that is a terminal: it is {kind.WithArticle()}.")
        : on == "insulated" ? CaseMount.Insulated : new(On(on));

    private static string Start(PartKind kind) => char.ToUpperInvariant(kind.WithArticle()[0]) + kind.WithArticle()[1..];

    private static ArgumentException Refused(string message, string argument = "details") => new(message, argument);
}
