using System.Collections.Immutable;
using Hotside.Packs.Pages;
using Hotside.Packs.Papers;

namespace Hotside.Packs;

/// <summary>The pages of a pack, in order: one file a page. A page that has nothing to say is none.</summary>
internal static class PageList
{
    /// <summary>The written pages with their names, in order; cover and schematics are made apart, since they tell and bear the numbers of sheets.</summary>
    public static readonly ImmutableArray<(string Key, Func<PackSource, Section?> Make)> Written =
    [
        (CautionPage.Key, CautionPage.Of),
        (DecisionPage.Key, DecisionPage.Of),
        (ChangePage.Key, ChangePage.Of),
        (LoadPage.Key, LoadPage.Of),
        (MaterialPage.Key, MaterialPage.Of),
        (WirePage.Key, WirePage.Of),
        (LabelPage.Key, LabelPage.Of),
        (OrderPage.Key, OrderPage.Of),
        (CheckPage.DeadKey, CheckPage.Dead),
        (CheckPage.LiveKey, CheckPage.Live),
        (FaultPage.Key, FaultPage.Of),
        (FusePage.Key, FusePage.Of),
        (OwnerPage.Key, OwnerPage.Of),
        (SignaturePage.Key, SignaturePage.Of),
    ];

    /// <summary>The names of all pages, in order: the schematics follow the cautions.</summary>
    public static readonly ImmutableArray<string> Keys = [CoverPage.Key, CautionPage.Key, SchematicPage.Key, .. Written.Skip(1).Select(p => p.Key)];
}
