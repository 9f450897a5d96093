using Hotside.Diagnoses;
using Hotside.Diagnostics;
using Hotside.Studies;
using Hotside.Wording;

namespace Hotside.CheckSheets;

/// <summary>Compares readings taken on a vehicle with what its netlist gives.</summary>
internal static class ReadingCheck
{
    public static readonly DiagnosticKind Contradicts = new("HS3405", Severity.Warning, "Reading contradicts the netlist", "{0} reads {1} in \"{2}\"; the netlist gives {3}")
    {
        Source = "bands: tolerances of parts and of a common meter, common practice, no source",
    };

    private const string CaseOf = "case of ";

    /// <summary>What is wrong with readings, or with the netlist.</summary>
    /// <param name="study">The circuit that the vehicle had.</param>
    /// <param name="readings">The readings with their places.</param>
    public static IEnumerable<Diagnostic> Of(CircuitStudy study, IEnumerable<(string Text, SourceSpan Span)> readings)
    {
        var all = readings.ToArray();
        if (all.Length == 0) yield break;
        var bench = DiagnosisBench.Sound(study);
        Bands bands = new(bench);
        // Volts go with the battery, where it was read, too.
        var taken = all.Select(r => ReadingLine.Read(r.Text, out _)).OfType<ReadingLine>().SelectMany(l => bench.Places.Of(l, out _)).ToArray();
        foreach (var (text, span) in all)
        {
            var line = ReadingLine.Read(text, out var problem);
            var observations = line is null ? [] : bench.Places.Of(line, out problem);
            if (problem is not null) yield return problem with { Span = span };
            foreach (var observation in observations)
                if (Contradiction(bench, bands, line!, observation, AsStated(bench, observation, taken)) is { } found) yield return found with { Span = span };
        }
    }

    private static Diagnostic? Contradiction(DiagnosisBench bench, Bands bands, ReadingLine line, Observation observation, Observation stated)
    {
        string what = observation.Test is LookTest ? bench.Text.Red(observation.Test) : line.Red, setting = bench.Dictionary.Settings[observation.Test.Setting].Name;
        if (observation.Test is VoltsTest { Black: >= 0 }) what += " to " + line.Black;
        (bool isRight, string read, string expected) = observation.Test switch
        {
            LookTest look => Seen(bench, look, (LookState)(int)observation.Value),
            LampTest lamp => ((LookState)(int)observation.Value == bench.Meter.Lamp.Sound(lamp), ReadingText.Lamp((LookState)(int)observation.Value), ReadingText.Lamp(bench.Meter.Lamp.Sound(lamp))),
            FuseTest => (observation.Value < 0.5, "blown", "a whole fuse"),
            OhmsTest => (bands.Holds(stated.Test, stated.Value), ReadingText.Ohms(observation.Value), $"{bands.Expected(observation.Test)} ({bands.Text(observation.Test)})"),
            _ => (bands.Holds(stated.Test, stated.Value), QuantityWords.MeterVolts(observation.Value), $"{bands.Expected(observation.Test)} ({bands.Text(observation.Test)})"),
        };
        return isRight ? null : Contradicts.Of([PartOf(what)], what, read, setting, expected) with { Hint = "the record is wrong, or the vehicle is: diagnose with this reading, or correct the netlist" };
    }

    // As it would have been with the battery as stated.
    private static Observation AsStated(DiagnosisBench bench, Observation observation, Observation[] taken) =>
        observation.Test is VoltsTest volts && bench.Meter.Battery.ReadIn(taken) is { } read && volts != read.Test && bench.Meter.Battery.Of(volts) is not null
            ? observation with { Value = observation.Value / bench.Meter.Battery.ScaleOf(read, bench.Dictionary.SoundCell) } : observation;

    // "H1.1", "case of E1", "E3.tail", "F2".
    private static string PartOf(string point) => (point.StartsWith(CaseOf, StringComparison.Ordinal) ? point[CaseOf.Length..] : point).Split('.', ' ')[0];

    private static (bool IsRight, string Read, string Expected) Seen(DiagnosisBench bench, LookTest look, LookState state)
    {
        var watched = bench.Meter.Watched[look.Watched];
        var sound = Looks.Sound(bench.Dictionary, look.Setting, watched);
        return (state == sound, ReadingText.State(state, watched.Variable >= 0), ReadingText.State(sound, watched.Variable >= 0));
    }
}
