using System.Collections.Immutable;
using System.Text.Json;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Studies;
using Hotside.Wording;

namespace Hotside.Outputs;

/// <summary>
/// A study as JSON of the contract <c>hotside-study/1</c>, which may be extended but in which nothing is renamed. Only what is computed stands in it.
/// </summary>
internal sealed class StudyJson
{
    private const string Schema = "hotside-study/1";

    private readonly Utf8JsonWriter json;
    private readonly Dictionary<ControlTerm, string> shared = [];

    private StudyJson(Utf8JsonWriter json) => this.json = json;

    public static string Write(Study study, ImmutableArray<Diagnostic> findings) =>
        JsonText.Of(Schema, json => new StudyJson(json).All(study, findings));

    private void All(Study study, ImmutableArray<Diagnostic> findings)
    {
        OneCircuit("before", study.Before);
        OneCircuit("after", study.After);
        json.List("changes", study.Alteration.Changes, change =>
        {
            json.WriteNumber("number", change.Number);
            json.Texts("items", change.Acts.SelectMany(a => a.Items));
            if (change.Reason is { } reason) json.WriteString("reason", reason);
            json.WriteString("text", ChangeText.Of(change, study.Alteration, Vocabulary.Of(Words.American)));
        });
        json.Findings(findings);
    }

    private void OneCircuit(string name, CircuitStudy study)
    {
        json.WriteStartObject(name);
        json.WriteStartObject("system");
        json.WriteNumber("voltage", study.Circuit.System.Volts[0]);
        json.WriteString("ground", study.Circuit.System.Ground.ToString().ToLowerInvariant());
        json.WriteEndObject();
        Marks(study.Circuit);
        json.List("loads", study.Loads.Where(l => !l.Element.IsInternal), Load);
        json.List("settings", study.Settings, setting => Setting(setting, study.Circuit));
        json.List("sequences", study.Sequences, sequence =>
        {
            json.WriteString("name", sequence.Sequence.Name);
            json.List("steps", sequence.Steps, step =>
            {
                json.WriteString("name", step.Setting.Name);
                FigureJson.Write(json, study.Circuit, step);
            });
        });
        json.WriteEndObject();
    }

    // Terminals have the names that the file writes; where a kind has another one, here it is.
    private void Marks(Circuit circuit)
    {
        var marked = circuit.Parts.Where(p => p.Kind.OnlyTerminal is null).SelectMany(p => p.Kind.Terminals.Where(t => t.Own != t.Name).Select(t => (End: circuit.TextOf(End.At(p.Id, t.Name)), t.Own))).ToArray();
        if (marked.Length == 0) return;
        json.WriteStartObject("marks");
        foreach (var (end, own) in marked) json.WriteString(end, own);
        json.WriteEndObject();
    }

    private void Load(LoadStudy load)
    {
        json.WriteString("part", load.Part.Id);
        json.WriteString("element", load.Element.Name);
        json.WriteString("side", Side(load.Side));
        json.Texts("through", load.InSeriesWith);
        json.Texts("chain", load.Chain);
        json.Texts("switchedBy", load.SwitchedBy);
        Hold(load.Holds);
        Control("control", load.Control);
        json.List("paths", load.Paths, path =>
        {
            json.Texts("hot", path.Hot);
            json.Texts("ground", path.Ground);
        });
        // Where they apply.
        if (load.Until is { } until)
        {
            json.WriteBoolean("momentary", true);
            json.WriteStartObject("until");
            json.WriteString(LabelOf(until), until.Position);
            json.WriteEndObject();
        }
        if (load.Strings.Length > 1)
            json.List("strings", load.Strings, part =>
            {
                json.Texts("through", part.With);
                Control("control", part.When);
            });
        if (!load.ShortedBy.IsEmpty) json.Texts("shortedBy", load.ShortedBy);
        if (!load.ReversedBy.IsEmpty) json.Texts("reversedBy", load.ReversedBy);
        if (!load.AlsoFedBy.IsEmpty) json.Texts("alsoFedBy", load.AlsoFedBy);
        if (!load.DisconnectedBy.IsEmpty) json.Texts("disconnectedBy", load.DisconnectedBy);
        if (load.SideWithDisconnects is { } whole && whole != load.Side) json.WriteString("sideWithDisconnects", Side(whole));
        if (load.StringSide is { } side) json.WriteString("stringSide", Side(side));
        if (load.Braked is { } braked) Control("braked", braked);
        if (load.IsInRace) json.WriteBoolean("race", true);
        if (load.Sneaks is { } sneaks) Control("sneaks", sneaks);
        if (!load.FedFrom.IsEmpty) json.Texts("fedFrom", load.FedFrom.Select(e => e.ToString()));
        if (load.DeadBecause is { } why) json.WriteString("deadBecause", why);
        if (load.IsApproximate) json.WriteBoolean("approximate", true);
    }

