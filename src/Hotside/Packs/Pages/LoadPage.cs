using Hotside.Circuits;
using Hotside.Packs.Lists;
using Hotside.Packs.Papers;
using Hotside.Studies.Figures.Budgets;
using Hotside.Wording;

namespace Hotside.Packs.Pages;

/// <summary>The loads before and after with current, fuse, wire and drop, and what they need of battery and machine.</summary>
internal static class LoadPage
{
    public const string Key = "loads";

    public static Section? Of(PackSource source)
    {
        if (source.Loads.IsEmpty) return null;
        var (width, lettering) = (source.WideWidth, source.Lettering);
        var budget = source.Job.Study.After.Budget;
        List<FlowPart> parts = [Loads(source)];
        if (!budget.Cases.IsEmpty)
        {
            parts.Add(Prose.Heading("Charging budget, after", width, lettering));
            parts.Add(Table.Of([new("") { Share = 1 }, new("Loads need") { IsRight = true }, new("Machine gives") { IsRight = true }, new("The battery") { Share = 1 }],
                budget.Cases.Select(c => TableRow.Of(Vocabulary.Capital(c.Name), Amperes(c.Needed.Amperes), Amperes(c.Given.Amperes), BudgetText.Battery(c))), width, lettering));
        }
        string[] told = [.. BudgetText.Of(budget, source.Words)];
        if (told.Length > 0) parts.Add(Prose.Points(told, lettering.Cell, width));
        parts.Add(Prose.Paragraph("A: with that load alone on. Drop: what the way there and back loses, of what it may; bold where it is more. Day and night: mean amperes, as rough as the habits they average. " + FigureText.HowComeBy, lettering.Fine, width));
        return new(Key, "Load table", [.. parts]) { IsLying = source.IsWideLying, Note = SheetText.Supply(source.Alteration, source.Words) };
    }

    private static FlowPart Loads(PackSource source)
    {
        bool isAltered = source.IsAltered;
        Column[] columns =
        [
            new("Load") { IsBold = true }, new("") { Share = 1 }, new("On when") { Share = 1 }, .. isAltered ? [new Column("Side before")] : Array.Empty<Column>(), new(isAltered ? "Side after" : "Side"), new("A") { IsRight = true },
            new("Fuse"), new("Thinnest wire"), new("Drop, V") { IsRight = true }, new("Day") { IsRight = true }, new("Night, rain") { IsRight = true },
        ];
        return Table.Of([.. columns], source.Loads.Select(l => TableRow.Of(
        [
            l.Name, l.Title, l.Now is null ? "goes" : l.Load.Control.ToString(), .. isAltered ? [new Cell(LoadEntry.Side(l.Was, source.Words))] : Array.Empty<Cell>(), LoadEntry.Side(l.Now, source.Words),
            l.Amperes is { } amperes ? Numbers.ThreeFigures(amperes) : "", l.Fuses.IsEmpty && !l.Load.Paths.IsEmpty ? "none" : string.Join(", ", l.Fuses), l.Thinnest, Drop(l),
            Mean(l.Budget, b => b.ByDay.Amperes), Mean(l.Budget, b => b.ByNight.Amperes),
        ])), source.WideWidth, source.Lettering);
    }

    // Bold where it loses more than it may.
    private static Cell Drop(LoadEntry load) => load.Drop is not var (volts, limit) ? Cell.Empty : new Cell($"{Numbers.Fixed(volts, 2)} of {Numbers.Fixed(limit, 2)}") { IsBold = volts > limit };

    private static string Mean(BudgetLine? line, Func<BudgetLine, double> amperes) => line is null ? "" : amperes(line) is var value && value < 0.005 ? "0" : Numbers.Fixed(value, 2);

    private static string Amperes(double value) => Numbers.ThreeFigures(value) + " A";
}
