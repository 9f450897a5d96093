using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Alterations;

/// <summary>Settings of the before circuit as they stand after.</summary>
internal static class SettingsAfter
{
    /// <summary>The setting without what it says of parts, positions and conditions that are gone.</summary>
    public static Setting Of(Setting setting, ImmutableArray<Part> parts) => setting with
    {
        Positions = [.. setting.Positions.Where(p => parts.Any(part => Has(part, p)))],
        Values = [.. setting.Values.Where(v => parts.Any(part => part.Id == v.Part))],
    };

    private static bool Has(Part part, SetPosition position) =>
        (position.Part is null || position.Part == part.Id)
        && part.Kind.Actuators.Any(a => a.Name == position.Actuator && a.Positions.Contains(position.Position) && (a.IsShared || position.Part is not null));
}
