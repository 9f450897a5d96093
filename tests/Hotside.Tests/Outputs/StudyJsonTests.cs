using System.Text.Json;
using Hotside.Studies;
using Hotside.Studies.Figures;
using Hotside.Tests.Support;

namespace Hotside.Tests.Outputs;

public class StudyJsonTests
{
    // Of twelve switches: none, each alone, some, all.
    private static readonly int[] Rows = [0, .. Enumerable.Range(0, 12).Select(i => 1 << i), 6, 2730, 4095];

    [Fact]
    public void The_horn_circuit_as_json_is_the_approved_one() =>
        Approve.Text(Job.ReadFile(Repository.Path("gallery", "horn", "job.yaml")).OrThrow().ToJson().Replace(Repository.Path(""), "", StringComparison.Ordinal),
            "tests", "Hotside.Tests", "Outputs", "horn-study.approved.json");

    // Kirchhoff: what a single battery gives is what its load has and what the ways to it and from it take.
    [Fact]
    public void What_the_ways_of_a_load_take_stands_beside_it_and_adds_up()
    {
        using var json = JsonDocument.Parse(Job.Read("""
            hotside: 1
            system: 12 V, negative ground, sizes in mm²
            parts:
              G1: battery, 12 V, 60 Ah
              S1: switch
              E1: lamp, 12 V, 55 W
            wires:
              w1: G1.neg to chassis, 10 BK, 0.5 m
              w2: G1.pos to S1.1, 1 RD, 3 m
              w3: S1.2 to E1.1, 1 RD, 2 m
              w4: E1.2 to chassis, 1 BK, 1 m
            settings:
              lit: S1 on
            """).OrThrow().ToJson());
        var setting = json.RootElement.GetProperty("after").GetProperty("settings")[0];
        double At(string terminal) => setting.GetProperty("terminals").GetProperty(terminal).GetDouble();
        var lamp = setting.GetProperty("parts").GetProperty("E1");
        double feed = lamp.GetProperty("lostInFeed").GetDouble(), back = lamp.GetProperty("lostInReturn").GetDouble();
        Assert.True(feed > 0.1 && back > 0.01, $"{feed}, {back}");
        Assert.Equal(At("G1.pos") - At("G1.neg"), Math.Abs(lamp.GetProperty("voltage").GetDouble()) + feed + back, 3);
        Assert.Equal(At("G1.pos") - At("E1.1"), feed, 3);
        Assert.False(setting.GetProperty("parts").GetProperty("G1").TryGetProperty("lostInFeed", out _));
    }

    [Fact]
    public void Every_load_of_every_job_file_stands_in_its_json_with_side_and_control()
    {
        foreach (string file in JobFiles.All)
        {
            if (JobFiles.Read(file).Alteration is not { } alteration) continue;
            var job = Job.From(alteration);
            string text = job.ToJson();
            Assert.Equal(text, Job.From(alteration).ToJson());
            using var json = JsonDocument.Parse(text);
            Assert.Equal("hotside-study/1", json.RootElement.GetProperty("schema").GetString());
            Compare(job.Study.Before, json.RootElement.GetProperty("before"));
            Compare(job.Study.After, json.RootElement.GetProperty("after"));
            Assert.Equal(alteration.Changes.Length, json.RootElement.GetProperty("changes").GetArrayLength());
            Assert.Equal(job.Findings.Length, json.RootElement.GetProperty("findings").GetArrayLength());
        }
    }

