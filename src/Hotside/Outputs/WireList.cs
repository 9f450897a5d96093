using System.Collections.Immutable;
using System.Text;
using Hotside.Alterations;
using Hotside.Outputs;
using Hotside.Wording;

namespace Hotside;

/// <summary>The wires of both circuits as a list: one line each, with what becomes of it. Immutable.</summary>
public sealed class WireList
{
    private readonly string title, supply;

    private WireList(string title, string supply, ImmutableArray<WireRow> rows) => (this.title, this.supply, Rows) = (title, supply, rows);

    /// <summary>The lines: the wires of the before circuit in the order of the file, then those that are only in the after circuit.</summary>
    public ImmutableArray<WireRow> Rows { get; }

    /// <summary>The wire list of a job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="words">Whose words the heading uses.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="words"/> is none of the two.</exception>
    public static WireList Of(Job job, Words words = Words.American)
    {
        ArgumentNullException.ThrowIfNull(job);
        var alteration = job.Alteration;
        var ids = alteration.Before.Conductors.Concat(alteration.After.Conductors).Select(c => c.Id).Distinct();
        return new(job.Title, SheetText.Supply(alteration, Vocabulary.Of(words)), [.. ids.Select(id => Row(id, alteration))]);
    }

    /// <summary>The list as a table in plain text, columns aligned by spaces, a heading above and a caution below; lines end with a line feed.</summary>
    public string ToText() => WireTable.Write(title, supply, Rows);

    /// <summary>The list as comma-separated values after RFC 4180: a head line, lines ended by carriage return and line feed, lengths in metres.</summary>
    public string ToCsv() => WireTable.WriteCsv(Rows);

    /// <summary>Writes the text table to a file in UTF-8: beside it first, then renamed, so that a failed run leaves what was there.</summary>
    /// <param name="path">The file; its folder exists.</param>
    /// <exception cref="ArgumentException"><paramref name="path"/> is empty.</exception>
    /// <exception cref="IOException">The file cannot be written, its folder does not exist, or the path is a folder.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be written.</exception>
    public void SaveText(string path)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        SafeFile.Write(path, Encoding.UTF8.GetBytes(ToText()));
    }

    /// <summary>Writes the comma-separated values to a file in UTF-8: beside it first, then renamed, so that a failed run leaves what was there.</summary>
    /// <param name="path">The file; its folder exists.</param>
    /// <exception cref="ArgumentException"><paramref name="path"/> is empty.</exception>
    /// <exception cref="IOException">The file cannot be written, its folder does not exist, or the path is a folder.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be written.</exception>
    public void SaveCsv(string path)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        SafeFile.Write(path, Encoding.UTF8.GetBytes(ToCsv()));
    }

    private static WireRow Row(string id, Alteration alteration)
    {
        var (circuit, wire) = alteration.After.FindConductor(id) is { } now ? (alteration.After, now) : (alteration.Before, alteration.Before.FindConductor(id)!);
        string numbers = alteration.LabelsOf(id);
        return new(
            numbers, id, circuit.TextOf(wire.From), circuit.TextOf(wire.To), wire.Wire.Size?.ToString() ?? "", WireChangeText.Colour(wire.Wire),
            wire.Wire.LengthInMetres, wire.Wire.Loom ?? "", WireChangeText.Of(id, alteration));
    }
}
