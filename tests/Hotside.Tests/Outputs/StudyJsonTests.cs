using System.Text.Json;
using Hotside.Studies;
using Hotside.Studies.Figures;
using Hotside.Tests.Support;

namespace Hotside.Tests.Outputs;

public class StudyJsonTests
{
    [Fact]
    public void The_horn_circuit_as_json_is_the_approved_one() =>
        Approve.Text(Job.ReadFile(Repository.Path("gallery", "horn", "job.yaml")).OrThrow().ToJson().Replace(Repository.Path(""), "", StringComparison.Ordinal),
            "tests", "Hotside.Tests", "Outputs", "horn-study.approved.json");

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
