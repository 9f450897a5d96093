using System.Buffers.Binary;
using System.Globalization;
using System.Text;
using Hotside.Drawings;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;
using SkiaSharp;

namespace Hotside.Tests.Outputs;

public sealed class PngOutputTests
{
    // The file's structure is read after the PNG specification (W3C, third edition, 11.2.1 IHDR, 11.3.4.3 pHYs, 11.3.3.2 tEXt), not by the library that wrote it.
    [Theory]
    [InlineData(96, 1123, 794, 3780)]
    [InlineData(150, 1754, 1240, 5906)]
    [InlineData(300, 3508, 2480, 11811)]
    public void An_A4_sheet_has_the_pixels_of_its_resolution_and_says_so(int resolution, int width, int height, uint dotsAMetre)
    {
        var chunks = Chunks(GalleryJobs.HornPair.ToPng(resolution));
        byte[] head = chunks.Single(c => c.Name == "IHDR").Data, physical = chunks.Single(c => c.Name == "pHYs").Data;
        Assert.Equal((width, height), ((int)Big(head, 0), (int)Big(head, 4)));
        // Eight bits, true colour without transparency.
        Assert.Equal([8, 2], head[8..10]);
        Assert.Equal((dotsAMetre, dotsAMetre, (byte)1), (Big(physical, 0), Big(physical, 4), physical[8]));
        Assert.Equal("Title\0Horn circuit, before and after", Encoding.Latin1.GetString(chunks.Single(c => c.Name == "tEXt").Data));
    }

    [Fact]
    public void The_same_bytes_come_again_in_other_cultures_and_on_four_threads()
    {
        byte[] first = GalleryJobs.HornPair.ToPng(100);
        byte[][] written = new byte[4][];
        Thread[] threads = [.. Enumerable.Range(0, 4).Select(i => new Thread(() => written[i] = GalleryJobs.HornPair.ToPng(100)) { CurrentCulture = new CultureInfo("tr-TR") })];
        Array.ForEach(threads, t => t.Start());
        Array.ForEach(threads, t => t.Join());
        Assert.All(written, w => Assert.Equal(first, w));
    }

    [Fact]
    public void Text_is_painted_though_there_are_no_fonts_but_our_own()
    {
        // The native library without fontconfig sees no font of the machine: a stray reference to the other one would change that.
        Assert.InRange(SKFontManager.Default.FontFamilyCount, 0, 1);
        var drawing = GalleryJobs.HornPair;
        using var image = Image.Load<Rgb24>(drawing.ToPng(254));
        // The headline "Before" stands at the top left inside the frame: 20 mm + 5 mm, 10 mm + 5 mm (10 pixels a millimetre).
        Assert.True(Ink(image, 240, 140, 460, 260) > 500);
        Assert.Equal(0, Ink(image, 0, 0, 40, 40));
    }

    [Fact]
    public void A_dark_drawing_is_dark_to_its_edge()
    {
        using var image = Image.Load<Rgb24>(GalleryJobs.Read("horn").Draw(options: new() { Theme = Theme.Dark }).ToPng(37));
        Assert.All(new[] { image[0, 0], image[image.Width - 1, 0], image[0, image.Height - 1], image[image.Width - 1, image.Height - 1] }, p => Assert.Equal(new Rgb24(0x14, 0x18, 0x1d), p));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(9.9)]
    [InlineData(-300)]
    [InlineData(4801)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void A_resolution_that_makes_no_picture_is_refused(double resolution) =>
        Assert.Equal("resolution", Assert.Throws<ArgumentOutOfRangeException>(() => GalleryJobs.HornPair.ToPng(resolution)).ParamName);

    [Fact]
    public void A_sheet_too_large_for_memory_is_refused_and_not_begun()
    {
        var sheet = new Drawing(Sample.Sheet(), View.Pair, Theme.Paper);
        Assert.Throws<ArgumentOutOfRangeException>(() => sheet.ToPng(4800));
    }

    [Fact]
    public async Task File_and_stream_have_the_same_bytes_and_a_failed_run_leaves_what_was_there()
    {
        string folder = Directory.CreateTempSubdirectory("hotside").FullName;
        try
        {
            var drawing = GalleryJobs.HornPair;
            string path = Path.Combine(folder, "horn.png");
            drawing.SavePng(path, 50);
            using var stream = new MemoryStream();
            await drawing.WritePngAsync(stream, 50, TestContext.Current.CancellationToken);
            Assert.Equal(stream.ToArray(), File.ReadAllBytes(path));
            Assert.Throws<ArgumentOutOfRangeException>(() => drawing.SavePng(path, 1));
            Assert.Equal(stream.ToArray(), File.ReadAllBytes(path));
            Assert.Equal(["horn.png"], Directory.GetFiles(folder).Select(f => Path.GetFileName(f)));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static int Ink(Image<Rgb24> image, int left, int top, int right, int bottom) =>
        Enumerable.Range(top, bottom - top).Sum(y => Enumerable.Range(left, right - left).Count(x => image[x, y].R < 128));

    private static uint Big(byte[] data, int offset) => BinaryPrimitives.ReadUInt32BigEndian(data.AsSpan(offset));

    private static List<(string Name, byte[] Data)> Chunks(byte[] png)
    {
        Assert.Equal([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a], png[..8]);
        var chunks = new List<(string, byte[])>();
        for (int at = 8; at < png.Length;)
        {
            int length = (int)Big(png, at);
            chunks.Add((Encoding.ASCII.GetString(png, at + 4, 4), png[(at + 8)..(at + 8 + length)]));
            at += 12 + length;
        }
        return chunks;
    }
}
