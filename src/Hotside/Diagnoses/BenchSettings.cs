using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Studies;
using Hotside.Studies.Figures;

namespace Hotside.Diagnoses;

/// <summary>
/// In which settings a piece of a circuit is looked at: at rest; in those of the job; with the minimal combinations of each load; with each hand-moved actuator in each of its
/// positions, keys in run. What differs in nothing that the piece holds is one.
/// </summary>
internal sealed class BenchSettings
{
    // A bound: pieces with more are looked at in the first ones.
    private const int Most = 24, MostOfLoad = 4;

    private readonly Circuit piece;
    private readonly List<BenchSetting> all = [];
    private readonly HashSet<string> known = new(StringComparer.Ordinal);

    private BenchSettings(Circuit piece) => this.piece = piece;

    /// <summary>The settings of a piece.</summary>
    /// <param name="study">The circuit.</param>
    /// <param name="piece">The piece.</param>
    /// <param name="asked">The loads that are asked about: their settings come first.</param>
    public static ImmutableArray<BenchSetting> Of(CircuitStudy study, Circuit piece, ImmutableArray<LoadStudy> asked)
    {
        BenchSettings settings = new(piece);
        settings.Add(null, [], []);
        foreach (var setting in study.Circuit.Settings) settings.Add(setting.Name, setting.Positions, setting.Values);
        foreach (var load in asked) settings.Add(load, 0, MostOfLoad);
        // Each load once, before any has its second way.
        LoadStudy[] loads = [.. study.Loads.Where(l => piece.FindPart(l.Part.Id) is not null)];
        foreach (var load in loads) settings.Add(load, 0, 1);
        foreach (var load in loads) settings.Add(load, 1, MostOfLoad);
        PositionChoice choice = new(piece);
        foreach (var variable in piece.Variables.Where(v => v.Actuator is { Drive: ActuatorDrive.Hand or ActuatorDrive.Foot or ActuatorDrive.Key, Cycles: false, IsNoControl: false }))
            foreach (string position in variable.Actuator.Positions.Skip(1))
            {
                settings.Add(null, [PositionChoice.Put(variable, position)], []);
                if (variable.Actuator.Drive != ActuatorDrive.Key) settings.Add(null, choice.WithKeyOn([PositionChoice.Put(variable, position)]), []);
            }
        return [.. settings.all.Take(Most)];
    }

    /// <summary>A setting of a piece by what it moves.</summary>
    public static BenchSetting Made(Circuit piece, string? name, ImmutableArray<SetPosition> positions, ImmutableArray<SetValue> values)
    {
        ImmutableArray<SetPosition> own = [.. piece.Variables.SelectMany(v => positions.Where(p => p.Part == v.Part && p.Actuator == v.Actuator.Name && p.Position != v.Actuator.Rest))];
        ImmutableArray<SetValue> given = [.. values.Where(v => piece.FindPart(v.Part) is not null)];
        string[] texts = [.. own.Select(piece.TextOf), .. given.Select(v => $"{v.Part} {v.Quantity}")];
        return new(texts.Length == 0 ? BenchSetting.Rest : name ?? string.Join(", ", texts), own, given)
        {
            Stands = texts.Length == 0 || name is null ? "" : string.Join(", ", texts),
            NeedsTwo = own.Any(p => ActuatorOf(p) is { Drive: ActuatorDrive.Foot } or { Drive: ActuatorDrive.Hand, Returns: true }),
            Runs = own.Any(p => p is { Part: null, Position: "running" }),
        };

        Actuator ActuatorOf(SetPosition position) => piece.Variables.First(v => v.Part == position.Part && v.Actuator.Name == position.Actuator).Actuator;
    }

    /// <summary>By what two settings are one.</summary>
    public static string KeyOf(BenchSetting setting) => string.Join(", ", setting.Positions.Select(p => $"{p.Part} {p.Actuator} {p.Position}").Concat(setting.Values.Select(v => $"{v.Part} {v.Quantity}")));

    private void Add(LoadStudy load, int from, int to)
    {
        foreach (var combination in load.Control.Any.OrderBy(c => c.All.Length).Take(to).Skip(from)) Add(null, PositionChoice.Of(combination), []);
    }

    private void Add(string? name, ImmutableArray<SetPosition> positions, ImmutableArray<SetValue> values)
    {
        var made = Made(piece, name, positions, values);
        if (known.Add(KeyOf(made))) all.Add(made);
    }
}
