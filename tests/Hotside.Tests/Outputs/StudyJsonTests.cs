using System.Text.Json;
using Hotside.Studies;
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
        Assert.Equal(study.Circuit.Settings.Select(s => s.Name), json.GetProperty("settings").EnumerateArray().Select(s => s.GetProperty("name").GetString()!));
    }
}
