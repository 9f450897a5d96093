using Hotside.Circuits;
using UnitsNet;

namespace Hotside.Sizing;

/// <summary>What a fuse, breaker or link carries, what it guards, and which rating would serve.</summary>
/// <param name="Part">The part.</param>
/// <param name="Element">The element that opens.</param>
public sealed record FuseSizing(Part Part, Element Element)
{
    /// <summary>The rating stated, or that which its kind commonly has; <see langword="null"/> when neither is known.</summary>
    public ElectricCurrent? Rating { get; internal init; }

    /// <summary>The greatest steady current through it.</summary>
    public ElectricCurrent Current { get; internal init; }

    /// <summary>How the current was found.</summary>
    public CurrentBasis Basis { get; internal init; }

    /// <summary>The least rating: the current, that of continuous loads taken to be at most 80 % of the rating (NFPA 70, 210.20(A)).</summary>
    public ElectricCurrent LeastRating { get; internal init; }

    /// <summary>The smallest rating made that carries the load, stands the inrush and guards the wires; <see langword="null"/> when none does: the wire has to be larger.</summary>
    public ElectricCurrent? RatingNeeded { get; internal init; }

    /// <summary>The conductor with the least ampacity up to the next fuse; <see langword="null"/> when it guards none of known size.</summary>
    public Conductor? Thinnest { get; internal init; }

    /// <summary>What that conductor may carry.</summary>
    public ElectricCurrent? ThinnestAmpacity { get; internal init; }

    /// <summary>The greatest current at the first moment, filaments cold or motors standing; <see langword="null"/> for what is no fuse.</summary>
    public ElectricCurrent? Inrush { get; internal init; }

    /// <summary>Whether it carries its load: warning above 80 % of the rating, failed above the rating.</summary>
    public SizingOutcome Carries { get; internal init; }

    /// <summary>Whether it guards the wires behind it: warning up to 150 % of the thinnest one's ampacity, failed above.</summary>
    public SizingOutcome Guards { get; internal init; }

    /// <summary>Whether it stands the inrush: a note where the inrush lasts longer than its shortest opening time, failed where it is likely to open.</summary>
    public SizingOutcome StandsInrush { get; internal init; }

    /// <summary>The gauge of fusible link that would serve: four gauge numbers thinner than the thinnest wire (common practice, no source); <see langword="null"/> for what is no link.</summary>
    public WireSize? LinkNeeded { get; internal init; }

    /// <summary>The first moment's current with filaments cold, and with motors standing, in amperes.</summary>
    internal (double Lamps, double Motors) Rush { get; init; }

    /// <summary>Whether its times are those of glass, where it states that.</summary>
    internal bool IsGlass => Part.Spec.Options.Contains(Hotside.Sizing.Guards.DeviceTimes.Glass);

    /// <summary>The part of the current that loads take which are on for a short time only, in amperes.</summary>
    internal double ShortAmperes { get; init; }

    /// <summary>The gravest of the three.</summary>
    public SizingOutcome Verdict => (SizingOutcome)Math.Max((int)Carries, Math.Max((int)Guards, (int)StandsInrush));
}
