using Hotside.Packs.Lists;
using Hotside.Packs.Papers;
using Hotside.Wording;

namespace Hotside.Packs.Pages;

/// <summary>What to measure first where a load is dead, a line a load.</summary>
internal static class FaultPage
{
    public const string Key = "faults";

    public static Section? Of(PackSource source)
    {
        var entries = FaultEntry.All(source);
        if (entries.IsEmpty) return null;
        var (width, lettering) = (source.Width, source.Lettering);
        int most = entries.Max(e => e.Readings.Length);
        Column[] columns = [new("Dead") { IsBold = true }, new("") { Share = 1 }, new("Switched on") { Share = 1 }, .. Enumerable.Range(1, most).Select(n => new Column(n == 1 ? "Measure first" : "then") { Least = 70 })];
        var rows = entries.Select(e => TableRow.Of(
        [
            e.Load.Name, source.Words.Title(e.Load.Part), e.Setting, .. e.Readings.Select(r => new Cell($"{r.At}: {QuantityWords.MeterVolts(r.Volts)}")), .. Enumerable.Repeat(Cell.Empty, most - e.Readings.Length),
        ]));
        return new(Key, "Fault page",
        [
            Prose.Points(
            [
                $"Black lead on {(source.Alteration.After.System.Return is { } node ? source.Alteration.After.TextOf(node) : "bare chassis metal")}, the load switched on, full battery; take a test lamp or a loaded meter. Each value is what a sound circuit shows.",
                "First reading wrong: look towards the battery, the fuse first. First right and next wrong: look between the two. Battery volts where a value is near 0: the way back is open. All right: the load itself, or its way back where that is no terminal.",
            ], lettering.Cell, width),
            Table.Of([.. columns], rows, width, lettering),
            Prose.Paragraph((source.Options.GoOn is { Length: > 0 } goOn ? goOn + " " : "") + FigureText.HowComeBy, lettering.Fine, width),
        ]) { Note = SheetText.System(source.Alteration.After.System, source.Words) };
    }
}
