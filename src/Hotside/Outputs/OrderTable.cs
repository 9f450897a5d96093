using System.Collections.Immutable;
using Hotside.Diagnostics;
using Hotside.Orders;
using Hotside.Outputs;
using Hotside.Wording;

namespace Hotside;

/// <summary>A job's order of work, to be printed and ticked off, as comma-separated values, or as JSON. Immutable.</summary>
public sealed class OrderTable
{
    private readonly string supply;

    private OrderTable(WorkOrder order, string supply, ImmutableArray<Diagnostic> stops) => (Order, this.supply, Stops) = (order, supply, stops);

    /// <summary>The order.</summary>
    public WorkOrder Order { get; }

    /// <summary>The findings of the job that forbid the work, and that the file does not accept: nobody works to an order that the check refuses.</summary>
    public ImmutableArray<Diagnostic> Stops { get; }

    /// <summary>The order of a job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="words">Whose words it uses.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="words"/> is none of the two.</exception>
    public static OrderTable Of(Job job, Words words = Words.American)
    {
        ArgumentNullException.ThrowIfNull(job);
        return new(job.OrderWork(words), SheetText.Supply(job.Alteration, Vocabulary.Of(words)), job.Stops);
    }

    /// <summary>The order in plain text, 100 columns wide: cautions first, then steps with a box to tick, and beside them what a battery would do; lines end with a line feed.</summary>
    public string ToText() => OrderSheet.Write(Order, supply, Stops);

    /// <summary>The order as comma-separated values after RFC 4180, a line an act, each with the codes of stops that the check finds: a head line, lines ended by carriage return and line feed.</summary>
    public string ToCsv() => OrderRows.WriteCsv(Order, Stops);

    /// <summary>The order as JSON of the contract <c>hotside-order/1</c>.</summary>
    public string ToJson() => OrderRows.WriteJson(Order, supply, Stops);

    /// <summary>Writes the text to a file in UTF-8: beside it first, then renamed, so that a failed run leaves what was there.</summary>
    /// <param name="path">The file; its folder exists.</param>
    /// <exception cref="ArgumentException"><paramref name="path"/> is empty.</exception>
    /// <exception cref="IOException">The file cannot be written, its folder does not exist, or the path is a folder.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be written.</exception>
    public void SaveText(string path) => SafeFile.Write(path, ToText);

    /// <summary>Writes the comma-separated values to a file in UTF-8, as <see cref="SaveText"/> does.</summary>
    /// <param name="path">The file; its folder exists.</param>
    /// <exception cref="ArgumentException"><paramref name="path"/> is empty.</exception>
    /// <exception cref="IOException">The file cannot be written, its folder does not exist, or the path is a folder.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be written.</exception>
    public void SaveCsv(string path) => SafeFile.Write(path, ToCsv);

    /// <summary>Writes the JSON to a file in UTF-8, as <see cref="SaveText"/> does.</summary>
    /// <param name="path">The file; its folder exists.</param>
    /// <exception cref="ArgumentException"><paramref name="path"/> is empty.</exception>
    /// <exception cref="IOException">The file cannot be written, its folder does not exist, or the path is a folder.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be written.</exception>
    public void SaveJson(string path) => SafeFile.Write(path, ToJson);
}
