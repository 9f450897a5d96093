using System.Collections.Concurrent;
using System.Runtime.InteropServices;
using HarfBuzzSharp;

namespace Hotside.Symbols.Texts;

/// <summary>One of the two faces that the sheets are written in, read from the assembly.</summary>
#pragma warning disable CA1001 // The two faces live as long as the program.
internal sealed class FontFace
#pragma warning restore CA1001
{
    /// <summary>The family's name in every picture.</summary>
    public const string Family = "Hotside Sans";

    /// <summary>Height of a capital in thousandths of the font size.</summary>
    public const int CapHeight = 698;

    private static readonly Lazy<FontFace> RegularFace = new(() => new FontFace("Regular"));
    private static readonly Lazy<FontFace> BoldFace = new(() => new FontFace("Bold"));

    private static readonly Lazy<HashSet<char>> Narrow = new(() => [.. System.Text.Encoding.UTF8.GetString(Resource("narrow.txt"))]);

    private readonly string _style;
    private readonly Face _face;
    private readonly Font _font;
    private readonly ConcurrentDictionary<int, bool> _has = new();

    private FontFace(string style)
    {
        _style = style;
        // HarfBuzz reads the file as long as the face lives, and Blob.FromStream does not keep its copy from being moved:
        // so the bytes are pinned while HarfBuzz makes a copy of its own.
        byte[] trueType = TrueType();
        byte[] file = GC.AllocateUninitializedArray<byte>(trueType.Length, pinned: true);
        trueType.CopyTo(file, 0);
        using var blob = new Blob(Marshal.UnsafeAddrOfPinnedArrayElement(file, 0), file.Length, MemoryMode.Duplicate);
        GC.KeepAlive(file);
        _face = new Face(blob, 0);
        UnitsPerEm = _face.UnitsPerEm;
        _face.MakeImmutable();
        _font = new Font(_face);
        _font.SetScale(UnitsPerEm, UnitsPerEm);
        _font.SetFunctionsOpenType();
    }

    /// <summary>The face of running text.</summary>
    public static FontFace Regular => RegularFace.Value;

    /// <summary>The face of references, titles and numbers.</summary>
    public static FontFace Bold => BoldFace.Value;

    /// <summary>Font units an em.</summary>
    public int UnitsPerEm { get; }

    /// <summary>Whether the face has a glyph for a character.</summary>
    public bool Has(int codepoint) =>
        _has.TryGetValue(codepoint, out bool known) ? known : _has[codepoint] = _font.TryGetNominalGlyph((uint)codepoint, out _);

    /// <summary>Whether the small file to embed has every character of a text.</summary>
    public static bool IsNarrow(string text) => text.All(Narrow.Value.Contains);

    /// <summary>Advance of a text in font units, kerning and ligatures included.</summary>
    public long Advance(string text)
    {
        using var buffer = new HarfBuzzSharp.Buffer { Direction = Direction.LeftToRight, Language = new Language("en") };
        buffer.AddUtf16(text);
        buffer.GuessSegmentProperties();
        _font.Shape(buffer);
        long sum = 0;
        foreach (GlyphPosition position in buffer.GetGlyphPositionSpan())
            sum += position.XAdvance;
        return sum;
    }

    /// <summary>The TrueType file, for a renderer that draws text itself.</summary>
    public byte[] TrueType() => Resource($"HotsideSans-{_style}.ttf");

    /// <summary>The WOFF2 file to embed: the small one, or all that the face has.</summary>
    public byte[] Woff2(bool wide) => Resource($"HotsideSans-{_style}{(wide ? "-Wide" : "")}.woff2");

    private static byte[] Resource(string file)
    {
        using Stream stream = typeof(FontFace).Assembly.GetManifestResourceStream("fonts/" + file)
            ?? throw new InvalidOperationException($"The assembly lacks its font {file}.");
        byte[] bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
