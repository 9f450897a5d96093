using System.Collections.Immutable;
using System.Text;
using Hotside.Alterations;
using Hotside.Circuits;
using Hotside.Drawings;
using Hotside.Kinds;
using Hotside.Tests.Support;
using UnitsNet;

namespace Hotside.Tests.Circuits;

/// <summary>What somebody is told who uses the library for the first time: the argument that is wrong, and the nearest right name.</summary>
public class FirstMistakesTests
{
    private static CircuitBuilder Begin() => new CircuitBuilder(ElectricPotential.FromVolts(6), Ground.Positive)
        .Part("G1", Kind.Battery, new() { Voltage = ElectricPotential.FromVolts(6) })
        .Part("X1", Kind.FeedRail)
        .Part("H1", Kind.Horn)
        .Part("S5", Kind.ColumnSwitch)
        .Wire("w1", "G1.neg", "X1");

    private static AlterationBuilder Alter() => Begin().Build().Alter("Test");

    private static Job Done() => Job.From(Begin().Wire("w2", "X1", "H1.1").Wire("w3", "H1.2", "chassis").Wire("w4", "G1.pos", "chassis").Build().Alter("Test").Build());

    private static (string What, Action Do)[] Mistakes { get; } =
    [
        ("a voltage below 0", () => _ = new CircuitBuilder(ElectricPotential.FromVolts(-12), Ground.Negative)),
        ("a further voltage of 0", () => Begin().AlsoAt(ElectricPotential.FromVolts(0))),
        ("a voltage twice", () => Begin().AlsoAt(ElectricPotential.FromVolts(6))),
        ("an isolated ground without its return", () => _ = new CircuitBuilder(ElectricPotential.FromVolts(12), Ground.Isolated)),
        ("a kind that is null", () => Begin().Part("E1", null!)),
        ("an id that is taken", () => Begin().Part("H1", Kind.Horn)),
        ("an id with a space", () => Begin().Part("H 2", Kind.Horn)),
        ("an id that means an end", () => Begin().Part("chassis", Kind.Metal)),
        ("an empty id", () => Begin().Part(" ", Kind.Horn)),
        ("a rating below 0", () => Begin().Part("E1", Kind.Lamp, new() { Voltage = ElectricPotential.FromVolts(-12) })),
        ("a current of 0", () => Begin().Part("F1", Kind.Fuse, new() { Current = ElectricCurrent.FromAmperes(0) })),
        ("a rating that the kind lacks", () => Begin().Part("E1", Kind.Lamp, new() { Capacity = ElectricCharge.FromAmpereHours(5) })),
        ("a rating by a name that is nearly right", () => Begin().Part("N1", Kind.Reducer, new() { Ratings = ImmutableDictionary<string, StatedValue>.Empty.Add("otu V", new(6, Unit.Volt)) })),
        ("a rating in another unit", () => Begin().Part("N1", Kind.Reducer, new() { Ratings = ImmutableDictionary<string, StatedValue>.Empty.Add("out V", new(6, Unit.Ampere)) })),
        ("two values for one lamp", () => Begin().Part("E1", Kind.Lamp, new() { Ratings = ImmutableDictionary<string, StatedValue>.Empty.Add("W", new([21, 5], Unit.Watt)) })),
        ("a value that is not finite", () => _ = new StatedValue(double.NaN, Unit.Volt)),
        ("a count of 0", () => _ = new StatedValue(21, Unit.Watt) { Count = 0 }),
        ("a range that does not end", () => _ = new StatedValue(0, Unit.Ohm) { UpTo = double.NaN }),
        ("a connector without ways", () => Begin().Part("X6", Kind.Connector)),
        ("too many ways", () => Begin().Part("X6", Kind.Connector, new() { Ways = 99 })),
        ("ways of a lamp", () => Begin().Part("E1", Kind.Lamp, new() { Ways = 2 })),
        ("an option that the kind lacks", () => Begin().Part("M1", Kind.Motor, new() { Options = ["wonud"] })),
        ("a joint of a terminal that is not there", () => Begin().Part("F1", Kind.Fuse, new() { Joints = ImmutableDictionary<string, string>.Empty.Add("3", "X1") })),
        ("a joint on a part that is not there", () => Begin().Part("F1", Kind.Fuse, new() { Joints = ImmutableDictionary<string, string>.Empty.Add("1", "X2") }).Build()),
        ("a case of a part that has none", () => Begin().Part("H2", Kind.Horn, new() { Case = "chassis" })),
        ("an assembly that is not there", () => Begin().Part("A1", Kind.Assembly).Part("E1", Kind.Lamp, new() { Assembly = "A2" }).Build()),
        ("a wire to a part not yet there", () => Begin().Wire("w2", "X1", "E1.1").Part("E1", Kind.Lamp)),
        ("a part by a name that is nearly right", () => Begin().Wire("w2", "X1", "H11.1")),
        ("a terminal that is not there", () => Begin().Wire("w2", "X1", "H1.3")),
        ("a terminal by a name that is nearly right", () => Begin().Wire("w2", "G1.nge", "H1.1")),
        ("a part with two terminals and none named", () => Begin().Wire("w2", "X1", "H1")),
        ("an end that is null", () => Begin().Wire("w2", null!, "H1.1")),
        ("a wire from a terminal to itself", () => Begin().Wire("w2", "H1.1", "H1.1")),
        ("a wire that hangs free", () => Begin().Wire("w2", "H1.1", "free")),
        ("a wire with the id of a part", () => Begin().Wire("H1", "X1", "H1.1")),
        ("a colour that is none", () => _ = new Wire(WireSize.Awg(14), "BL")),
        ("a colour in small letters", () => _ = new Wire(WireSize.Awg(14), "rd/wh")),
        ("a wire of no size", () => _ = new Wire(default, "BK")),
        ("a size that nothing made", () => _ = new Wire { Size = default(WireSize) }),
        ("a length below 0", () => _ = new Wire(WireSize.Awg(14), "BK", Length.FromMeters(-1))),
        ("a resistance below 0", () => _ = new Wire { ResistanceInOhms = -0.1 }),
        ("a gauge that is none", () => WireSize.Awg(140)),
        ("a position that is not there", () => Begin().Setting("horn", ("S5", "pushed"))),
        ("a setting of a part that is not there", () => Begin().Setting("horn", ("S55", "pressed"))),
        ("a setting of a part that does not move", () => Begin().Setting("horn", ("H1", "pressed"))),
        ("a setting twice", () => Begin().Setting("left", ("S5", "turn left")).Setting("left", ("S5", "turn right"))),
        ("a title that is empty", () => Begin().Build().Alter("")),
        ("a change of what is not there", () => Alter().TakeOut("w11")),
        ("several taken out, and one is not there", () => Alter().TakeOut(new[] { "w1", "H11" })),
        ("nothing taken out", () => Alter().TakeOut(Array.Empty<string>())),
        ("a new wire from null", () => Alter().Run("w2", null!, "H1.1")),
        ("a wire moved from null", () => Alter().Move("w1", null!, "X1")),
        ("a wire moved to an empty text", () => Alter().Move("w1", "X1", "")),
        ("a new part with an old id", () => Alter().Fit("H1", Kind.Horn)),
        ("a new wire to a part not yet fitted", () => Alter().Run("w2", "K1.87", "H1.1")),
        ("a move of an end that is not there", () => Alter().Move("w1", "H1.1", "X1")),
        ("a move to where it is", () => Alter().Move("w1", "X1", "X1")),
        ("a part that is moved", () => Alter().Move("H1", "H1.1", "X1")),
        ("a wire that is replaced", () => Alter().Replace("w1", Kind.Fuse)),
        ("a replacement without a terminal for a wire", () => Alter().Replace("G1", Kind.Horn).Build()),
        ("a replacement by a kind that is null", () => Alter().Replace("G1", null!)),
        ("a negative rating in a replacement", () => Alter().Replace("H1", Kind.Horn, new() { Current = ElectricCurrent.FromAmperes(-5) })),
        ("two changes of one part", () => Alter().Reverse("G1").Replace("G1", Kind.Battery)),
        ("a part left with wires on it", () => Alter().TakeOut("X1").Build()),
        ("a part of one terminal reversed", () => Alter().Reverse("X1")),
        ("a horn remounted", () => Alter().Remount("H1", "insulated")),
        ("a pair of ids that does not exist", () => Alteration.Between(Begin().Build(), Begin().Build(), "Test", ("H2", "H1"))),
        ("the state of a part that is not there", () => Alter().Build().StateOf("H11")),
        ("the state of a wire that is a part", () => Alter().Build().StateOfConductor("H1")),
        ("a load that is not there", () => Done().Study.Before.Load("H9")),
        ("a load that is a switch", () => Done().Explain("S5")),
        ("an explanation of what is not there", () => Done().Explain("H11")),
        ("a setting that is not there", () => Done().Study.Before.Setting("horn pressed")),
        ("a job with an empty title", () => Job.From(Alter().Build(), " ")),
        ("a theme that is null", () => _ = new DrawingOptions { Theme = null! }),
        ("kinds that are null", () => _ = new JobOptions { Kinds = null! }),
        ("words that are none", () => _ = new DrawingOptions { Words = (Words)9 }),
        ("an explanation in words that are none", () => Done().Explain("H1", (Words)9)),
        ("a colour without its sign", () => Colour.Hex("0072b2")),
        ("no resolution at all", () => Done().Draw().ToPng(0)),
        ("a resolution that is no number", () => Done().Draw().ToPng(double.NaN)),
        ("a document of nothing", () => Array.Empty<Drawing>().ToPdf()),
        ("a document with a null", () => new Drawing[] { null! }.ToPdf()),
        ("a chart of nothing", () => KindSheet.Of(Array.Empty<PartKind>())),
        ("a chart with a null", () => KindSheet.Of(new PartKind[] { null! })),
        ("a view that is none", () => Done().Draw((View)9)),
        ("a file without a name", () => Job.ReadFile(" ")),
        ("a file that is wrong", () => Job.Read("hotside: 1\nsystem: 6 V, positive ground\nparts:\n  G1: batery\n").OrThrow()),
        ("a kind of one's own with a mistake", () => Catalogue.Standard.WithKind("kind: my-lamp\nterminals:\n  1: topp\n")),
    ];

