using Hotside.Layouts;
using Hotside.Layouts.Passes;
using Hotside.Symbols;

namespace Hotside.Tests.Layouts;

/// <summary>Leads to the chassis that would have to run round what hangs below their part end at signs of their own.</summary>
public class OwnSignTests
{
    // A flasher's 31 at its side, a reducer's case beside its output, the coils of two relays alike.
    [Theory]
    [InlineData("turn-signals", "w17")]
    [InlineData("gauges", "w14")]
    [InlineData("headlamps", "w12")]
    [InlineData("headlamps", "w13")]
    public void A_lead_beside_what_hangs_below_its_part_ends_at_a_sign_below_its_pin(string name, string wire)
    {
        var job = LaidOutJob.OfGallery(name);
        var lead = job.Line(wire);
        Assert.Contains(wire, job.Layout.Signs);
        Assert.True(lead.Max(p => p.Y) - lead.Min(p => p.Y) <= 8 && lead.Max(p => p.X) - lead.Min(p => p.X) <= 2, string.Join(' ', lead));
        Assert.Empty(Check.Of(job.Plan.Input, job.Layout));
        // With all signs on the row it runs far.
        var onRow = Layout.Of(job.Plan.Input with { Wires = [.. job.Plan.Input.Wires.Select(w => w with { HasOwnSign = false })] }, new());
        Assert.Equal(onRow.ChassisY, onRow.Wires.First(w => w.Id == wire).Points.Max(p => p.Y));
    }

    [Theory]
    [InlineData("horn", "w2")]
    [InlineData("gauges", "w2")]
    public void A_lead_with_nothing_beside_it_ends_on_the_row(string name, string wire)
    {
        var job = LaidOutJob.OfGallery(name);
        var lead = job.Line(wire);
        Assert.Equal(job.Layout.ChassisY, lead.Max(p => p.Y));
        Assert.Single(lead.Select(p => p.X).Distinct());
    }

    // Two senders right above their engine stand on it; what stands elsewhere on a tractor's says so.
    [Fact]
    public void A_case_away_from_its_body_ends_at_a_sign_that_names_it()
    {
        var tractor = LaidOutJob.OfGallery("tractor");
        foreach (string part in new[] { "G2", "G4", "M1" })
        {
            string lead = $"{part}.case on engine.1";
            var wire = tractor.Plan.Input.Wires.First(w => w.Id == lead);
            Assert.Equal((EndKind.Chassis, true), (wire.To.Kind, wire.NamesSign));
            Assert.Equal("engine", (tractor.Plan.Lines.First(l => l.Line == lead) is var line ? line.After ?? line.Before : null)!.Label);
            var sign = tractor.Line(lead)[^1];
            var name = tractor.Layout.Labels.First(l => l.Wire == lead);
            Assert.InRange(name.Y - sign.Y, 1, 2);
            Assert.InRange(sign.X, name.X, name.X + name.Width);
        }
        // The strap that joins it to the chassis is seen.
        Assert.Contains(tractor.Plan.Input.Wires, w => w.From.Box == "engine" || w.To.Box == "engine");
        // One alone stands on its body; two would be joined by a line like a cable.
        var gauges = LaidOutJob.OfGallery("gauges").Plan.Input.Wires;
        Assert.Contains(gauges, w => w.Id == "B4.case on tank.1" && w.To.Kind == EndKind.Pin);
        Assert.All(["B2.case on engine.1", "B3.case on engine.1"], id => Assert.True(gauges.First(w => w.Id == id).NamesSign));
    }

    // The generator goes, the alternator comes: in no view do two cases stand on the engine.
    [Fact]
    public void One_case_in_each_view_stands_on_its_body_where_that_is_right_below_it()
    {
        var charging = LaidOutJob.OfGallery("charging");
        var wires = charging.Plan.Input.Wires;
        Assert.False(wires.First(w => w.Id == "G3.case on engine.1").HasOwnSign);
        Assert.True(wires.First(w => w.Id == "G2.case on engine.1").NamesSign);
        Assert.Equal(2, charging.Line("G3.case on engine.1").Length);
    }

    [Fact]
    public void Where_loads_hang_high_all_leads_have_signs_and_a_row_has_them_on_one_line()
    {
        var plan = LaidOutJob.OfGallery("gauges").Plan;
        var high = Layout.Of(plan.Input with { HangsHigh = true }, new());
        Assert.Empty(Check.Of(plan.Input, high));
        Assert.Contains("w2", high.Signs);
        int Foot(string wire) => high.Wires.First(w => w.Id == wire).Points.Max(p => p.Y);
        Assert.True(Foot("w2") < high.ChassisY);
    }

    [Fact]
    public void The_return_rail_of_an_isolated_system_is_no_sign() => Assert.False(LaidOutJob.OfGallery("launch").Plan.Input is { HasSigns: true } input && input.Wires.Any(w => w.HasOwnSign));

