using Hotside.Circuits;
using Hotside.Solving.Laws;
using UnitsNet;

namespace Hotside.Studies.Figures.Budgets;

/// <summary>What a generator or an alternator gives.</summary>
/// <param name="Part">The machine.</param>
/// <param name="Rated">Its rated output.</param>
/// <param name="AtIdle">At idle.</param>
/// <param name="AtCruise">At cruise, warm.</param>
/// <param name="Why">Where the shares are from.</param>
public sealed record MachineOutput(Part Part, ElectricCurrent Rated, ElectricCurrent AtIdle, ElectricCurrent AtCruise, string Why)
{
    // An alternator: 30 to 60 % of its rating at idle, 10 to 20 % under it when hot; both common practice, no source. The middle of each, rounded to the careful side.
    private const double AlternatorIdle = Alternators.UsualLow, AlternatorHot = 0.85;

    internal static MachineOutput Of(Part part, Element output, double amperes) => part.RatedAside(RatingRule.Low, output.Name, Unit.Ampere) is { } low
        ? new(part, ElectricCurrent.FromAmperes(amperes), ElectricCurrent.FromAmperes(low), ElectricCurrent.FromAmperes(AlternatorHot * amperes),
            "its lower mark, at 1500 turns of the alternator a minute, is what it gives at idle; 85 % of its upper mark when hot: common practice, no source")
        : output.TakesEitherPolarity
        ? new(part, ElectricCurrent.FromAmperes(amperes), ElectricCurrent.Zero, ElectricCurrent.FromAmperes(amperes),
            "a generator's cut-out is open at idle, and its rating is what its regulator allows: common practice, no source")
        : new(part, ElectricCurrent.FromAmperes(amperes), ElectricCurrent.FromAmperes(AlternatorIdle * amperes), ElectricCurrent.FromAmperes(AlternatorHot * amperes),
            "an alternator gives 30 to 60 % of its rating at idle, of which 40 % are taken, and 85 % when hot: common practice, no source");
}
