using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Sizing;
using Hotside.Studies;

namespace Hotside.Faults;

/// <summary>
/// The setting in which a conductor's faults show most: that of its greatest current, where it is one. A bound names none, nor does what a machine gives; there it is, of the settings
/// that the job names, everything on, cranking, charging and each load alone, the one in which it carries most.
/// </summary>
internal sealed class WorstSettings
{
    // Where the setting of the greatest current gives so much of what another gives, it stands (own choice).
    private const double Enough = 0.5;

    private readonly CircuitSizes sizes;
    private readonly Func<Setting, int, double> amperesIn;
    private readonly Lazy<ImmutableArray<Setting>> others;

    /// <summary>The settings of a circuit.</summary>
    /// <param name="sizes">The circuit, sized.</param>
    /// <param name="amperesIn">The current of a conductor in a setting in amperes.</param>
    public WorstSettings(CircuitSizes sizes, Func<Setting, int, double> amperesIn)
    {
        (this.sizes, this.amperesIn) = (sizes, amperesIn);
        others = new(() => [.. Others(sizes.Study)]);
    }

    /// <summary>The setting for a conductor.</summary>
    public Setting Of(int conductor)
    {
        var own = Own(sizes.Conductors[conductor]);
        double most = amperesIn(own, conductor) / Enough;
        var worst = own;
        foreach (var other in others.Value)
            if (amperesIn(other, conductor) is var amperes && amperes > most * (1 + 1e-6)) (worst, most) = (other, amperes);
        return worst;
    }

    private Setting Own(ConductorSizing sizing)
    {
        var circuit = sizes.Circuit;
        var moved = sizing.Positions.Where(p => circuit.Variables.First(v => v.Part == p.Part && v.Actuator.Name == p.Actuator).Actuator.Rest != p.Position).ToImmutableArray();
        return new(moved.IsEmpty ? "at rest" : string.Join(", ", moved.Select(circuit.TextOf)), moved, []);
    }

    // A short circuit of its own is no setting to look for another in.
    private static IEnumerable<Setting> Others(CircuitStudy study) =>
        study.Settings.Select(s => s.Setting.Name).Concat(study.ProposedSettings).Select(study.FindSetting).OfType<SettingStudy>().Where(s => s is { IsShort: false, IsUnsettled: false })
            .Select(s => s.Setting).DistinctBy(s => s.Name);
}