    // It would have to run over and down beside the part; between pins as close as those of a plain connector there is no room for a sign.
    [Theory]
    [InlineData(6, new[] { 0, 1, 2, 3 }, 1, true)]
    [InlineData(4, new[] { 0, 1, 2, 3 }, 2, true)]
    [InlineData(4, new[] { 0, 1, 2, 3 }, 3, true)]
    [InlineData(3, new[] { 0, 1, 3 }, 1, true)]
    [InlineData(3, new[] { 0, 1, 2, 3 }, 1, false)]
    public void A_lead_from_a_pin_that_looks_up_ends_at_a_sign_beside_it_above_its_part(int pitch, int[] wired, int ground, bool hasRoom)
    {
        LayoutBox plug = new("X1", SeenIn.Both, 1 + (pitch * 4), 6, [.. Enumerable.Range(0, 4).SelectMany(i => new LayoutPin[] { new($"a{i}", Side.Top, 1 + (pitch * i), 0), new($"b{i}", Side.Bottom, 1 + (pitch * i), 6) })])
        {
            Paths = [.. Enumerable.Range(0, 4).Select(i => new LayoutPath($"a{i}", $"b{i}", 1))],
            Ways = [.. Enumerable.Range(0, 4).Select(i => 1 + (pitch * i))],
            Shape = "plug",
        };
        int[] feeds = [.. wired.Where(i => i != ground)];
        LayoutWire Wire(string id, LayoutEnd from, LayoutEnd to) => new(id, id, from, to, SeenIn.Both);
        LayoutInput input = new(
            [plug, .. feeds.Select(i => new LayoutBox($"E{i}", SeenIn.Both, 2, 4, [new("1", Side.Top, 1, 0), new("2", Side.Bottom, 1, 4)]))],
            [
                .. feeds.SelectMany(i => new[] { Wire($"w{i}", LayoutEnd.Feed, LayoutEnd.At("X1", $"a{i}")), Wire($"v{i}", LayoutEnd.At("X1", $"b{i}"), LayoutEnd.At($"E{i}", "1")) }),
                .. feeds.Select(i => Wire($"r{i}", LayoutEnd.At($"E{i}", "2"), LayoutEnd.At("X1", $"b{ground}"))),
                Wire("ground", LayoutEnd.At("X1", $"a{ground}"), LayoutEnd.Chassis) with { LabelWidth = 4, LabelHeight = 1 },
            ]) { HasSigns = true, TellsPins = true };
        var hung = Layout.OwnSignsOf(input);
        Assert.Equal(hasRoom, hung.Contains("ground"));
        input = input with { Wires = [.. input.Wires.Select(w => w with { HasOwnSign = hung.Contains(w.Id) })] };
        var layout = Layout.Of(input, new());
        Assert.Empty(Check.Of(input, layout));
        var points = layout.Wires.First(w => w.Id == "ground").Points;
        var box = layout.Boxes.First(b => b.Id == "X1");
        if (!hasRoom) Assert.Equal(layout.ChassisY, points[^1].Y);
        else Assert.True(points.Max(p => p.Y) <= box.Y && points[^1].Y < box.Y && points[^1].Y > points.Min(p => p.Y) && points.Max(p => p.X) - points.Min(p => p.X) <= 3, string.Join(' ', points));
        if (!hasRoom) return;
        // The sign, with its strokes, lies on no line.
        var sign = points[^1];
        Assert.DoesNotContain(layout.Wires.Where(w => w.Id != "ground").SelectMany(w => LaidOutJob.Steps(w.Points)), s => Math.Abs(s.X - sign.X) < 2 && s.Y >= sign.Y - 1 && s.Y <= sign.Y + 1);
    }

    // From a pin go a wire to a rail below it, and one to a fuse that the rail does not feed.
    [Fact]
    public void What_shares_the_pin_of_a_rails_feed_runs_beside_the_rail()
    {
        LayoutBox Part(string id) => new(id, SeenIn.Both, 2, 4, [new("a", Side.Top, 1, 0), new("b", Side.Bottom, 1, 4)]);
        LayoutWire Wire(string id, LayoutEnd from, LayoutEnd to) => new(id, id, from, to, SeenIn.Both);
        LayoutBox rail = new("X1", SeenIn.Both, 0, 0, [new("p", Side.Centre, 0, 0)]) { IsJoint = true, IsRail = true };
        var input = new LayoutInput([Part("Q1"), rail, Part("F1"), Part("F2"), Part("F3")],
        [
            Wire("w1", LayoutEnd.Feed, LayoutEnd.At("Q1", "a")), Wire("w2", LayoutEnd.At("Q1", "b"), LayoutEnd.At("X1", "p")), Wire("w3", LayoutEnd.At("Q1", "b"), LayoutEnd.At("F1", "a")),
            Wire("w4", LayoutEnd.At("X1", "p"), LayoutEnd.At("F2", "a")), Wire("w5", LayoutEnd.At("X1", "p"), LayoutEnd.At("F3", "a")),
            Wire("w6", LayoutEnd.At("F1", "b"), LayoutEnd.Chassis), Wire("w7", LayoutEnd.At("F2", "b"), LayoutEnd.Chassis), Wire("w8", LayoutEnd.At("F3", "b"), LayoutEnd.Chassis),
        ]) { TellsPins = true };
        var layout = Layout.Of(input, new());
        Assert.Empty(Check.Of(input, layout));
        var bar = layout.Rails.First(r => r.Box == "X1");
        var points = layout.Wires.First(w => w.Id == "w3").Points;
        Assert.All(points.Zip(points.Skip(1)), s => Assert.False(
            Math.Min(s.First.Y, s.Second.Y) <= bar.Y && bar.Y <= Math.Max(s.First.Y, s.Second.Y) && Math.Min(s.First.X, s.Second.X) <= bar.X2 && bar.X1 <= Math.Max(s.First.X, s.Second.X), string.Join(' ', points)));
    }

    // Each stretch of the trunk is the one conductor that its label names.
    [Fact]
    public void Gauges_stand_in_the_order_of_the_wire_that_runs_from_one_to_the_next()
    {
        var job = LaidOutJob.OfGallery("gauges");
        int[] columns = [.. new[] { "P1", "P2", "P3", "P4" }.Select(p => job.Box(p).X)];
        Assert.True(columns.SequenceEqual(columns.Order()) || columns.SequenceEqual(columns.OrderDescending()), string.Join(' ', columns));
    }
}
