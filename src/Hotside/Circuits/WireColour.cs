namespace Hotside.Circuits;

/// <summary>The colour of a conductor's insulation, with tracer: codes of IEC 60757 (from memory).</summary>
public readonly record struct WireColour
{
    private static readonly (string Code, string[] Words)[] Known =
    [
        ("BK", ["black"]), ("BN", ["brown"]), ("RD", ["red"]), ("OG", ["orange"]), ("YE", ["yellow"]), ("GN", ["green"]), ("BU", ["blue"]),
        ("VT", ["violet", "purple"]), ("GY", ["grey", "gray"]), ("WH", ["white"]), ("PK", ["pink"]), ("GD", ["gold"]), ("TQ", ["turquoise"]),
        ("SR", ["silver"]), ("GNYE", ["green-yellow"]),
    ];

    private WireColour(string basic, string? tracer)
    {
        Base = basic;
        Tracer = tracer;
    }

    /// <summary>The main colour's code, such as <c>BK</c>.</summary>
    public string Base { get; }

    /// <summary>The tracer's code; <see langword="null"/> without a tracer.</summary>
    public string? Tracer { get; }

    /// <summary>The codes that <see cref="TryParse"/> knows, in the standard's order.</summary>
    public static IEnumerable<string> Codes => Known.Select(k => k.Code);

    /// <summary>The colour that a text which is none most likely means: other letters, another sign before the tracer, or a word that is nearly right.</summary>
    internal static string? Meant(string text)
    {
        string stroked = text.Replace('-', '/').Replace('\\', '/');
        foreach (string other in new[] { stroked, stroked.ToUpperInvariant(), stroked.ToLowerInvariant() })
            if (other != text && TryParse(other, out _)) return other;
        string? word = text.Length > 3 && text.All(char.IsAsciiLetter) ? NearestName.Of(text, Known.SelectMany(k => k.Words)) : null;
        return word is not null && word != text && Math.Abs(word.Length - text.Length) <= 1 ? word : null;
    }

    /// <summary>Reads codes in capitals (<c>RD/WH</c>) or colour words (<c>red/white</c>), American or British.</summary>
    /// <param name="text">The colour.</param>
    /// <param name="colour">The colour read.</param>
    /// <returns>Whether it is a colour.</returns>
    public static bool TryParse(string? text, out WireColour colour)
    {
        string[] halves = (text ?? "").Split('/');
        string? basic = Code(halves[0]), tracer = halves.Length == 2 ? Code(halves[1]) : null;
        bool good = basic is not null && (halves.Length == 1 || tracer is not null) && halves.Length <= 2;
        colour = good ? new(basic!, tracer) : default;
        return good;
    }

    /// <summary>The code with the tracer behind a stroke: <c>RD/WH</c>.</summary>
    public override string ToString() => Tracer is null ? Base ?? "" : Base + "/" + Tracer;

    private static string? Code(string word)
    {
        foreach (var (code, words) in Known)
            if (code == word || words.Contains(word, StringComparer.Ordinal))
                return code;
        return null;
    }
}
