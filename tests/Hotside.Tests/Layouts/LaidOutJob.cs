using Hotside.Drawings.Plans;
using Hotside.Kinds;
using Hotside.Layouts;
using Hotside.Reading;
using Hotside.Studies;
using Hotside.Symbols.Texts;
using Hotside.Tests.Support;
using Hotside.Wording;

namespace Hotside.Tests.Layouts;

/// <summary>A job laid out at its natural size.</summary>
internal sealed record LaidOutJob(DrawingPlan Plan, Layout Layout)
{
    /// <summary>A case of the gallery.</summary>
    public static LaidOutJob OfGallery(string name) => Of(File.ReadAllText(Repository.Path("gallery", name, "job.yaml")));

    /// <summary>A job of the tests.</summary>
    public static LaidOutJob OfTests(string file) => Of(JobFiles.Text(file));

    public static LaidOutJob Of(string yaml)
    {
        var alteration = JobReader.Read("job.yaml", yaml, Catalogue.Standard, _ => null).Alteration!;
        var plan = DrawingPlan.Of(alteration, Study.Of(alteration), Lettering.Normal, Vocabulary.Of(Words.American));
        return new(plan, Layout.Of(plan.Input, new()));
    }

    public BenchMeasure Measure => BenchMeasure.Of(Plan.Input, Layout);

    public PlacedBox Box(string id) => Layout.Boxes.First(b => b.Id == id);

    public (int X, int Y) Pin(string box, string terminal)
    {
        var given = Plan.Input.Boxes.First(b => b.Id == box);
        var part = Plan.Parts.First(p => p.Box == box);
        var pin = (part.After ?? part.Before)!.Symbol.Pin(terminal);
        return Box(box).PinPlace(given, given.Pins.First(p => p.X == pin.X && p.Y == pin.Y));
    }

    public (int X, int Y)[] Line(string wire) => [.. Layout.Wires.First(w => w.Id == wire).Points];

    /// <summary>A line in steps of a module, each named by its upper or left end; the library's own walk is not asked.</summary>
    public static IEnumerable<(int X, int Y, bool Down)> Steps(IReadOnlyList<(int X, int Y)> points)
    {
        for (int i = 1; i < points.Count; i++)
        {
            int dx = Math.Sign(points[i].X - points[i - 1].X), dy = Math.Sign(points[i].Y - points[i - 1].Y);
            for (var at = points[i - 1]; at != points[i]; at = (at.X + dx, at.Y + dy)) yield return (Math.Min(at.X, at.X + dx), Math.Min(at.Y, at.Y + dy), dy != 0);
        }
    }
}
