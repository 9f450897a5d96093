using Hotside.Circuits;
using Hotside.Packs.Lists;
using Hotside.Packs.Papers;
using Hotside.Wording;

namespace Hotside.Packs.Pages;

/// <summary>Every wire with its ends, sorted by where it runs.</summary>
internal static class WirePage
{
    public const string Key = "wires";

    public static Section? Of(PackSource source)
    {
        if (source.Wires.IsEmpty) return null;
        var (width, lettering) = (source.WideWidth, source.Lettering);
        bool isAltered = source.IsAltered;
        Column[] columns =
        [
            Column.Tick(), .. isAltered ? [new Column("No.") { IsRight = true }] : Array.Empty<Column>(), new("Wire") { IsBold = true }, new("From") { IsBold = true }, new("Terminal") { Share = 1 }, new("To") { IsBold = true }, new("Terminal") { Share = 1 },
            new("Size") { Share = 0.01 }, new(Vocabulary.Capital(source.Words.Color)), new("Runs") { IsRight = true }, .. isAltered ? [new Column("What becomes of it") { Share = 2 }] : Array.Empty<Column>(), Column.Blank("Length cut", 15),
        ];
        List<TableRow> rows = [];
        bool byPath = source.Wires.Any(w => w.IsThere && w.Path.Length > 0);
        string? group = null;
        foreach (var wire in source.Wires)
        {
            string head = !wire.IsThere ? "Taken out" : byPath ? wire.Path.Length > 0 ? wire.Path : "No loom or place stated" : "";
            if (head != group && head.Length > 0) rows.Add(TableRow.Heading(head));
            group = head;
            rows.Add(Row(wire, isAltered));
        }
        var sizes = source.Wires.Select(w => w.Wire.Size).OfType<WireSize>().Where(s => s.Gauge is not null).Distinct().OrderByDescending(s => s.Area).Select(s => $"{s} = {Numbers.Plain(s.Area, s.Area < 10 ? 2 : 1)} mm²");
        string note = string.Join(", ", sizes);
        return new(Key, "Wire list",
        [
            Table.Of([.. columns], rows, width, lettering),
            Prose.Paragraph($"{(note.Length > 0 ? note + ". " : "")}{Vocabulary.Capital(source.Words.Color)}s after IEC 60757. Terminals by the part, blank where it has to be looked at; a bold line says where wires run. Sleeve text: see Labels.", lettering.Fine, width),
        ]) { IsLying = source.IsWideLying, Note = SheetText.Supply(source.Alteration, source.Words) };
    }

    private static TableRow Row(WireEntry wire, bool isAltered) => TableRow.Of(
    [
        Cell.Tick, .. isAltered ? [new Cell(string.Join(", ", wire.Numbers))] : Array.Empty<Cell>(), wire.Id, wire.Ends.From, wire.New.From ? wire.Terminals.From : "", wire.Ends.To, wire.New.To ? wire.Terminals.To : "", wire.Size, WireChangeText.Colour(wire.Wire),
        wire.Wire.LengthInMetres is { } metres ? Numbers.Fixed(metres, 2) + " m" : "measure", .. isAltered ? [new Cell(wire.Change)] : Array.Empty<Cell>(), Cell.Empty,
    ]);
}
