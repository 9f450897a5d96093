using Hotside.Circuits;

namespace Hotside.Studies.Figures;

/// <summary>What is used for seconds only, and counts in no steady load: starters, and the relays that belong to them.</summary>
internal static class BriefLoad
{
    /// <summary>Whether a part is such: its kind's data says that it bears another voltage for a brief time only.</summary>
    public static bool Is(Part part) => part.Kind.Voltage == "brief" && part.Kind.Letter is "M" or "K";

    /// <summary>Whether a load is a starter's motor.</summary>
    public static bool IsStarter(LoadStudy load) => Is(load.Part) && load.Part.Kind.Letter == "M" && load.Element is { Type: ElementType.Motor, IsInternal: false };
}
