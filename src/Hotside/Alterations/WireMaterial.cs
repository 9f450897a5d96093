using Hotside.Circuits;

namespace Hotside.Alterations;

/// <summary>What a conductor is made of once it is moved, renewed or cut.</summary>
internal static class WireMaterial
{
    /// <summary>The old conductor with what is said of the new one; what is not said stays, but for what was measured on the old copper.</summary>
    public static Wire Renewed(Wire old, Wire said)
    {
        bool isNewCopper = said.Size is not null || said.Colour is not null || said.IsBraid;
        return old with
        {
            Size = said.Size ?? old.Size,
            Colour = said.IsBraid ? null : said.Colour ?? old.Colour,
            IsBraid = said.IsBraid || (old.IsBraid && said.Colour is null),
            LengthInMetres = said.LengthInMetres ?? old.LengthInMetres,
            ResistanceInOhms = said.ResistanceInOhms ?? (isNewCopper || said.LengthInMetres is not null ? null : old.ResistanceInOhms),
            JointAtFromInOhms = isNewCopper ? null : old.JointAtFromInOhms,
            JointAtToInOhms = isNewCopper ? null : old.JointAtToInOhms,
            TemperatureInCelsius = said.TemperatureInCelsius ?? old.TemperatureInCelsius,
            Insulation = said.Insulation ?? old.Insulation,
            Loom = said.Loom ?? old.Loom,
            Name = said.Name ?? old.Name,
            Place = said.Place ?? old.Place,
            Role = said.Role == WireRole.Wire ? old.Role : said.Role,
            Condition = said.Condition ?? (isNewCopper ? null : old.Condition),
        };
    }

    /// <summary>A conductor whose joint is made anew at its first end, its second end or both: the bad one is gone.</summary>
    public static Wire Remade(Wire wire, bool atFrom, bool atTo) => wire with
    {
        JointAtFromInOhms = atFrom ? null : wire.JointAtFromInOhms,
        JointAtToInOhms = atTo ? null : wire.JointAtToInOhms,
    };

    /// <summary>Either half of a cut conductor: the same copper, but nobody has measured the halves yet.</summary>
    public static Wire Half(Wire whole) => whole with { LengthInMetres = null, ResistanceInOhms = null, JointAtFromInOhms = null, JointAtToInOhms = null };

    /// <summary>Whether it is another wire to the eye: another size or colour.</summary>
    public static bool LooksDifferent(Wire a, Wire b) => a.Size != b.Size || a.Colour != b.Colour || a.IsBraid != b.IsBraid;

    /// <summary>Whether it is another wire although its ends are the same: what was brittle is sound, or what is stated of both differs.</summary>
    public static bool IsAnother(Wire old, Wire now) =>
        LooksDifferent(old, now) || Differ(old.LengthInMetres, now.LengthInMetres) || Differ(old.ResistanceInOhms, now.ResistanceInOhms)
        || (old.Insulation is not null && now.Insulation is not null && old.Insulation != now.Insulation)
        || (old.Condition is not (null or WireCondition.Good) && now.Condition is (null or WireCondition.Good))
        || IsRemade(old, now);

    /// <summary>Whether a bad joint of the old one is not on the new one.</summary>
    public static bool IsRemade(Wire old, Wire now) =>
        (old.JointAtFromInOhms is not null && now.JointAtFromInOhms is null) || (old.JointAtToInOhms is not null && now.JointAtToInOhms is null);

    // A figure that only one side has was measured later or forgotten; it makes no other wire.
    private static bool Differ(double? old, double? now) => old is not null && now is not null && old != now;
}
