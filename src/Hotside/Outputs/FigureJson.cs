using System.Text.Json;
using Hotside.Circuits;
using Hotside.Studies.Figures;

namespace Hotside.Outputs;

/// <summary>
/// The figures of a setting within the contract <c>hotside-study/1</c>: volts, amperes and watts as plain numbers. Terminals against the return, with their sign, and what enters
/// parts there; currents from first end to second, counted from the feed to the return; what a source gives is above 0. To a tenth of a millivolt and of a milliampere: resistances are not known better.
/// </summary>
internal static class FigureJson
{
    private const double LeastAmperes = 5e-5;

    public static void Write(Utf8JsonWriter json, Circuit circuit, SettingFigures figures)
    {
        json.WriteStartObject("terminals");
        foreach (var terminal in figures.Terminals.DistinctBy(t => circuit.TextOf(t.End)))
            if (terminal.Voltage is { } volts) json.Number(circuit.TextOf(terminal.End), volts.Volts);
            else json.WriteNull(circuit.TextOf(terminal.End));
        json.WriteEndObject();
        json.WriteStartObject("entering");
        foreach (var terminal in figures.Terminals.DistinctBy(t => circuit.TextOf(t.End)).Where(t => Math.Abs(t.Current.Amperes) >= LeastAmperes)) json.Number(circuit.TextOf(terminal.End), terminal.Current.Amperes);
        json.WriteEndObject();
        json.WriteStartObject("wires");
        foreach (var wire in figures.Conductors)
        {
            json.WriteStartObject(wire.Conductor.Id);
            json.Number("current", wire.Current.Amperes);
            json.Number("drop", wire.Drop.Volts);
            if (wire.IsAssumed) json.WriteBoolean("assumed", true);
            if (wire.IsShared) json.WriteBoolean("shared", true);
            json.WriteEndObject();
        }
        json.WriteEndObject();
        json.WriteStartObject("parts");
        foreach (var element in figures.Elements.Where(e => (e.Element.IsConsumer && !e.Element.IsInternal) || e.Element.IsSource))
        {
            json.WriteStartObject(NameOf(element));
            json.Number("voltage", element.Voltage.Volts);
            json.Number("current", element.Current.Amperes);
            json.Number("power", (double)element.Power.Watts);
            if (element.Element.IsConsumer) json.Number("ofRated", element.OfRated.DecimalFractions);
            if (element is { Element.IsConsumer: true, IsLive: true } && LoadLoss.Of(element, circuit, figures) is { } lost)
            {
                json.Number("lostInFeed", lost.Feed);
                json.Number("lostInReturn", lost.Return);
            }
            if (element.IsBetweenFeeds) json.WriteBoolean("betweenFeeds", true);
            json.WriteEndObject();
        }
        json.WriteEndObject();
        Rest(json, figures);
    }

    // Where it applies.
    private static void Rest(Utf8JsonWriter json, SettingFigures figures)
    {
        if (figures.Shorted.Length > 0) json.Texts("shorted", figures.Shorted);
        if (figures.Relays != RelayOutcome.Settled)
            json.WriteString("outcome", figures.Relays switch { RelayOutcome.Race => "race", RelayOutcome.NeverSettles => "never-settles", _ => "not-searched-out" });
        if (figures.IfPulledBefore is not null) json.WriteBoolean("dependsOnHistory", true);
    }

    // A source that is alone in its part bears the part's id, as a load does.
    private static string NameOf(ElementFigure element) =>
        element.Element.IsSource && element.Part.Kind.Elements.Count(e => e.IsSource || (e.IsConsumer && !e.IsInternal)) == 1 ? element.Part.Id : element.Name;
}
