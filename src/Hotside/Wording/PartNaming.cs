using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Wording;

/// <summary>What parts are called.</summary>
internal static class PartNaming
{
    /// <summary>The noun of a kind: <c>starter relay</c>, <c>generator</c> or <c>dynamo</c>.</summary>
    public static string Noun(PartKind kind, Words words) => words.Say(kind.Noun);

    /// <summary>A part as a heading has it: its own name, else its kind's noun with a capital.</summary>
    public static string Title(Part part, Words words) => part.Name ?? Listing.Capital(Noun(part.Kind, words));

    /// <summary>A part within a sentence: <c>Horn button S1</c>, <c>horn H1</c>.</summary>
    public static string WithId(Part part, Words words) => $"{part.Name ?? Noun(part.Kind, words)} {part.Id}";

    /// <summary>What a part is rated, in the order stated: <c>12 V</c>, <c>coil 0.15 A</c>; options follow.</summary>
    public static ImmutableArray<string> Ratings(Part part) => [.. part.Ratings.Select(RatingOf), .. part.Spec.Options];

    /// <summary>The line of ratings under a part's name: <c>12 V · coil 0.15 A</c>.</summary>
    public static string RatingLine(Part part) => string.Join(" · ", Ratings(part));

    private static string RatingOf(Rating rating)
    {
        int space = rating.Name.LastIndexOf(' ');
        return space < 0 ? AmountText.Of(rating.Quantity) : $"{rating.Name[..space]} {AmountText.Of(rating.Quantity)}";
    }
}
