using System.Globalization;

namespace Hotside.Drawings;

/// <summary>An opaque colour, eight bits a channel (sRGB).</summary>
/// <param name="Red">0 to 255.</param>
/// <param name="Green">0 to 255.</param>
/// <param name="Blue">0 to 255.</param>
public readonly record struct Colour(byte Red, byte Green, byte Blue)
{
    /// <summary>Reads <c>#rrggbb</c>.</summary>
    /// <param name="text">A number sign and six hexadecimal digits, in large or small letters.</param>
    /// <exception cref="ArgumentException">The text is not a number sign and six hexadecimal digits.</exception>
    public static Colour Hex(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (text.Length != 7 || text[0] != '#' || !uint.TryParse(text.AsSpan(1), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out uint value))
            throw new ArgumentException($"\"{text}\" is not a colour; write #rrggbb, such as #0072b2.", nameof(text));
        return new((byte)(value >> 16), (byte)(value >> 8), (byte)value);
    }

    /// <summary>The colour as <c>#rrggbb</c>, in small letters.</summary>
    public override string ToString() => $"#{Red:x2}{Green:x2}{Blue:x2}";
}