    private void Hold(Hold? hold)
    {
        if (hold is null)
        {
            json.WriteNull("holds");
            return;
        }
        json.WriteStartObject("holds");
        json.WriteString("relay", hold.Relay);
        json.WriteString("by", hold.Element);
        Control("while", hold.While);
        Control("released", hold.Released);
        json.WriteEndObject();
    }

    private void Setting(SettingStudy setting, Circuit circuit)
    {
        json.WriteString("name", setting.Setting.Name);
        Positions("positions", setting.Positions);
        Positions("relays", setting.Relays);
        json.Texts("on", setting.On);
        json.Texts("inSeries", setting.InSeries);
        if (setting.IsShort) json.WriteBoolean("short", true);
        if (setting.IsUnsettled) json.WriteBoolean("unsettled", true);
        FigureJson.Write(json, circuit, setting.Figures);
    }

    private void Positions(string name, ImmutableArray<SetPosition> positions)
    {
        var several = positions.GroupBy(p => p.Part).Where(g => g.Key is not null && g.Count() > 1).Select(g => g.Key).ToHashSet();
        json.WriteStartObject(name);
        foreach (var position in positions)
            json.WriteString(position.Part is { } part && !several.Contains(part) ? part : LabelOf(position), position.Position);
        json.WriteEndObject();
    }

    private static string LabelOf(SetPosition position) => position.Part is { } part ? $"{part} {position.Actuator}" : position.Actuator;

    private void Control(string name, Control control)
    {
        json.WritePropertyName(name);
        if (control is { IsCut: true, Whole: { } whole })
        {
            var often = whole.Shared;
            Term(whole, often);
            return;
        }
        json.WriteStartObject();
        json.List("any", control.Any, combination => json.List("all", combination.All, Set));
        json.WriteEndObject();
    }

    private void Set(PositionSet set) => json.Texts(set.Variable.Label, set.Positions);

    // A term that stands in several places is written once, with an id; elsewhere it is named.
    private void Term(ControlTerm term, ImmutableArray<ControlTerm> often)
    {
        json.WriteStartObject();
        if (shared.TryGetValue(term, out string? known)) json.WriteString("ref", known);
        else if (term.Position is { } set) Set(set);
        else
        {
            if (often.Contains(term)) json.WriteString("id", shared[term] = "c" + Numbers.Whole(shared.Count + 1));
            json.WriteStartArray(term.Any.IsEmpty ? "all" : "any");
            foreach (var part in term.All.Concat(term.Any)) Term(part, often);
            json.WriteEndArray();
        }
        json.WriteEndObject();
    }

    private static string Side(SwitchedSide side) => side switch
    {
        SwitchedSide.HotSwitched => "hot-switched",
        SwitchedSide.GroundSwitched => "ground-switched",
        SwitchedSide.BothSides => "both-sides",
        SwitchedSide.Unswitched => "unswitched",
        SwitchedSide.InSeries => "in-series",
        SwitchedSide.Elsewhere => "elsewhere",
        _ => "dead",
    };
}
