using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Alterations;

/// <summary>Settings of the before circuit as they stand after.</summary>
internal static class SettingsAfter
{
    /// <summary>The setting without what it says of parts, positions and conditions that are gone.</summary>
    public static Setting Of(Setting setting, ImmutableArray<Part> parts, IEnumerable<Conductor> conductors) => setting with
    {
        Positions = [.. setting.Positions.Where(p => parts.Any(part =>
            (p.Part is null || part.Id == p.Part) && part.Kind.Actuators.Any(a => a.Name == p.Actuator && a.Positions.Contains(p.Position) && (p.Part is not null || a.IsShared))))],
        Values = [.. setting.Values.Where(v => v.IsThere(parts, conductors))],
    };
}
