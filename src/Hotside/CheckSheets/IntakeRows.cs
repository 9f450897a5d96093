using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Studies;
using Hotside.Studies.Figures;
using Hotside.Wording;

namespace Hotside.CheckSheets;

/// <summary>
/// The four readings that tell on which side a load is switched, before anything is moved: both ends to the chassis with the load off and every other control in its chain on,
/// then with it on. What the readings mean: Kirchhoff's laws; that they are taken with a loaded meter or a test lamp: common practice, no source.
/// </summary>
internal sealed class IntakeRows(CircuitStudy study, Vocabulary words)
{
    private readonly Circuit circuit = study.Circuit;

    /// <summary>The rows of some loads, numbered from 1.</summary>
    public ImmutableArray<CheckRow> Of(IEnumerable<LoadStudy> loads)
    {
        var rows = ImmutableArray.CreateBuilder<CheckRow>();
        foreach (var load in loads)
            foreach (var row in Of(load))
                rows.Add(row with { Number = rows.Count + 1 });
        return rows.ToImmutable();
    }

    private IEnumerable<CheckRow> Of(LoadStudy load)
    {
        if (load.Paths.IsEmpty || load.Control.Any.IsEmpty || load.IsMomentary || load.IsInRace) yield break;
        var path = load.Paths[0];
        string feed = NameOf(path.FeedEnd, load), back = NameOf(path.ReturnEnd, load);
        if (feed.Length == 0 || back.Length == 0) yield break;
        var on = PositionChoice.Of(load.Control.Any.MinBy(c => c.All.Length)!);
        if (on.IsEmpty)
        {
            yield return Row(Diagnoses.BenchSetting.Rest, on, path.FeedEnd, feed, load, $"{load.Name} is fed at all times, so it is on");
            yield return Row(Diagnoses.BenchSetting.Rest, on, path.ReturnEnd, back, load, $"near 0: the {words.Ground} side is whole");
            yield break;
        }
        // A key is on for more than this load: what is moved last is the load's own control.
        var own = on.LastOrDefault(p => DriveOf(p) is not (ActuatorDrive.Key or ActuatorDrive.Automatic)) ?? on[^1];
        ImmutableArray<SetPosition> off = [.. on.Where(p => p != own)];
        string offName = off.IsEmpty ? Diagnoses.BenchSetting.Rest : Text(off), onName = Text(on), what = circuit.TextOf(own);
        yield return Row(offName, off, path.FeedEnd, feed, load, $"{load.Name} off. Near 0: {words.Hot}-switched. Battery: {words.Ground}-switched, or no control works");
        yield return Row(offName, off, path.ReturnEnd, back, load,
            $"{load.Name} off. Battery, as the row above: {words.Ground}-switched. Near 0 below battery: no control works, or {load.Name} is burnt open. Drifting: open on both sides");
        yield return Row(onName, on, path.FeedEnd, feed, load, $"{load.Name} on. What rises with \"{what}\" is switched on the {words.Hot} side");
        yield return Row(onName, on, path.ReturnEnd, back, load, $"{load.Name} on. What falls to near 0 with \"{what}\" is switched on the {words.Ground} side");
    }

    private CheckRow Row(string setting, ImmutableArray<SetPosition> positions, End at, string name, LoadStudy load, string meaning)
    {
        var figures = study.Operation.In(new Setting("", positions, []));
        double? volts = at == circuit.System.ReturnNode ? 0 : figures.Terminals.FirstOrDefault(t => t.End == at)?.Voltage?.Volts;
        string black = circuit.System.Return is { } node ? circuit.TextOf(node) : "clean chassis metal";
        return new(0, load.Control.IsAlways || positions.IsEmpty ? CheckStage.AtRest : CheckStage.Live, setting, name, black,
            volts is { } known ? QuantityWords.MeterVolts(known) : "drifts", "", meaning);
    }

    private ActuatorDrive DriveOf(SetPosition position) => circuit.Variables.First(v => v.Part == position.Part && v.Actuator.Name == position.Actuator).Actuator.Drive;

    private string Text(ImmutableArray<SetPosition> positions) => string.Join(", ", positions.Select(circuit.TextOf));

    // An end inside the part cannot be touched with a probe.
    private static string NameOf(End end, LoadStudy load) =>
        load.Part.Kind.TerminalNamed(end.Terminal) is null ? "" : end.Terminal == "case" ? $"case of {end.Part}" : end.ToString();
}
