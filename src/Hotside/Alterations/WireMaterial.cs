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
            Insulation = said.Insulation ?? old.Insulation,
            Loom = said.Loom ?? old.Loom,
            Name = said.Name ?? old.Name,
            Place = said.Place ?? old.Place,
            Role = said.Role == WireRole.Wire ? old.Role : said.Role,
            Condition = said.Condition ?? (isNewCopper ? null : old.Condition),
        };
    }

    /// <summary>Either half of a cut conductor: the same copper, but nobody has measured the halves yet.</summary>
    public static Wire Half(Wire whole) => whole with { LengthInMetres = null, ResistanceInOhms = null };

    /// <summary>Whether it is another wire to the eye: another size or colour.</summary>
    public static bool LooksDifferent(Wire a, Wire b) => a.Size != b.Size || a.Colour != b.Colour || a.IsBraid != b.IsBraid;
}
