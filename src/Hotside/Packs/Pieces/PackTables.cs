using Hotside.Circuits;
using Hotside.Outputs;
using Hotside.Packs.Lists;
using Hotside.Packs.Pages;
using Hotside.Wording;

namespace Hotside.Packs.Pieces;

/// <summary>The lists of a pack as comma-separated values, a file a list: lengths in metres, numbers with a point.</summary>
internal static class PackTables
{
    /// <summary>The files with their contents: those of the pages that were asked for and have something to say.</summary>
    public static IEnumerable<(string Name, string Text)> Of(PackSource source)
    {
        var options = source.Options;
        if (options.Asks(ChangePage.Key) && source.IsAltered)
            yield return ("changes.csv", CsvText.Of([["no.", "items", "what", "reason", "sheet and zone"], .. source.Alteration.Changes.Select(c => new[]
            {
                Numbers.Whole(c.Number), string.Join(' ', c.Acts.SelectMany(a => a.Items)), ChangeText.Of(c with { Reason = null }, source.Alteration, source.Words), c.Reason ?? "", source.Zones.OfAll(c.Acts.SelectMany(a => a.Items)),
            })]));
        if (options.Asks(MaterialPage.Key) && source.IsAltered)
        {
            yield return ("materials.csv", CsvText.Of([["sort", "what", "metres", "pieces", "spares", "for", "to be measured"], .. MaterialList.Of(source.Alteration, source.Wires, source.Words).Select(m => new[]
            {
                m.Sort.ToString().ToLowerInvariant(), m.Name, m.Length is { } length ? Numbers.Plain(length.Meters, 3) : "", m.Count is { } count ? Numbers.Whole(count) : "", m.Spares > 0 ? Numbers.Whole(m.Spares) : "", string.Join(' ', m.For), string.Join(' ', m.NotMeasured),
            })]));
            if (CutLine.All(source.Wires) is { IsEmpty: false } cuts)
                yield return ("cuts.csv", CsvText.Of([["wire", "size", "colour", "cut in m", "runs in m", "from", "terminal from", "to", "terminal to"], .. cuts.Select(c => new[]
                {
                    c.Wire, c.SizeText, c.Colour, Metres(c.Cut?.Meters), Metres(c.Length?.Meters), c.From, c.TerminalFrom, c.To, c.TerminalTo,
                })]));
        }
        if (options.Asks(WirePage.Key) && !source.Wires.IsEmpty)
            yield return ("wires.csv", CsvText.Of([[.. WireTable.CsvHead, "terminal from", "terminal to"], .. source.Wires.Select(w => new[]
            {
                source.Alteration.LabelsOf(w.Id), w.Id, w.Ends.From, w.Ends.To, w.Size, WireChangeText.Colour(w.Wire), Metres(w.Wire.LengthInMetres), w.Path, w.Change, w.New.From ? w.Terminals.From : "", w.New.To ? w.Terminals.To : "",
            })]));
        if (options.Asks(LabelPage.Key) && WireLabel.All(source.Wires) is { IsEmpty: false } labels)
            yield return ("labels.csv", CsvText.Of([["wire", "at", "text"], .. labels.Select(l => new[] { l.Wire, l.At, l.Text })]));
        if (options.Asks(OrderPage.Key) && source.IsAltered) yield return ("work-order.csv", OrderTable.Of(source.Job, options.Words).ToCsv());
        if ((options.Asks(CheckPage.DeadKey) || options.Asks(CheckPage.LiveKey)) && !source.CheckSheet.Rows.IsEmpty) yield return ("check-sheet.csv", source.CheckSheet.ToCsv());
        if (options.Asks(FusePage.Key) && !source.Fuses.IsEmpty)
            yield return ("fuses.csv", CsvText.Of([["fuse", "where", "rating in A", "colour of a blade", "serves", "dead without it", "thinnest wire"], .. source.Fuses.Select(f => new[]
            {
                f.Name, f.Position, f.Amperes is { } amperes ? Numbers.Plain(amperes) : "", f.Colour, f.Title, string.Join("; ", f.Dead), f.Guards,
            })]));
    }

    private static string Metres(double? metres) => metres is { } known ? Numbers.Plain(known, 3) : "";
}
