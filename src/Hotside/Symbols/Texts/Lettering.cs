namespace Hotside.Symbols.Texts;

/// <summary>The text styles of a sheet: heights of ISO 3098-1 (1.8, 2.5, 3.5, 5, 7 mm), one step larger where a sheet is read with the hood open.</summary>
internal sealed record Lettering(TextStyle Small, TextStyle SmallBold, TextStyle Badge, TextStyle Body, TextStyle BodyBold, TextStyle Title, TextStyle Headline)
{
    /// <summary>1.8 mm for what qualifies, 2.5 mm for what identifies.</summary>
    public static readonly Lettering Normal = Of(7.2, 10, 14, 20, 1);

    /// <summary>Each height one step of √2 larger, for reading at arm's length.</summary>
    public static readonly Lettering Large = Of(10, 14, 20, 28, 1.4);

    /// <summary>Size of the lettering against the normal one.</summary>
    public double Factor => Small.CapHeight / 7.2;

    private static Lettering Of(double small, double body, double title, double headline, double factor) => new(
        new("small", small, false, 13 * factor),
        new("small-bold", small, true, 13 * factor),
        new("badge", small, true, 13 * factor, 0.35 * factor),
        new("body", body, false, 15.5 * factor),
        new("body-bold", body, true, 15.5 * factor),
        new("title", title, true, 22 * factor),
        new("headline", headline, true, 31 * factor));
}
