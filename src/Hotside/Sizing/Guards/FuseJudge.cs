using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Sizing.Currents;
using Hotside.Sizing.Tables;
using Hotside.Solving;
using UnitsNet;

namespace Hotside.Sizing.Guards;

/// <summary>Judges fuses, breakers and links: what they carry, what they guard, the inrush, and which rating would serve.</summary>
internal sealed class FuseJudge
{
    private readonly WorstCurrents currents;
    private readonly Inrush inrush;
    private readonly Dictionary<ModelElement, (double Lamps, double Motors)> rushes = [];

    /// <summary>A judge of a circuit's fuses.</summary>
    public FuseJudge(CircuitModel model, WorstCurrents currents)
    {
        this.currents = currents;
        // A fusible link is judged by its gauge.
        Protections = new(currents.Graph, d => d.Part.Rated(d.Element.Name, Unit.Awg) is not null ? LeastCut.Unknown : TakenRating(d));
        inrush = new(model);
    }

    /// <summary>What guards which conductor.</summary>
    public Protections Protections { get; }

    /// <summary>The rating that guards: what is stated, else the smallest made that carries the load and stands its inrush.</summary>
    public double TakenRating(ModelElement device) => Protection.RatingOf(device)
        ?? FuseLadder.Ratings.FirstOrDefault(r => r >= LeastRating(device) && StandsInrush(device, r) != SizingOutcome.Failed, FuseLadder.Ratings[^1]);

    /// <summary>The verdicts, given what the conductors may carry.</summary>
    public ImmutableArray<FuseSizing> Judged(ImmutableArray<ConductorSizing> conductors) => [.. Protections.Devices.Select(d => Judged(d, conductors))];

    private FuseSizing Judged(ModelElement device, ImmutableArray<ConductorSizing> conductors)
    {
        var worst = currents.Of(device);
        var behind = conductors.Where((c, i) => c.Allowed is not null && c.Refusal is null && Protections.Of(i) is { IsUnprotected: false } guard && guard.All.Contains(device)).MinBy(c => c.Allowed!.Amperes);
        bool isFuse = device.Element.Type == ElementType.Fuse, isLink = device.Part.Rated(device.Element.Name, Unit.Awg) is not null;
        double least = LeastRating(device), most = behind?.Allowed?.Amperes ?? double.PositiveInfinity;
        double? rating = Protection.RatingOf(device);
        double needed = isLink ? 0 : FuseLadder.Ratings.FirstOrDefault(r => r >= least && r <= most && StandsInrush(device, r) != SizingOutcome.Failed);
        return new(device.Part, device.Element)
        {
            Rating = Amperes(rating), Current = ElectricCurrent.FromAmperes(worst.Amperes), Basis = worst.How, LeastRating = ElectricCurrent.FromAmperes(least),
            RatingNeeded = needed > 0 ? ElectricCurrent.FromAmperes(needed) : null,
            Thinnest = behind?.Conductor, ThinnestAmpacity = Amperes(behind?.Allowed?.Amperes),
            Inrush = isFuse && !isLink ? ElectricCurrent.FromAmperes(Math.Max(RushOf(device).Lamps, RushOf(device).Motors)) : null,
            Rush = isFuse && !isLink ? RushOf(device) : default, ShortAmperes = worst.ShortAmperes,
            Carries = rating is null ? SizingOutcome.NotJudged : worst.Amperes > rating ? SizingOutcome.Failed : least > rating ? SizingOutcome.Warning : SizingOutcome.Passed,
            Guards = rating is null || behind is null ? SizingOutcome.NotJudged
                : rating <= most ? SizingOutcome.Passed : rating <= FuseLadder.MostOfAmpacity * behind.Allowed!.Alone || behind.Allowed.WarnsOnly ? SizingOutcome.Warning : SizingOutcome.Failed,
            StandsInrush = rating is { } stated && isFuse && !isLink ? StandsInrush(device, stated) : SizingOutcome.NotJudged,
            LinkNeeded = isLink && behind?.Conductor.Wire.Size is { } size ? LinkFor(size) : null,
        };
    }

    private double LeastRating(ModelElement device)
    {
        var worst = currents.Of(device);
        return ((worst.Amperes - worst.ShortAmperes) / FuseLadder.ContinuousShare) + worst.ShortAmperes;
    }

    private SizingOutcome StandsInrush(ModelElement device, double rating) => device.Element.Type == ElementType.Fuse ? Inrush.Judge(DeviceTimes.PatternOf(device, rating), rating, RushOf(device)) : SizingOutcome.NotJudged;

    private (double Lamps, double Motors) RushOf(ModelElement device) =>
        rushes.TryGetValue(device, out var found) ? found : rushes[device] = inrush.Of(device, currents.Of(device).Positions);

    // The gauge whose section is no larger, four numbers thinner.
    private static WireSize LinkFor(WireSize size)
    {
        int gauge = -3;
        while (gauge < 40 && WireSize.Awg(gauge).Area > size.Area * 1.001) gauge++;
        return WireSize.Awg(Math.Min(gauge + FuseLadder.LinkSteps, 40));
    }

    private static ElectricCurrent? Amperes(double? amperes) => amperes is { } given ? ElectricCurrent.FromAmperes(given) : null;
}
