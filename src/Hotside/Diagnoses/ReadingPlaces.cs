using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Notation;
using Hotside.Studies;

namespace Hotside.Diagnoses;

/// <summary>Where and in which setting a reading was taken, looked up in the circuit; what is not known is answered with the nearest right name.</summary>
internal sealed class ReadingPlaces
{
    public static readonly DiagnosticKind UnknownPoint = new("HS3402", Severity.Error, "Reading at an unknown point", "the reading \"{0}\" names \"{1}\", which the circuit does not have");

    public static readonly DiagnosticKind UnknownSetting = new("HS3404", Severity.Error, "Reading in an unknown setting", "the reading \"{0}\" was taken in \"{1}\", which is no setting");

    private readonly CircuitStudy study;
    private readonly Meter meter;
    private readonly FaultDictionary dictionary;
    private readonly Bench bench;

    /// <summary>The places of a piece.</summary>
    public ReadingPlaces(CircuitStudy study, Meter meter)
    {
        (this.study, this.meter) = (study, meter);
        dictionary = meter.Dictionary;
        bench = dictionary.Bench;
    }

    /// <summary>What a line says, one reading or, for a part with several loads, several; empty and a problem where it cannot be.</summary>
    public ImmutableArray<Observation> Of(ReadingLine line, out Diagnostic? problem)
    {
        problem = null;
        try
        {
            return line.Value is not null ? [Measured(line)] : line.Word is "blown" or "whole" ? [Fuse(line)] : line.Word.StartsWith("lamp ", StringComparison.Ordinal) ? [Lamp(line)] : [.. Seen(line)];
        }
        catch (PlaceException e)
        {
            problem = e.Problem;
            return [];
        }
    }

