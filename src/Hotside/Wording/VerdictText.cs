using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Studies;

namespace Hotside.Wording;

/// <summary>The verdict on a load: what stands in its badge and in the quiet line below.</summary>
/// <param name="Badge">The badge, in capitals.</param>
/// <param name="By">By whom and with what current; empty where there is nothing to say.</param>
internal sealed record VerdictText(string Badge, string By)
{
    /// <summary>The verdict on a load.</summary>
    public static VerdictText Of(LoadStudy load, Words words) => new(BadgeOf(load.Side, words), ByOf(load));

    /// <summary>A side as a sentence has it: <c>hot-switched</c>, <c>switched on both sides</c>.</summary>
    public static string Phrase(SwitchedSide side, Words words) => side switch
    {
        SwitchedSide.HotSwitched => words.Say("hot") + "-switched",
        SwitchedSide.GroundSwitched => words.Say("ground") + "-switched",
        SwitchedSide.BothSides => "switched on both sides",
        SwitchedSide.Unswitched => "unswitched",
        SwitchedSide.InSeries => "in series",
        _ => "dead",
    };

    private static string BadgeOf(SwitchedSide side, Words words) =>
        side == SwitchedSide.BothSides ? "SWITCHED BOTH SIDES" : Phrase(side, words).ToUpperInvariant();

    private static string ByOf(LoadStudy load)
    {
        string what = IsOneOfSeveral(load) ? load.Element.Name + " " : "";
        string main = load.Side switch
        {
            SwitchedSide.InSeries => load.InSeriesWith.IsEmpty ? "" : $"with {Few(load.InSeriesWith)} in series",
            SwitchedSide.Dead => load.DeadBecause is { } why ? $"because of {why}" : "",
            _ => Controls(load),
        };
        string line = main.Length == 0 ? "" : what + main;
        return Listing.Commas(
        [
            line,
            load.Holds is { } hold ? $"held by {hold.Relay}" : null,
            load.Until is { } until ? $"until {until.Part} {until.Position}" : null,
            load.ShortedBy.IsEmpty ? null : $"shorted by {Few(load.ShortedBy)}",
            load.ReversedBy.IsEmpty ? null : $"turned round by {Few(load.ReversedBy)}",
            load.IsInRace ? "relays race" : null, load.IsApproximate ? "not fully worked out" : null,
        ]);
    }

    // A switch that carries a load's own current is worth its amperes; a relay's contact is made for them.
    private static string Controls(LoadStudy load)
    {
        ImmutableArray<string> all = [.. load.Chain.Take(1), .. load.SwitchedBy];
        if (all.IsEmpty) return "";
        string by = "by " + Few(all);
        if (!load.Chain.IsEmpty || LoadCurrent.Of(load.Part, load.Element) is not { } amperes) return by;
        string current = AmountText.Amperes(amperes);
        return load.Element.Type == ElementType.Coil ? $"{by}, {current}"
            : $"{by}, which {(all.Length == 1 ? "carries" : "carry")} {current}";
    }

    private static bool IsOneOfSeveral(LoadStudy load) =>
        load.Part.Kind.Elements.Count(e => e is { IsConsumer: true, IsInternal: false }) > 1
        || (load.Element.Type == ElementType.Coil && load.Part.Kind.Elements.Length > 1);

    private static string Few(ImmutableArray<string> ids) =>
        ids.Length <= 3 ? Listing.And(ids) : Listing.And([.. ids.Take(2), $"{Numbers.Whole(ids.Length - 2)} more"]);
}
