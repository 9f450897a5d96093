using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Studies.Figures;

/// <summary>Settings that everybody asks for and a job need not name. What the job names itself comes before them.</summary>
internal sealed class ProposedSettings
{
    public const string EverythingOn = "everything on", Cranking = "cranking", Charging = "charging", EverythingOnCharging = "everything on, charging";

    private readonly CircuitStudy study;
    private readonly List<(string Name, Func<Setting> Make)> all = [];

    /// <summary>The settings of a circuit.</summary>
    /// <param name="study">Its study, of the whole circuit.</param>
    public ProposedSettings(CircuitStudy study)
    {
        this.study = study;
        PositionChoice choice = new(study.Circuit);
        LoadStudy[] loads = [.. study.Loads.Where(l => !l.Element.IsInternal)];
        Add(Sequence.AllOff, () => new(Sequence.AllOff, [], []));
        if (loads.Any(l => !BriefLoad.Is(l.Part))) Add(EverythingOn, () => new(EverythingOn, new MostDrawn(study, []).Positions, []));
        if (loads.FirstOrDefault(l => BriefLoad.IsStarter(l) && !l.Control.Any.IsEmpty) is { } starter)
            Add(Cranking, () => new(Cranking, choice.WithKeyOn(PositionChoice.Of(starter.Control.Any[0])), []));
        var running = choice.SourcesRunning;
        if (!running.IsEmpty)
        {
            Add(Charging, () => new(Charging, choice.WithKeyOn(running), []));
            Add(EverythingOnCharging, () => new(EverythingOnCharging, new MostDrawn(study, running).Positions, []));
        }
        foreach (var load in loads.Where(l => !l.Control.IsAlways && !l.Control.Any.IsEmpty))
            Add(NameAlone(load), () => Alone(load));
    }

    /// <summary>The setting in which one load is on, and what its switches cannot help to switch with it.</summary>
    public static Setting Alone(LoadStudy load) => new(NameAlone(load), PositionChoice.Of(load.Control.Any.MinBy(c => c.All.Length)!), []);

    /// <summary>The names of those that the job has not given to a setting of its own.</summary>
    public ImmutableArray<string> Names => [.. all.Select(p => p.Name).Where(n => study.Circuit.Settings.All(s => s.Name != n))];

    private static string NameAlone(LoadStudy load) => load.Name + " alone";

    /// <summary>What is on in one of them, whatever the job calls so itself; <see langword="null"/> when there is none of that name.</summary>
    public SettingStudy? Find(string name)
    {
        var found = all.Find(p => p.Name == name);
        return found.Make is null ? null : StudyOf(found.Make());
    }

    private void Add(string name, Func<Setting> make) => all.Add((name, make));

    // By the controls, which say the same as the settings of the job are told from; relays by their volts.
    private SettingStudy StudyOf(Setting setting)
    {
        var figures = study.Operation.In(setting);
        var free = study.Circuit.Variables.Where(v => v.Actuator is { Cycles: false, IsNoControl: false }).ToArray();
        SetPosition PutOf(Variable variable) => figures.Positions.First(p => p.Part == variable.Part && p.Actuator == variable.Actuator.Name);
        bool IsOn(LoadStudy load) => figures.Shorted.IsEmpty && load.Control.Holds(s => s.Positions.Contains(PutOf(s.Variable).Position));
        var loads = study.Loads.Where(l => !l.Element.IsInternal && !l.IsNeverFed).ToArray();
        return new(setting,
            [.. loads.Where(l => l.Side != SwitchedSide.InSeries && IsOn(l)).Select(l => l.Name)],
            [.. loads.Where(l => l.Side == SwitchedSide.InSeries && IsOn(l)).Select(l => l.Name)],
            [.. free.Where(v => v.Actuator.Drive == ActuatorDrive.Driven).Select(PutOf)])
        {
            Positions = [.. free.Where(v => v.Actuator.Drive != ActuatorDrive.Driven).Select(PutOf)],
            IsShort = !figures.Shorted.IsEmpty,
            IsUnsettled = figures.Relays is RelayOutcome.Race or RelayOutcome.NeverSettles,
            Operation = study.Operation,
        };
    }
}
