using Hotside.Circuits;

namespace Hotside.Studies.Figures;

/// <summary>What is used for seconds only, and counts in no steady load: starters, and the relays that belong to them.</summary>
internal static class BriefLoad
{
    /// <summary>Whether a part is such: a starter, or a relay whose kind's data says that it bears another voltage for a brief time only.</summary>
    public static bool Is(Part part) => part.Kind is { Voltage: "brief", Letter: "K" } || part.Kind.Elements.Any(part.IsStarter);

    /// <summary>Whether a load is a starter's motor.</summary>
    public static bool IsStarter(LoadStudy load) => !load.Element.IsInternal && load.Part.IsStarter(load.Element);
}
