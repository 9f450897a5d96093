using System.Collections.Immutable;
using Hotside.Alterations;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Studies;
using Hotside.Wording;
using UnitsNet;

namespace Hotside.Diagnoses;

/// <summary>
/// What may be wrong with a vehicle after a complaint and some readings, and which reading to take next. Every single fault of the list is solved with, as stated and with parts
/// a little off; weights are common practice from memory, not counted repairs. Immutable; safe to share between threads.
/// </summary>
/// <remarks>An aid. The workshop manual, local codes and licensed practice take precedence.</remarks>
public sealed class Diagnosis
{
    // Above it the leader is taken as found; suspects below the least are not told (own choices).
    private const double Enough = 0.97, LeastTold = 0.005, Surprising = 0.03, FarOff = 4;
    private const int MostTold = 24;

    private readonly DiagnosisBench bench;
    private readonly State state;
    private readonly Vocabulary words;
    private readonly Meter meter;
    private readonly ReadingText text;

    private Diagnosis(DiagnosisBench bench, State state, Vocabulary words)
    {
        (this.bench, this.state, this.words) = (bench, state, words);
        lock (bench.Gate)
        {
            meter = bench.Meter.With(state.Observations);
            text = new(meter, bench.Tests);
            Beliefs beliefs = Believed();
            DiagnosisRules rules = new(bench, meter, beliefs, state.Observations, state.IsSmoking, words);
            var classes = bench.Classes.Of(beliefs.Order.Where(f => beliefs.OfFault[f] >= LeastTold).Take(MostTold));
            var sorted = classes.OrderByDescending(c => c.Sum(f => beliefs.OfFault[f])).ToArray();
            Suspects = [.. sorted.Select(c => SuspectOf(c, beliefs))];
            IsFound = Suspects is [{ Share.DecimalFractions: > Enough }, ..];
            var taken = state.Observations.Select(o => o.Test).Concat(state.Struck).ToHashSet();
            int last = state.Observations.IsEmpty ? -1 : state.Observations[^1].Test.Setting;
            var next = IsFound ? null : NextTest.Of(beliefs, meter, bench.Tests, t => !taken.Contains(t) && rules.Allows(t), last);
            test = next?.Test;
            Next = next is null ? null : ReadingOf(next, sorted, beliefs, rules);
            Notes = [.. rules.Notes(), .. state.Lists.Files.Select(f => $"Numbers of {f} stand in the place of the list's own."), .. state.Surprise.Length > 0 ? new[] { state.Surprise } : []];
        }
    }

    private readonly Test? test;

    /// <summary>What may be wrong, likeliest first.</summary>
    public ImmutableArray<Suspect> Suspects { get; }

    /// <summary>Whether the first of the suspects has more than 97 %: mend it, then take the reading that proves it.</summary>
    public bool IsFound { get; }

    /// <summary>The reading to take next; <see langword="null"/> where it is found or no reading tells enough.</summary>
    public NextReading? Next { get; }

    /// <summary>What must be said: smoke, blown fuses, a reading that surprises, that no single fault explains it.</summary>
    public ImmutableArray<string> Notes { get; }

    /// <summary>What was said and read, in the order of entering.</summary>
    public ImmutableArray<string> Readings => [.. state.Observations.Select(o => o.Text).Distinct()];

    /// <summary>What it takes for likely and for troublesome.</summary>
    public DiagnosisLists Lists => state.Lists;

    /// <summary>Where the library's weights of faults are from.</summary>
    public static string Source => FaultModes.Standard.Source;

