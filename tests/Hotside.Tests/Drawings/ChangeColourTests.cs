using Hotside.Drawings;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;
using Hotside.Tests.Outputs;
using Hotside.Tests.Support;

namespace Hotside.Tests.Drawings;

/// <summary>One number has one colour: in its line of the list and in each of its triangles, in every view.</summary>
public sealed class ChangeColourTests
{
    [Theory]
    [InlineData("horn", View.Pair)]
    [InlineData("headlamps", View.Pair)]
    [InlineData("charging", View.Pair)]
    [InlineData("trailer", View.Pair)]
    [InlineData("headlamps", View.Overlay)]
    public void A_number_has_the_colour_that_it_has_in_the_list(string job, View view) => OneColour(GalleryJobs.Read(job).Draw(view).Scene);

    // A wire moved and renewed, one with both ends elsewhere, work on a part that stays, one number for things that come, go and move.
    [Theory]
    [InlineData("- move w3: F1.2 to X1, 10 BK", 1, "New")]
    [InlineData("- move w3: F1.2 to X1, H1.1 to H1.2", 1, "Moved")]
    [InlineData("- - replace F1: fuse, 5 A\n      - 'do H1: sound it'", 2, "New")]
    [InlineData("- - take out w3\n      - run w6: F1.2 to H1.1, 10 BK", 2, "Ink")]
    public void A_number_of_several_things_has_one_colour_too(string change, int places, string colour)
    {
        var scene = Job.Read(HornJob.With($"alteration:\n  changes:\n    {change}\n")).OrThrow().Draw(View.Pair).Scene;
        OneColour(scene);
        var drawn = Triangles(scene).Where(t => t.Number == "1").ToArray();
        Assert.True(drawn.Length >= places, $"{drawn.Length} triangles");
        Assert.All(drawn, t => Assert.Equal(colour, t.Colour.ToString()));
    }

    [Fact]
    public void Each_of_several_numbers_at_one_wire_has_its_own_colour()
    {
        var number = new Hotside.Drawings.Marks.ChangeNumber("4,9", ColourRole.Moved) { Colours = [ColourRole.Moved, ColourRole.New] };
        Assert.Equal([("4", ColourRole.Moved), ("9", ColourRole.New)], Hotside.Drawings.Marks.Triangle.Of(number, Lettering.Normal).Shapes.OfType<TextShape>().Select(t => (t.Text, t.Fill)));
    }

    private static void OneColour(Scene scene)
    {
        var listed = scene.Groups.Where(g => g.Classes.Contains("changes")).SelectMany(g => g.Shapes).OfType<TextShape>().Where(t => t.Anchor == Anchor.End).ToDictionary(t => t.Text, t => t.Fill);
        var drawn = Triangles(scene).ToArray();
        Assert.NotEmpty(drawn);
        Assert.All(drawn, t => Assert.Equal((t.Number, listed[t.Number]), t));
    }

    // A number in the middle of three corners.
    internal static IEnumerable<(string Number, ColourRole Colour)> Triangles(Scene scene) =>
        from shapes in scene.Groups.Where(g => g.Id != "legend").Select(g => g.Shapes)
        from pair in shapes.Zip(shapes.Skip(1))
        where pair.First is PolylineShape { Closed: true, Points.Length: 3 } && pair.Second is TextShape
        select (((TextShape)pair.Second).Text, pair.Second.Fill);
}
