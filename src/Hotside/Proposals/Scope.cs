using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Proposals;

/// <summary>What a proposal is about: the whole vehicle, or single jobs.</summary>
internal sealed class Scope
{
    private const string Horn = "horn", Leds = "lamps-led", Fuses = "fuses";

    private readonly HashSet<string> parts = new(StringComparer.Ordinal);

    /// <summary>The scope of a request.</summary>
    /// <exception cref="ArgumentException">A word is neither a job nor a part; the message names the nearest.</exception>
    public Scope(ImmutableArray<string> only, Circuit circuit)
    {
        IsWhole = only.IsEmpty;
        foreach (string word in only.SelectMany(o => o.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)))
            if (word == Horn) parts.UnionWith(circuit.Parts.Where(p => p.Kind.Elements.Any(e => e.Type == ElementType.Horn)).Select(p => p.Id));
            else if (word == Leds) HasLeds = true;
            else if (word == Fuses) HasFuses = true;
            else if (circuit.FindPart(word) is not null) parts.Add(word);
            else throw new ArgumentException($"\"{word}\" is neither a job ({Horn}, {Leds}, {Fuses}) nor a part{NearestName.Suggestion(word, circuit.Parts.Select(p => p.Id).Concat([Horn, Leds, Fuses]))}", nameof(only));
    }

    /// <summary>Whether the whole vehicle is meant.</summary>
    public bool IsWhole { get; }

    /// <summary>Whether lamps become LED lamps.</summary>
    public bool HasLeds { get; }

    /// <summary>Whether fuses are looked at.</summary>
    public bool HasFuses { get; }

    /// <summary>Whether a part was named, by itself or by its job.</summary>
    public bool Names(string part) => parts.Contains(part);
}