    [Fact]
    public void A_control_of_too_many_combinations_is_an_expression_whose_shared_terms_have_ids()
    {
        // A lamp behind two rows of twelve switches beside each other: 144 combinations, more than are listed.
        int[] all = [.. Enumerable.Range(1, 24)];
        string text = "hotside: 1\nsystem: 12 V, negative ground\nparts:\n  G1: battery, 12 V\n  X1: feed-rail\n  X2: feed-rail\n  E1: lamp, 12 V, 21 W\n"
            + string.Concat(all.Select(i => $"  S{i}: switch\n"))
            + "wires:\n  w1: G1.neg to chassis\n  w2: G1.pos to X1\n  w3: E1.2 to chassis\n"
            + string.Concat(all.Select(i => i <= 12 ? $"  a{i}: X1 to S{i}.1\n  b{i}: S{i}.2 to X2\n" : $"  a{i}: X2 to S{i}.1\n  b{i}: S{i}.2 to E1.1\n"));
        using var json = JsonDocument.Parse(Job.Read(text).OrThrow().ToJson());
        // Ids are those of the whole text: what the circuit before has named, the one after refers to.
        JsonElement[] controls = [.. new[] { "before", "after" }.Select(c => json.RootElement.GetProperty(c).GetProperty("loads")[0].GetProperty("control"))];
        Dictionary<string, JsonElement> named = [];
        foreach (var control in controls) Name(control);
        Assert.NotEmpty(named);
        foreach (var control in controls)
            foreach (int one in Rows)
                foreach (int other in Rows)
                    Assert.Equal(one != 0 && other != 0, Holds(control, one | other << 12));

        void Name(JsonElement term)
        {
            if (term.TryGetProperty("id", out var id)) named.Add(id.GetString()!, term);
            foreach (var property in term.EnumerateObject())
                if (property.Name is "any" or "all")
                    foreach (var part in property.Value.EnumerateArray()) Name(part);
        }

        bool Holds(JsonElement term, int state)
        {
            if (term.TryGetProperty("ref", out var name)) return Holds(named[name.GetString()!], state);
            if (term.TryGetProperty("any", out var any)) return any.EnumerateArray().Any(t => Holds(t, state));
            if (term.TryGetProperty("all", out var parts)) return parts.EnumerateArray().All(t => Holds(t, state));
            var set = term.EnumerateObject().Single();
            bool isOn = (state >> (int.Parse(set.Name[1..], System.Globalization.CultureInfo.InvariantCulture) - 1) & 1) == 1;
            return set.Value.EnumerateArray().Any(p => p.GetString() == (isOn ? "on" : "off"));
        }
    }

    private static void Compare(CircuitStudy study, JsonElement json)
    {
        var loads = study.Loads.Where(l => !l.Element.IsInternal).ToArray();
        var written = json.GetProperty("loads").EnumerateArray().ToArray();
        Assert.Equal(loads.Select(l => (l.Part.Id, l.Element.Name)), written.Select(w => (w.GetProperty("part").GetString()!, w.GetProperty("element").GetString()!)));
        foreach (var (load, w) in loads.Zip(written))
        {
            Assert.Equal(load.Side.ToString().ToLowerInvariant(), w.GetProperty("side").GetString()!.Replace("-", "", StringComparison.Ordinal));
            if (load.Control.IsCut) continue;
            var any = w.GetProperty("control").GetProperty("any").EnumerateArray().Select(c => string.Join(" and ", c.GetProperty("all").EnumerateArray()
                .SelectMany(s => s.EnumerateObject()).Select(p => p.Name + " " + string.Join(" or ", p.Value.EnumerateArray().Select(v => v.GetString()))))).ToArray();
            Assert.Equal(load.Control.Any.Select(c => c.ToString()), any);
        }
        var settings = json.GetProperty("settings").EnumerateArray().ToArray();
        Assert.Equal(study.Circuit.Settings.Select(s => s.Name), settings.Select(s => s.GetProperty("name").GetString()!));
        foreach (var (setting, w) in study.Settings.Zip(settings)) Compare(setting.Figures, w);
        Assert.Equal(study.Circuit.Sequences.Select(s => s.Name), json.GetProperty("sequences").EnumerateArray().Select(s => s.GetProperty("name").GetString()!));
    }

    // Every terminal, conductor and load stands in it, to a tenth of a millivolt or milliampere.
    private static void Compare(SettingFigures figures, JsonElement json)
    {
        var terminals = json.GetProperty("terminals");
        foreach (var terminal in figures.Terminals.Where(t => t.End.Part is not null))
        {
            string name = terminal.End.ToString();
            var at = terminals.TryGetProperty(name, out var full) ? full : terminals.GetProperty(terminal.End.Part!);
            if (terminal.Voltage is { } volts) Assert.Equal(volts.Volts, at.GetDouble(), 6e-5);
            else Assert.Equal(JsonValueKind.Null, at.ValueKind);
        }
        foreach (var wire in figures.Conductors)
        {
            var written = json.GetProperty("wires").GetProperty(wire.Conductor.Id);
            Assert.Equal(wire.Current.Amperes, written.GetProperty("current").GetDouble(), 6e-5);
            Assert.Equal(wire.Drop.Volts, written.GetProperty("drop").GetDouble(), 6e-5);
        }
        foreach (var load in figures.Loads)
        {
            var written = json.GetProperty("parts").GetProperty(load.Name);
            Assert.Equal(load.Voltage.Volts, written.GetProperty("voltage").GetDouble(), 6e-5);
            Assert.Equal(load.Current.Amperes, written.GetProperty("current").GetDouble(), 6e-5);
            Assert.Equal((double)load.Power.Watts, written.GetProperty("power").GetDouble(), 6e-5);
        }
    }
}