    /// <summary>The number of a setting by its name or its positions.</summary>
    public int SettingOf(string text, string name)
    {
        if (name.Length == 0 || name == BenchSetting.Rest || name == Sequence.AllOff) return 0;
        for (int s = 0; s < dictionary.Settings.Count; s++)
            if (dictionary.Settings[s].Name == name) return s;
        if (study.Circuit.Settings.FirstOrDefault(s => s.Name == name) is { } own) return dictionary.Add(BenchSettings.Made(bench.Circuit, name, own.Positions, own.Values));
        try
        {
            if (study.ProposedSettings.Contains(name) && study.Setting(name).Setting is var proposed) return dictionary.Add(BenchSettings.Made(bench.Circuit, name, proposed.Positions, proposed.Values));
            ImmutableArray<SetPosition> positions = [.. name.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(Position)];
            return dictionary.Add(BenchSettings.Made(bench.Circuit, null, positions, []));
        }
        catch (ArgumentException e)
        {
            string[] names = [.. study.Circuit.Settings.Select(s => s.Name), .. study.ProposedSettings];
            string hint = NearestName.Of(name, names) is { } near ? $"did you mean \"{near}\"?" : $"write positions such as \"S1 pressed\", or one of {string.Join(", ", names.Take(8).Select(n => $"\"{n}\""))}; {e.Message.Split(" (Parameter")[0]}";
            throw new PlaceException(UnknownSetting.At(null, text, name) with { Hint = hint });
        }
    }

    /// <summary>What can be watched of a name: a load, all loads of a part, or a relay's click.</summary>
    public ImmutableArray<int> WatchedOf(string text, string name)
    {
        int[] found = [.. Enumerable.Range(0, meter.Watched.Length).Where(w => meter.Watched[w] is var one && (one.Name == name || $"{one.Element.Part.Id}.{one.Element.Element.Name}" == name))];
        if (found.Length == 0) found = [.. Enumerable.Range(0, meter.Watched.Length).Where(w => meter.Watched[w].Element.Part.Id == name)];
        if (found.Length == 0 && bench.Circuit.FindPart(name) is { } part)
            throw new PlaceException(ReadingLine.NotUnderstood.At(null, text) with { Hint = $"{name} is neither seen nor heard to work; read volts, such as \"{part.Id}.{part.Kind.Terminals.Select(t => t.Name).FirstOrDefault("1")} = 12 V\"" });
        return found.Length > 0 ? [.. found] : throw new PlaceException(UnknownPoint.At(null, text, name) with { Hint = Names.Meant(name, meter.Watched.Select(w => w.Name)) });
    }

    /// <summary>The first setting in which something is on, or off, when all is well.</summary>
    public int SettingWhere(int watched, bool isOn)
    {
        for (int s = isOn ? 1 : 0; s < dictionary.Settings.Count; s++)
            if (Looks.Sound(dictionary, s, meter.Watched[watched]) == LookState.Off != isOn) return s;
        return 0;
    }

    /// <summary>The number of a fuse by its name; of one way of a block also by a terminal that no other way has.</summary>
    public int FuseOf(string text, string name)
    {
        foreach (int f in dictionary.Pullable)
            if (dictionary.FuseName(f) == name) return f;
        int[] ways = [.. dictionary.Pullable.Where(f => dictionary.Fuses[f] is var way && (Nodes.NodeOf(way.Part, way.Element.From).ToString() == name || Nodes.NodeOf(way.Part, way.Element.To).ToString() == name))];
        return ways is [var only] ? only : throw new PlaceException(UnknownPoint.At(null, text, name) with { Hint = Names.Meant(name, dictionary.PullableNames) });
    }

    private Observation Measured(ReadingLine line)
    {
        int setting = SettingOf(line.Text, line.Setting), red = NodeOf(line, line.Red), black = line.Black.Length == 0 ? -1 : NodeOf(line, line.Black);
        if (line.Value!.Unit == Unit.Volt) return new(new VoltsTest(setting, red, black), line.Value.Value, line.Text);
        if (black >= 0) (red, black) = red < 0 ? (black, red) : (red, black);
        if (black >= 0 || red < 0) throw new PlaceException(ReadingLine.NotUnderstood.At(null, line.Text) with { Hint = "ohms are compared from a point to the chassis, the battery taken out" });
        return new(new OhmsTest(setting, red, line.Pulled.Length == 0 ? -1 : line.Pulled == "all fuses" ? OhmsTest.AllFuses : FuseOf(line.Text, line.Pulled)), line.Value.Value, line.Text);
    }

    private Observation Lamp(ReadingLine line)
    {
        int setting = SettingOf(line.Text, line.Setting), node = NodeOf(line, line.Red);
        if (line.Black.Length > 0 || node < 0) throw new PlaceException(ReadingLine.NotUnderstood.At(null, line.Text) with { Hint = "a test lamp is compared from a point to the chassis; from one point to another read volts" });
        return new(new LampTest(setting, node), (int)(line.Word switch { "lamp dark" => LookState.Off, "lamp dim" => LookState.Dim, _ => LookState.Right }), line.Text);
    }

    private Observation Fuse(ReadingLine line) => new(new FuseTest(FuseOf(line.Text, line.Red)), line.Word == "blown" ? 1 : 0, line.Text);

    private IEnumerable<Observation> Seen(ReadingLine line)
    {
        var state = Enum.Parse<LookState>(line.Word, ignoreCase: true);
        foreach (int watched in WatchedOf(line.Text, line.Red))
        {
            int setting = line.Setting.Length > 0 ? SettingOf(line.Text, line.Setting) : SettingWhere(watched, isOn: true);
            yield return new(new LookTest(setting, watched), (int)state, line.Text);
        }
    }

    private int NodeOf(ReadingLine line, string name)
    {
        if (name is "chassis" or "ground" or "earth") return -1;
        if (name.StartsWith("case of ", StringComparison.Ordinal)) name = name[8..] + ".case";
        string[] halves = name.Split('.', 2);
        if (study.Circuit.FindPart(halves[0]) is not { } part)
            throw new PlaceException(UnknownPoint.At(null, line.Text, halves[0]) with { Hint = Names.Meant(halves[0], study.Circuit.Parts.Select(p => p.Id)) });
        string? terminal = halves.Length == 1 ? part.Kind.OnlyTerminal : part.Kind.TerminalNamed(halves[1]);
        if (terminal is null) throw new PlaceException(UnknownPoint.At(null, line.Text, name) with { Hint = Names.Meant(halves.Length > 1 ? halves[1] : "", part.Kind.Terminals.Select(t => t.Name)) });
        if (bench.Circuit.FindPart(part.Id) is null) throw new PlaceException(UnknownPoint.At(null, line.Text, name) with { Hint = $"{part.Id} has nothing to do with what is complained of" });
        var end = terminal == "case" ? Nodes.CaseOf(part) : End.At(part.Id, terminal);
        return bench.Model.Nodes.Ends.Contains(end) ? bench.Model.Nodes.NodeOf(end) : throw new PlaceException(UnknownPoint.At(null, line.Text, name) with { Hint = $"nothing ends on {end}" });
    }

    private SetPosition Position(string text)
    {
        int blank = text.IndexOf(' ', StringComparison.Ordinal);
        return blank < 0 ? throw new ArgumentException($"\"{text}\" is no position.") : SetPosition.Named(study.Circuit.Parts, text[..blank], text[(blank + 1)..]);
    }
}

/// <summary>A reading whose place is not known; caught where the reading was taken in.</summary>
internal sealed class PlaceException(Diagnostic problem) : Exception(problem.Message)
{
    public Diagnostic Problem { get; } = problem;
}
