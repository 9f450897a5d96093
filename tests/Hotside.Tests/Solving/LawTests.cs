using Hotside.Circuits;
using Hotside.Kinds;
using Hotside.Solving;
using Hotside.Solving.Laws;

namespace Hotside.Tests.Solving;

/// <summary>What makes a network solvable: no law ever falls, and each knows its slope.</summary>
public class LawTests
{
    private static readonly Law[] Laws =
    [
        ClampLaw.Resistance(2), new ClampLaw(100, 12.6, Most: 0), new ClampLaw(25, 12.6, 0, 1.2), new ClampLaw(50, 0.7, Least: 0), new ClampLaw(1.7, 0, -5, 5), new LampLaw(12, 2.9),
        new LampLaw(6, 0.3, LampLaw.InVacuum), new FanLaw(12, 5, 0.6), new SeriesFanLaw(12, 5, 0.6),
    ];

    public static TheoryData<int> Each => [.. Enumerable.Range(0, Laws.Length)];

    [Theory]
    [MemberData(nameof(Each))]
    public void No_law_falls_and_each_knows_its_slope(int index)
    {
        var law = Laws[index];
        for (double volts = -30; volts < 30; volts += 0.0173)
        {
            var (amperes, siemens) = law.At(volts);
            double little = 1e-7, above = law.At(volts + little).Amperes, below = law.At(volts - little).Amperes;
            Assert.True(above >= amperes && amperes >= below && siemens >= 0, $"{law} falls at {volts}");
            double quotient = (above - below) / (2 * little);
            // Off kinks only: there either slope is right.
            if (Math.Abs(above - amperes - (amperes - below)) < 1e-3 * (above - below)) Assert.Equal(quotient, siemens, 1e-6 + (1e-3 * siemens));
        }
    }

    // From a lamp handbook's exponent (Fink and Beaty, page 22-8): at twice its volts a lamp draws 1.46 times its current. Fans: by the physics told at the laws.
    [Fact]
    public void At_twice_their_volts_lamps_and_fans_draw_what_physics_says()
    {
        Assert.Equal(1.46, new LampLaw(6, 1).At(12).Amperes, 0.005);
        Assert.Equal(2.90, new FanLaw(6, 1, 1.5).At(12).Amperes, 0.005);
        Assert.Equal(1.47, new SeriesFanLaw(6, 1, 1.5).At(12).Amperes, 0.005);
        Assert.All(Laws.Skip(5), law => Assert.Equal(law.At(-7).Amperes, -law.At(7).Amperes, 1e-12));
    }

    [Fact]
    public void A_cold_lamp_draws_twelve_times_its_current_at_most_and_its_curves_meet()
    {
        LampLaw lamp = new(12, 35 / 12.0);
        Assert.Equal(0.34286, lamp.ColdOhms, 1e-5);
        Assert.Equal(0.0040 * 12, lamp.Knee, 0.0001 * 12);
        Assert.Equal(lamp.At(lamp.Knee * (1 - 1e-9)).Amperes, lamp.At(lamp.Knee * (1 + 1e-9)).Amperes, 1e-6);
    }

    public static TheoryData<string> Kinds => [.. Catalogue.Standard.Kinds.Select(k => k.Id)];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void The_laws_of_every_kind_never_fall_and_draw_the_rated_current_at_rated_volts(string id)
    {
        var kind = Catalogue.Standard.Find(id)!;
        if (kind.Ways is { } ways) kind = kind.WithWays(ways.Least);
        var part = new PartSpec(kind).As("P1");
        foreach (var element in kind.Elements.Where(e => e.Type != ElementType.Dropper))
        {
            List<Assumption> assumed = [];
            ElementFigures figures = new(part, element, 12, assumed);
            var law = element.IsSource ? SourceLaws.Of(part, element, 12, figures, Surroundings.Usual) : ElementLaws.Of(part, element, figures, Surroundings.Usual);
            foreach (var each in law.Closed.Concat(law.Open))
                for (double volts = -30; volts < 30; volts += 0.31)
                    Assert.True(each.At(volts + 0.01).Amperes >= each.At(volts).Amperes, $"{id}.{element.Name} falls at {volts}");
            if (!element.IsConsumer || element.IsInternal) continue;
            // Nothing is stated here, so every figure is an assumption and says where it is from.
            Assert.NotEmpty(assumed);
            Assert.All(assumed, a => Assert.NotEqual("", a.Source));
            double drawn = law.Closed.Sum(l => l.At(12).Amperes);
            Assert.InRange(drawn, 1e-3, 400);
        }
    }
}
