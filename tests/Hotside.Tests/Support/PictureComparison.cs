using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;

namespace Hotside.Tests.Support;

/// <summary>
/// How much of one picture is not in another, at the worst place. A pixel counts as different when it is darker or lighter, by half of the way from black to white,
/// than everything in the other picture within one pixel of its place; both ways. Told is the greatest number of such pixels in any square of 48 by 48. Smoothed
/// edges and letters half a pixel off thus count for little; a line or label that is missing counts whole, however small its part of the sheet.
/// </summary>
internal static class PictureComparison
{
    private const int Enough = 128, Square = 48;

    public static int WorstSquare(byte[] first, byte[] second)
    {
        using Image<L8> a = Image.Load<L8>(first), b = Image.Load<L8>(second);
        // Programs round the size of a sheet up or down.
        Assert.InRange(Math.Abs(a.Width - b.Width), 0, 1);
        Assert.InRange(Math.Abs(a.Height - b.Height), 0, 1);
        int width = Math.Min(a.Width, b.Width), height = Math.Min(a.Height, b.Height);
        byte[] one = Bytes(a), two = Bytes(b);
        var squares = new Dictionary<(int, int), int>();
        for (int y = 1; y < height - 1; y++)
            for (int x = 1; x < width - 1; x++)
            {
                byte here = one[(y * a.Width) + x], there = two[(y * b.Width) + x];
                if (Math.Abs(here - there) < Enough || !(IsOutside(here, two, b.Width, x, y) || IsOutside(there, one, a.Width, x, y))) continue;
                squares[(x / Square, y / Square)] = squares.GetValueOrDefault((x / Square, y / Square)) + 1;
            }
        return squares.Values.DefaultIfEmpty(0).Max();
    }

    private static bool IsOutside(byte value, byte[] other, int width, int x, int y)
    {
        int least = 255, most = 0;
        for (int dy = -1; dy <= 1; dy++)
            for (int dx = -1; dx <= 1; dx++)
            {
                int near = other[((y + dy) * width) + x + dx];
                (least, most) = (Math.Min(least, near), Math.Max(most, near));
            }
        return value <= least - Enough || value >= most + Enough;
    }

    private static byte[] Bytes(Image<L8> image)
    {
        byte[] bytes = new byte[image.Width * image.Height];
        image.CopyPixelDataTo(bytes);
        return bytes;
    }
}