    /// <summary>The same with one more reading.</summary>
    /// <param name="reading">The reading, such as <c>H1.1 = 3.1 V @ horn pressed</c>.</param>
    /// <exception cref="ArgumentException">It is no reading, or names a point or a setting that is not there; the message names the nearest.</exception>
    public Diagnosis With(string reading)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(reading);
        lock (bench.Gate)
        {
            var more = Taken(bench, reading);
            Beliefs before = Believed();
            bool isSurprise = more.Any(o => before.OfCell.Where((p, c) => meter.Missed(o, c) < FarOff).Sum() < Surprising);
            string surprise = isSurprise ? $"\"{reading}\" is what hardly any suspect would show. Repeat it: a lead on the wrong point or a bad contact is likelier." : "";
            return new(bench, state with { Observations = [.. state.Observations, .. more], Surprise = surprise }, words);
        }
    }

    /// <summary>The same without the reading asked for: its point cannot be reached.</summary>
    public Diagnosis WithoutNext()
    {
        if (test is null) return this;
        // A point that cannot be reached cannot be reached in another setting either.
        var struck = bench.Tests.All.Select(t => t.Test).Where(t => t == test || (test is VoltsTest or OhmsTest && bench.Text.Red(t) == bench.Text.Red(test) && t is VoltsTest or OhmsTest));
        return new(bench, state with { Struck = [.. state.Struck, .. struck], Surprise = "" }, words);
    }

    /// <summary>The readings that would be asked for one after the other if each came out as the likeliest suspects would have it: what to print on a page for the road.</summary>
    /// <param name="count">How many at most, 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="count"/> is below 1.</exception>
    public ImmutableArray<NextReading> FirstReadings(int count)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        var readings = ImmutableArray.CreateBuilder<NextReading>();
        var at = this;
        while (readings.Count < count && at is { Next: { } next, test: { } asked })
        {
            readings.Add(next);
            at = new(bench, at.state with { Observations = [.. at.state.Observations, at.Likeliest(asked)], Surprise = "" }, words);
        }
        return readings.ToImmutable();
    }

    /// <summary>The same after the first of the suspects was mended, and what was read before forgotten: for a second fault.</summary>
    public Diagnosis Mended()
    {
        lock (bench.Gate)
        {
            Beliefs beliefs = Believed();
            return new(bench, state with { Observations = [], Surprise = "", Mended = state.Mended.Add(beliefs.Order[0]) }, words);
        }
    }

    /// <summary>The loads that are concerned; empty where the whole circuit is.</summary>
    internal ImmutableArray<string> Loads => [.. bench.Loads.Select(l => l.Name)];

    internal static Diagnosis Of(CircuitStudy study, Alteration? alteration, Complaint complaint, Vocabulary words)
    {
        var bench = DiagnosisBench.Of(study, alteration, LoadsOf(study, complaint), lists: complaint.Lists);
        var observations = ImmutableArray.CreateBuilder<Observation>();
        void Say(ImmutableArray<string> names, LookState state, string word)
        {
            foreach (string name in names) observations.AddRange(Seen(bench, name, state, word));
        }

        try
        {
            Say(complaint.Dead, LookState.Off, "dead");
            Say(complaint.Dim, LookState.Dim, "dim");
            Say(complaint.Strong, LookState.Strong, "strong");
            Say(complaint.OnThoughOff, LookState.Right, "on though off");
            Say(complaint.Works, LookState.Right, "right");
            foreach (string fuse in complaint.Blown) observations.Add(new(new FuseTest(bench.Places.FuseOf(fuse, fuse)), 1, fuse + " = blown"));
            foreach (string reading in complaint.Readings) observations.AddRange(Taken(bench, reading));
        }
        catch (PlaceException e)
        {
            throw Wrong(e.Problem);
        }
        return new(bench, new(observations.ToImmutable()) { IsSmoking = complaint.IsSmoking, Lists = complaint.Lists }, words);
    }

    // What is complained of, and what else is said or read.
    private static ImmutableArray<LoadStudy> LoadsOf(CircuitStudy study, Complaint complaint)
    {
        List<LoadStudy> loads = [];
        foreach (string said in complaint.Dead.Concat(complaint.Dim).Concat(complaint.Strong).Concat(complaint.OnThoughOff).Concat(complaint.Works))
        {
            string name = said.Split('@')[0].Trim();
            var named = study.LoadsNamed(name);
            loads.AddRange(!named.IsEmpty ? named : NoLoad(study, name) is { } why ? throw new ArgumentException(why, nameof(complaint)) : [study.Load(name)]);
        }
        foreach (string fuse in complaint.Blown)
            loads.AddRange(study.Circuit.FindPart(fuse.Split('.')[0]) is not { } part ? throw new ArgumentException($"There is no fuse \"{fuse}\"" + NearestName.Suggestion(fuse, study.Circuit.Parts.Select(p => p.Id)), nameof(complaint)) : DiagnosisBench.LoadsAt(study, part.Id));
        if (loads.Count > 0) return [.. loads.Distinct()];
        foreach (string reading in complaint.Readings)
            if (ReadingLine.Read(reading, out _) is { } line)
                foreach (string name in new[] { line.Red, line.Black }.Where(n => n.Length > 0)) loads.AddRange(DiagnosisBench.LoadsAt(study, name.Split('.')[0]));
        return [.. loads.Where(l => !l.Element.IsInternal).Distinct()];
    }

    // Who names a switch or a wire is told what hangs on it, and what to say; null for a name that is none.
    private static string? NoLoad(CircuitStudy study, string name)
    {
        var (part, wire) = (study.Circuit.FindPart(name), study.Circuit.FindConductor(name));
        if (part is null && wire is null) return null;
        string[] fed = [.. study.Loads.Where(l => !l.Element.IsInternal && l.Paths.Any(p => part is not null ? p.HotWay.Contains(name) || p.GroundWay.Contains(name) : p.Hot.Contains(name) || p.Ground.Contains(name))).Select(l => l.Name)];
        string what = part is null ? $"{name} is a wire" : part.Kind.Elements.Any(e => e.IsSource) ? $"{name} gives current and takes none" : $"{name} is no load", example = part?.Kind.Terminals.Select(t => $"{name}.{t.Name}").FirstOrDefault() ?? wire?.Ends.Where(e => e.Part is not null).Select(study.Circuit.TextOf).FirstOrDefault() ?? name;
        return fed.Length > 0 ? $"{what}. It feeds {FigureText.Some(fed)}: name one of these, such as {fed[0]}, or give a reading, such as \"{example} = 0 V\"."
            : $"{what}, and nothing hangs on it that can be dead. Give a reading, such as \"{example} = 0 V\", and in which setting.";
    }

    private static IEnumerable<Observation> Seen(DiagnosisBench bench, string said, LookState state, string word)
    {
        string[] halves = said.Split('@', 2, StringSplitOptions.TrimEntries);
        foreach (int watched in bench.Places.WatchedOf(said, halves[0]))
        {
            int setting = halves.Length > 1 ? bench.Places.SettingOf(said, halves[1]) : bench.Places.SettingWhere(watched, isOn: word != "on though off");
            string at = setting == 0 ? "" : $" @ {bench.Dictionary.Settings[setting].Name}";
            yield return new(new LookTest(setting, watched), (int)state, $"{bench.Meter.Watched[watched].Name} = {word}{at}");
        }
    }

    private static ImmutableArray<Observation> Taken(DiagnosisBench bench, string reading)
    {
        if (ReadingLine.Read(reading, out var problem) is not { } line) throw Wrong(problem!);
        var taken = bench.Places.Of(line, out problem);
        return problem is null ? taken : throw Wrong(problem);
    }

    private static ArgumentException Wrong(Diagnostic problem) => new(Vocabulary.Capital(problem.Message) + (problem.Hint is { } hint ? $"; {hint}" : "."));

    // What the likeliest of the suspects would show.
    private Observation Likeliest(Test asked)
    {
        lock (bench.Gate)
        {
            Beliefs beliefs = Believed();
            int cell = beliefs.Leading(1, beliefs.OfCell.Length).First(c => bench.Dictionary.Faults[bench.Dictionary.Cells[c].Fault].Mode.Change != FaultChange.Unknown);
            double value = asked switch
            {
                LookTest look => (int)text.Likeliest(look, cell),
                FuseTest fuse => bench.Meter.IsBlown(fuse.Fuse, cell) ? 1 : 0,
                OhmsTest => Math.Pow(10, meter.Expect(asked, cell).Mean),
                _ => meter.Expect(asked, cell).Mean,
            };
            return new(asked, value, "");
        }
    }

    private Beliefs Believed() => new(meter, state.Observations, state.Mended);

    private Suspect SuspectOf(ImmutableArray<int> faults, Beliefs beliefs)
    {
        var leader = bench.Dictionary.Faults[faults[0]];
        return new(leader.Text, Ratio.FromDecimalFractions(faults.Sum(f => beliefs.OfFault[f])))
        {
            Items = leader.Items,
            Others = [.. faults.Skip(1).Select(f => bench.Dictionary.Faults[f].Text)],
            Repair = leader.Repair.Length == 0 ? "" : Vocabulary.Capital(leader.Repair) + new Proof(bench).Of(leader),
        };
    }

    private NextReading ReadingOf(NextTest next, ImmutableArray<int>[] classes, Beliefs beliefs, DiagnosisRules rules)
    {
        int Likeliest(int fault) => Enumerable.Range(0, bench.Dictionary.Cells.Length).Where(c => bench.Dictionary.Cells[c].Fault == fault).MaxBy(c => beliefs.OfCell[c]);
        return new(bench.Dictionary.Settings[next.Test.Setting].Name, text.Red(next.Test), text.Black(next.Test), text.Asks(next.Test),
            $"splits {Numbers.Whole(next.Suspects)} suspects {string.Join(" / ", next.Groups.Select(Numbers.Whole))}")
        {
            Expected = [.. classes.Take(3).Select(c => bench.Dictionary.Faults[c[0]] is { Mode.Change: not FaultChange.Unknown } fault ? $"{text.Expected(next.Test, Likeliest(c[0]))} if {fault.Text}" : "anything if it is something else")],
            Entry = text.Entry(next.Test),
            Cautions = [.. rules.CautionsOf(next.Test)],
        };
    }

    private sealed record State(ImmutableArray<Observation> Observations)
    {
        public ImmutableArray<Test> Struck { get; init; } = [];

        public ImmutableHashSet<int> Mended { get; init; } = [];

        public bool IsSmoking { get; init; }

        public DiagnosisLists Lists { get; init; } = DiagnosisLists.Standard;

        public string Surprise { get; init; } = "";
    }
}
