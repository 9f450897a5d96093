using System.Collections.Frozen;
using Hotside.Circuits;

namespace Hotside.Packs.Lists;

/// <summary>The colour of a blade fuse, by its amperes: data of the room.</summary>
internal static class FuseColour
{
    private static readonly Lazy<FrozenDictionary<string, string>> Known = new(Read);

    /// <summary>The colour; empty for a rating that is not made as a blade.</summary>
    public static string Of(double amperes) => Known.Value.GetValueOrDefault(Numbers.Plain(amperes), "");

    private static FrozenDictionary<string, string> Read()
    {
        using var stream = typeof(FuseColour).Assembly.GetManifestResourceStream("packs/fuse-colours.txt") ?? throw new InvalidOperationException("The assembly lacks its colours of fuses.");
        using StreamReader reader = new(stream);
        return reader.ReadToEnd().ReplaceLineEndings("\n").Split('\n').Where(l => l.Length > 0 && l[0] != '#').Select(l => l.Split(' ', 2)).ToFrozenDictionary(l => l[0], l => l[1], StringComparer.Ordinal);
    }
}
