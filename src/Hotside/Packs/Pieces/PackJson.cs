using System.Collections.Immutable;
using System.Text.Json;
using Hotside.Outputs;
using Hotside.Packs.Lists;
using Hotside.Packs.Pages;
using Hotside.Wording;

namespace Hotside.Packs.Pieces;

/// <summary>The lists of a pack as JSON of the contract <c>hotside-pack/1</c>, which may be extended but in which nothing is renamed. Lengths are in metres, currents in amperes, volts in volts.</summary>
internal sealed class PackJson
{
    private const string Schema = "hotside-pack/1";

    private readonly Utf8JsonWriter json;
    private readonly PackSource source;

    private PackJson(Utf8JsonWriter json, PackSource source) => (this.json, this.source) = (json, source);

    public static string Write(PackSource source, ImmutableArray<PackSheet> sheets, ImmutableArray<PackPage> pages) =>
        JsonText.Of(Schema, json => new PackJson(json, source).All(sheets, pages));

    private void All(ImmutableArray<PackSheet> sheets, ImmutableArray<PackPage> pages)
    {
        json.WriteString("title", source.Job.Title);
        json.WriteStartObject("titleBlock");
        foreach (var (key, value) in source.Job.TitleBlock) json.WriteString(key, value);
        json.WriteEndObject();
        json.WriteNumber("sheets", sheets.Length);
        json.List("pages", pages, page =>
        {
            json.WriteString("key", page.Key);
            json.WriteString("title", page.Title);
            json.WriteNumber("firstSheet", page.FirstSheet);
            json.WriteNumber("lastSheet", page.LastSheet);
        });
        if (source.Options.Asks(CautionPage.Key))
            json.List("cautions", Caution.All(source), caution =>
            {
                json.WriteString("about", caution.Head);
                json.WriteString("text", caution.Text);
            });
        if (source.Options.Asks(DecisionPage.Key) && source.IsAltered) json.List("decisions", source.Decisions, Decision);
        if (source.Options.Asks(ChangePage.Key) && source.IsAltered) json.List("changes", source.Alteration.Changes, Change);
        if (source.Options.Asks(LoadPage.Key)) json.List("loads", source.Loads, Load);
        if (source.Options.Asks(MaterialPage.Key) && source.IsAltered)
        {
            json.List("materials", MaterialList.Of(source.Alteration, source.Wires, source.Words), Material);
            json.List("cuts", CutLine.All(source.Wires), Cut);
        }
        if (source.Options.Asks(WirePage.Key)) json.List("wires", source.Wires, OneWire);
        if (source.Options.Asks(LabelPage.Key))
            json.List("labels", WireLabel.All(source.Wires), label =>
            {
                json.WriteString("wire", label.Wire);
                json.WriteString("at", label.At);
                json.WriteString("text", label.Text);
            });
        if (source.Options.Asks(FaultPage.Key)) json.List("faults", FaultEntry.All(source), Fault);
        if (source.Options.Asks(FusePage.Key)) json.List("fuses", source.Fuses, Fuse);
    }

    private void Decision(DecisionEntry decision)
    {
        json.Texts("parts", decision.Parts);
        json.WriteString("decision", decision.Decision);
        json.Text("becomes", decision.Becomes);
        json.Text("why", decision.Why);
        json.Texts("open", decision.Open.Select(f => f.Code).Distinct());
    }

    private void Change(Alterations.Change change)
    {
        json.WriteNumber("number", change.Number);
        json.Texts("items", change.Acts.SelectMany(a => a.Items));
        json.WriteString("text", ChangeText.Of(change with { Reason = null }, source.Alteration, source.Words));
        json.Text("reason", change.Reason ?? "");
        json.Text("zone", source.Zones.OfAll(change.Acts.SelectMany(a => a.Items)));
    }

    private void Load(LoadEntry load)
    {
        json.WriteString("name", load.Name);
        json.WriteString("title", load.Title);
        if (load.Was is { } was) json.WriteString("sideBefore", LoadEntry.Side(was, source.Words));
        if (load.Now is { } now) json.WriteString("sideAfter", LoadEntry.Side(now, source.Words));
        json.WriteString("on", load.Load.Control.ToString());
        json.Number("amperes", load.Amperes, 4);
        json.Texts("fuses", load.Fuses);
        if (load.Drop is var (volts, limit))
        {
            json.Number("drop", volts, 4);
            json.Number("dropLimit", limit, 4);
        }
        json.Number("meanByDay", load.Budget?.ByDay.Amperes, 4);
        json.Number("meanByNight", load.Budget?.ByNight.Amperes, 4);
    }

    private void Material(MaterialLine line)
    {
        json.WriteString("sort", line.Sort.ToString().ToLowerInvariant());
        json.WriteString("name", line.Name);
        json.Number("length", line.Length?.Meters, 3);
        if (line.Count is { } count) json.WriteNumber("count", count);
        if (line.Spares > 0) json.WriteNumber("spares", line.Spares);
        json.Texts("for", line.For);
        if (!line.NotMeasured.IsEmpty) json.Texts("notMeasured", line.NotMeasured);
    }

    private void Cut(CutLine cut)
    {
        json.WriteString("wire", cut.Wire);
        json.WriteString("from", cut.From);
        json.WriteString("to", cut.To);
        json.WriteString("size", cut.SizeText);
        json.Text("colour", cut.Colour);
        json.Number("length", cut.Length?.Meters, 3);
        json.Number("cut", cut.Cut?.Meters, 3);
        json.Text("terminalFrom", cut.TerminalFrom);
        json.Text("terminalTo", cut.TerminalTo);
    }

    private void OneWire(WireEntry wire)
    {
        json.WriteString("wire", wire.Id);
        json.WriteString("from", wire.Ends.From);
        json.WriteString("to", wire.Ends.To);
        json.WriteString("size", wire.Size);
        json.Text("colour", WireChangeText.Colour(wire.Wire));
        json.Number("length", wire.Wire.LengthInMetres, 3);
        json.Text("path", wire.Path);
        json.WriteString("change", wire.Change);
    }

    private void Fault(FaultEntry fault)
    {
        json.WriteString("dead", fault.Load.Name);
        json.WriteString("setting", fault.Setting);
        json.List("readings", fault.Readings, reading =>
        {
            json.WriteString("at", reading.At);
            json.Number("volts", reading.Volts, 3);
        });
    }

    private void Fuse(FuseEntry fuse)
    {
        json.WriteString("fuse", fuse.Name);
        json.Number("amperes", fuse.Amperes, 3);
        json.Text("colour", fuse.Colour);
        json.Text("where", fuse.Position);
        json.Text("serves", fuse.Title);
        json.Texts("dead", fuse.Dead);
        json.Texts("charged", fuse.Charged);
        json.Text("guards", fuse.Guards);
    }
}
