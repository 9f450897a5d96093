using System.Collections.Immutable;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Hotside.Circuits;
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

    public static string Write(PackSource source, ImmutableArray<PackSheet> sheets, ImmutableArray<PackPage> pages)
    {
        using MemoryStream stream = new();
        using (Utf8JsonWriter json = new(stream, new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
            new PackJson(json, source).All(sheets, pages);
        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    private void All(ImmutableArray<PackSheet> sheets, ImmutableArray<PackPage> pages)
    {
        json.WriteStartObject();
        json.WriteString("schema", Schema);
        json.WriteString("title", source.Job.Title);
        json.WriteStartObject("titleBlock");
        foreach (var (key, value) in source.Job.TitleBlock) json.WriteString(key, value);
        json.WriteEndObject();
        json.WriteNumber("sheets", sheets.Length);
        List("pages", pages, page =>
        {
            json.WriteString("key", page.Key);
            json.WriteString("title", page.Title);
            json.WriteNumber("firstSheet", page.FirstSheet);
            json.WriteNumber("lastSheet", page.LastSheet);
        });
        if (source.Options.Asks(CautionPage.Key))
            List("cautions", Caution.All(source), caution =>
            {
                json.WriteString("about", caution.Head);
                json.WriteString("text", caution.Text);
            });
        if (source.Options.Asks(DecisionPage.Key) && source.IsAltered) List("decisions", source.Decisions, Decision);
        if (source.Options.Asks(ChangePage.Key) && source.IsAltered) List("changes", source.Alteration.Changes, Change);
        if (source.Options.Asks(LoadPage.Key)) List("loads", source.Loads, Load);
        if (source.Options.Asks(MaterialPage.Key) && source.IsAltered)
        {
            List("materials", MaterialList.Of(source.Alteration, source.Wires, source.Words), Material);
            List("cuts", CutLine.All(source.Wires), Cut);
        }
        if (source.Options.Asks(WirePage.Key)) List("wires", source.Wires, OneWire);
        if (source.Options.Asks(LabelPage.Key))
            List("labels", WireLabel.All(source.Wires), label =>
            {
                json.WriteString("wire", label.Wire);
                json.WriteString("at", label.At);
                json.WriteString("text", label.Text);
            });
        if (source.Options.Asks(FaultPage.Key)) List("faults", FaultEntry.All(source), Fault);
        if (source.Options.Asks(FusePage.Key)) List("fuses", source.Fuses, Fuse);
        json.WriteEndObject();
    }

    private void Decision(DecisionEntry decision)
    {
        Texts("parts", decision.Parts);
        json.WriteString("decision", decision.Decision);
        Text("becomes", decision.Becomes);
        Text("why", decision.Why);
        Texts("open", decision.Open.Select(f => f.Code).Distinct());
    }

    private void Change(Alterations.Change change)
    {
        json.WriteNumber("number", change.Number);
        Texts("items", change.Acts.SelectMany(a => a.Items));
        json.WriteString("text", ChangeText.Of(change with { Reason = null }, source.Alteration, source.Words));
        Text("reason", change.Reason ?? "");
        Text("zone", source.Zones.OfAll(change.Acts.SelectMany(a => a.Items)));
    }

    private void Load(LoadEntry load)
    {
        json.WriteString("name", load.Name);
        json.WriteString("title", load.Title);
        if (load.Was is { } was) json.WriteString("sideBefore", LoadEntry.Side(was, source.Words));
        if (load.Now is { } now) json.WriteString("sideAfter", LoadEntry.Side(now, source.Words));
        json.WriteString("on", load.Load.Control.ToString());
        Number("amperes", load.Amperes, 4);
        Texts("fuses", load.Fuses);
        if (load.Drop is var (volts, limit))
        {
            Number("drop", volts, 4);
            Number("dropLimit", limit, 4);
        }
        Number("meanByDay", load.Budget?.ByDay.Amperes, 4);
        Number("meanByNight", load.Budget?.ByNight.Amperes, 4);
    }

    private void Material(MaterialLine line)
    {
        json.WriteString("sort", line.Sort.ToString().ToLowerInvariant());
        json.WriteString("name", line.Name);
        Number("length", line.Length?.Meters, 3);
        if (line.Count is { } count) json.WriteNumber("count", count);
        if (line.Spares > 0) json.WriteNumber("spares", line.Spares);
        Texts("for", line.For);
        if (!line.NotMeasured.IsEmpty) Texts("notMeasured", line.NotMeasured);
    }

    private void Cut(CutLine cut)
    {
        json.WriteString("wire", cut.Wire);
        json.WriteString("from", cut.From);
        json.WriteString("to", cut.To);
        json.WriteString("size", cut.SizeText);
        Text("colour", cut.Colour);
        Number("length", cut.Length?.Meters, 3);
        Number("cut", cut.Cut?.Meters, 3);
        Text("terminalFrom", cut.TerminalFrom);
        Text("terminalTo", cut.TerminalTo);
    }

    private void OneWire(WireEntry wire)
    {
        json.WriteString("wire", wire.Id);
        json.WriteString("from", wire.Ends.From);
        json.WriteString("to", wire.Ends.To);
        json.WriteString("size", wire.Size);
        Text("colour", WireChangeText.Colour(wire.Wire));
        Number("length", wire.Wire.LengthInMetres, 3);
        Text("path", wire.Path);
        json.WriteString("change", wire.Change);
    }

    private void Fault(FaultEntry fault)
    {
        json.WriteString("dead", fault.Load.Name);
        json.WriteString("setting", fault.Setting);
        List("readings", fault.Readings, reading =>
        {
            json.WriteString("at", reading.At);
            Number("volts", reading.Volts, 3);
        });
    }

    private void Fuse(FuseEntry fuse)
    {
        json.WriteString("fuse", fuse.Name);
        Number("amperes", fuse.Amperes, 3);
        Text("colour", fuse.Colour);
        Text("where", fuse.Position);
        Text("serves", fuse.Title);
        Texts("dead", fuse.Dead);
        Text("guards", fuse.Guards);
    }

    private void List<T>(string name, IEnumerable<T> items, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (var item in items)
        {
            json.WriteStartObject();
            write(item);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private void Texts(string name, IEnumerable<string> texts)
    {
        json.WriteStartArray(name);
        foreach (string text in texts) json.WriteStringValue(text);
        json.WriteEndArray();
    }

    private void Text(string name, string text)
    {
        if (text.Length > 0) json.WriteString(name, text);
    }

    // As written everywhere, so that a number has the same digits on every machine.
    private void Number(string name, double? value, int decimals)
    {
        if (value is not { } known) return;
        json.WritePropertyName(name);
        json.WriteRawValue(Numbers.Plain(known, decimals));
    }
}
