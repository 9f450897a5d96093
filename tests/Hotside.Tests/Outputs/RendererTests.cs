using System.Text.RegularExpressions;
using Hotside.Symbols.Texts;
using Hotside.Tests.Support;

namespace Hotside.Tests.Outputs;

/// <summary>Our PNG of a drawing against two programs that render its SVG by themselves: librsvg and Chromium.</summary>
public sealed partial class RendererTests : IDisposable
{
    private const int DotsAnInch = 192;

    // Pixels in the worst square. Measured on the horn: 20 with librsvg 2.54 and with Chromium 156; 121 where one label is missing, 192 where one wire is.
    private const int Tolerance = 50;

    private readonly string folder = Directory.CreateTempSubdirectory("hotside").FullName;

    public static TheoryData<string, View> Pictures
    {
        get
        {
            var all = new TheoryData<string, View>();
            // Six circuits with all sorts of marks between them; the largest sheets are drawn by the same shapes.
            foreach (string name in GalleryJobs.Names.Where(n => n is "horn" or "starter" or "headlamps" or "courtesy" or "charging" or "fuel-pump"))
                all.Add(name, View.Pair);
            all.Add("horn", View.Overlay);
            return all;
        }
    }

    [Theory]
    [MemberData(nameof(Pictures))]
    public void Librsvg_draws_the_svg_as_our_png_has_it(string name, View view)
    {
        var drawing = Drawn(name, view);
        Assert.InRange(PictureComparison.WorstSquare(drawing.ToPng(DotsAnInch), Librsvg(drawing.ToSvg())), 0, Tolerance);
    }

    [Theory]
    [MemberData(nameof(Pictures))]
    public void Chromium_draws_the_svg_as_our_png_has_it(string name, View view)
    {
        var drawing = Drawn(name, view);
        Assert.InRange(PictureComparison.WorstSquare(drawing.ToPng(DotsAnInch), Chromium(drawing)), 0, Tolerance);
    }

    // The measure itself: it sees a conductor, and it sees a label, that is not there.
    [Theory]
    [InlineData("wire")]
    [InlineData("label")]
    public void A_line_or_a_label_less_is_noticed(string kind)
    {
        var drawing = GalleryJobs.HornPair;
        string less = kind == "wire" ? Wire().Replace(drawing.ToSvg(), "", 1) : Label().Replace(drawing.ToSvg(), "", 1);
        Assert.NotEqual(drawing.ToSvg(), less);
        Assert.True(PictureComparison.WorstSquare(drawing.ToPng(DotsAnInch), Librsvg(less)) > Tolerance);
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private static Drawing Drawn(string name, View view) => (name, view) switch
    {
        ("horn", View.Pair) => GalleryJobs.HornPair,
        ("horn", View.Overlay) => GalleryJobs.HornOverlay,
        _ => GalleryJobs.Read(name).Draw(view),
    };

    // Librsvg reads no fonts that lie in a file: it is given ours by a configuration of its own, and no other.
    private byte[] Librsvg(string svg)
    {
        File.WriteAllBytes(Path.Combine(folder, "regular.ttf"), FontFace.Regular.TrueType());
        File.WriteAllBytes(Path.Combine(folder, "bold.ttf"), FontFace.Bold.TrueType());
        string fonts = Write("fonts.conf", $"<?xml version=\"1.0\"?><!DOCTYPE fontconfig SYSTEM \"fonts.dtd\"><fontconfig><dir>{folder}</dir><cachedir>{folder}/cache</cachedir></fontconfig>");
        string file = Write("picture.svg", svg), png = Path.Combine(folder, "picture.png");
        OutsideProgram.Run("env", "FONTCONFIG_FILE=" + fonts, OutsideProgram.Needed("rsvg-convert"), "-d", $"{DotsAnInch}", "-p", $"{DotsAnInch}", file, "-o", png);
        return File.ReadAllBytes(png);
    }

    private byte[] Chromium(Drawing drawing)
    {
        string file = Write("picture.svg", drawing.ToSvg()), png = Path.Combine(folder, "picture.png");
        int width = (int)Math.Round(drawing.WidthInMillimetres / 25.4 * 96), height = (int)Math.Round(drawing.HeightInMillimetres / 25.4 * 96);
        OutsideProgram.Run(
            "chromium", "--headless", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--no-first-run", "--disable-background-networking", "--hide-scrollbars",
            // Drawn when the font has been read, not when the time for it is over.
            "--run-all-compositor-stages-before-draw", "--virtual-time-budget=4000",
            "--user-data-dir=" + Path.Combine(folder, "profile"), "--force-device-scale-factor=2", $"--window-size={width},{height}", "--screenshot=" + png, "file://" + file);
        return File.ReadAllBytes(png);
    }

    private string Write(string name, string text)
    {
        string path = Path.Combine(folder, name);
        File.WriteAllText(path, text);
        return path;
    }

    [GeneratedRegex("<g id=\"hotside-a-wire-w7\".*?</g>", RegexOptions.Singleline)]
    private static partial Regex Wire();

    [GeneratedRegex("<text [^>]*>14 GN</text>")]
    private static partial Regex Label();
}