    [Fact]
    public void What_each_mistake_is_told_is_approved()
    {
        var text = new StringBuilder();
        foreach (var (what, act) in Mistakes)
            text.Append(what).Append("\n  ").Append(Told(act).ReplaceLineEndings("\n  ")).Append('\n');
        Approve.Text(text.ToString(), "tests", "Hotside.Tests", "Circuits", "first-mistakes.approved.txt");
    }

    [Fact]
    public void Each_mistake_names_its_argument()
    {
        foreach (var (what, act) in Mistakes)
            if (Record.Exception(act) is ArgumentException wrong)
                Assert.True(wrong.ParamName is { Length: > 0 }, what + " names no argument");
            else
                Assert.IsType<JobException>(Record.Exception(act));
    }

    [Fact]
    public void Building_twice_gives_the_same_and_what_was_built_stays()
    {
        var builder = Begin();
        var first = builder.Build();
        Assert.Equal(Hotside.Reading.JobWriter.Text(first), Hotside.Reading.JobWriter.Text(builder.Build()));
        var larger = builder.Part("E1", Kind.Lamp).Build();
        Assert.Null(first.FindPart("E1"));
        Assert.NotNull(larger.FindPart("E1"));
    }

    [Fact]
    public void A_line_that_was_refused_leaves_nothing_behind()
    {
        var builder = Begin();
        Assert.Throws<ArgumentException>(() => builder.Wire("w2", "X1", "H1.3"));
        Assert.Equal("w2", builder.Wire("w2", "X1", "H1.1").Build().FindConductor("w2")!.Id);
        Assert.Throws<ArgumentException>(() => builder.Part("E1", Kind.Lamp, new() { Ways = 1 }));
        Assert.NotNull(builder.Part("E1", Kind.Lamp).Build().FindPart("E1"));
    }

    private static string Told(Action act) => Record.Exception(act) is { } wrong ? $"{wrong.GetType().Name}: {wrong.Message}" : "nothing is said";
}
