using Hotside.Checks;
using Hotside.Circuits;

namespace Hotside.Proposals;

/// <summary>The part of other volts that does what an old one did: equal power, within what its kind usually has.</summary>
/// <param name="Spec">What the new part states.</param>
/// <param name="Stated">Whether the old part stated the figures that this stands on.</param>
internal sealed record Equivalent(PartSpec Spec, bool Stated)
{
    /// <summary>What the figure comes to, such as <c>48 W / 12 V = 4 A, usual 3..6 A</c>; empty where nothing is to be said.</summary>
    public string Work { get; private init; } = "";

    /// <summary>The equivalent of a part at other volts.</summary>
    /// <param name="part">The old part.</param>
    /// <param name="was">The volts it was made for.</param>
    /// <param name="volts">The volts to come.</param>
    public static Equivalent Of(Part part, double was, double volts)
    {
        double factor = volts / was;
        List<Rating> ratings = [];
        string work = "";
        bool stated = false;
        foreach (var rating in part.Ratings)
        {
            var rule = part.Kind.RatingNamed(rating.Name)!;
            bool isDrawn = part.Kind.Elements.Any(e => (e.IsConsumer || e.IsSource) && rule.Elements.Contains(e.Name));
            stated |= (isDrawn || part.Kind.Current == "timed") && rule.Unit is Unit.Watt or Unit.Ampere or Unit.Ohm;
            ratings.Add(new(rating.Name, rule.Unit switch
            {
                Unit.Volt => Scaled(rating.Quantity, v => rule.Elements.All(e => part.Kind.ElementNamed(e)!.Type == ElementType.Dropper) ? v : v * factor),
                Unit.Ampere when isDrawn => Scaled(rating.Quantity, a => Usual(part, rule, a / factor, volts, ref work)),
                Unit.Ohm when isDrawn => Scaled(rating.Quantity, o => Resistance(part, rule, o * factor * factor, volts, ref work)),
                _ => rating.Quantity,
            }));
        }
        if (part.Ratings.All(r => r.Name != "V") && part.Kind.Ratings.Any(r => r.Name == "V")) ratings.Insert(0, new("V", new(volts, Unit.Volt)));
        return new(part.Spec with { Ratings = [.. ratings] }, stated) { Work = work };
    }

    // What one can buy lies in the kind's usual range; the greater of both is the safe one for fuse and wire.
    private static double Usual(Part part, RatingRule rule, double amperes, double volts, ref string work)
    {
        double rounded = RoundedUp(amperes);
        bool isWhole = rule.Elements.Any(e => part.Kind.ElementNamed(e)!.Type is ElementType.Horn or ElementType.Motor) && !rule.Elements.Any(e => part.IsStarter(part.Kind.ElementNamed(e)!));
        if (!isWhole || rule.Default is not { At: { } at, Quantity: { UpTo: { } most } usual } || Math.Abs(at.Value - volts) > 0.5) return rounded;
        work = $"{Numbers.Brief(amperes * volts)} W / {Numbers.Plain(volts)} V = {Numbers.Brief(amperes)} A, usual {usual} at {Numbers.Plain(volts)} V";
        return Math.Max(RoundedUp(amperes), Math.Ceiling((usual.Value + most) / 2));
    }

    private static double Resistance(Part part, RatingRule rule, double ohms, double volts, ref string work)
    {
        if (!rule.Elements.Any(e => Trade.IsIgnition(part, part.Kind.ElementNamed(e)!)) || rule.Default is not { At: { } at, Quantity: { UpTo: { } most } usual } || Math.Abs(at.Value - volts) > 0.5) return Math.Round(ohms, 2);
        work = $"equal power is {Numbers.Brief(ohms)} ohm, usual {usual} without a ballast";
        return Math.Min(Math.Round(ohms, 1), Math.Floor((usual.Value + most) / 2 * 10) / 10);
    }

    // 0.15, 0.5, 2.5, 7.5, 12, 90: as parts are stamped.
    private static double RoundedUp(double value) => value switch
    {
        < 1 => Math.Ceiling(value * 20 - 1e-9) / 20,
        < 10 => Math.Ceiling(value * 2 - 1e-9) / 2,
        < 100 => Math.Ceiling(value - 1e-9),
        _ => Math.Ceiling(value / 10 - 1e-9) * 10,
    };

    private static StatedValue Scaled(StatedValue stated, Func<double, double> by) =>
        new([.. stated.Values.Select(by)], stated.Unit) { Count = stated.Count, UpTo = stated.UpTo is { } top ? by(top) : null };
}
