using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Kinds;
using Hotside.Notation;

namespace Hotside.Reading;

/// <summary>What the readers of the sections share while one job is read.</summary>
internal sealed class ReadingContext(Catalogue kinds)
{
    /// <summary>The kinds known, the job's own included.</summary>
    public Catalogue Kinds { get; set; } = kinds;

    public List<Diagnostic> Problems { get; } = [];

    /// <summary>Where parts, wires and changed ids stand.</summary>
    public Dictionary<string, SourceSpan> Places { get; } = new(StringComparer.Ordinal);

    /// <summary>Where what is replaced or renewed is said to be as it is after.</summary>
    public Dictionary<string, SourceSpan> LaterPlaces { get; } = new(StringComparer.Ordinal);

    /// <summary>The before circuit's parts by id.</summary>
    public Dictionary<string, Part> Parts { get; } = new(StringComparer.Ordinal);

    /// <summary>Ids that were given but whose line could not be read: what refers to them is silent.</summary>
    public HashSet<string> Unreadable { get; } = new(StringComparer.Ordinal);

    /// <summary>Kinds of the job's own that are wrong: what parts of them seem to lack is silent.</summary>
    public HashSet<string> BrokenKinds { get; } = new(StringComparer.Ordinal);

    /// <summary>The assemblies that lines refer to, to be looked up once all parts are read.</summary>
    public List<(string Id, SourceSpan Span)> Assemblies { get; } = [];

    /// <summary>By which marks the before circuit's terminals are written.</summary>
    public TerminalMarks Marks { get; } = new();

    public Unit? SizesIn { get; set; }

    public void Report(Diagnostic problem) => Problems.Add(problem);

    /// <summary>Takes an id into use; reports one that is malformed, reserved or taken.</summary>
    public bool Claim(YamlText id)
    {
        if (!ItemId.IsWellFormed(id.Value)) Report(ReadingProblems.BadId.At(id.Span, id.Value));
        else if (ItemId.IsReserved(id.Value)) Report(ReadingProblems.ReservedId.At(id.Span, id.Value) with { Hint = "choose another id" });
        else if (!Places.TryAdd(id.Value, id.Span)) Report(ReadingProblems.IdTaken.At(id.Span, id.Value) with { Hint = $"the first stands in line {Numbers.Whole(Places[id.Value].Line)}" });
        else return true;
        return false;
    }
}
