using Hotside.Symbols.Shapes;

namespace Hotside.Tests.Drawings;

/// <summary>What holds for the texts of every picture.</summary>
internal static class Texts
{
    /// <summary>Fails where two texts overlap; each is measured once.</summary>
    public static void LieApart(IEnumerable<Shape> shapes, double tolerance = 0.05)
    {
        List<(TextShape Text, Box Box)> texts = [.. shapes.OfType<TextShape>().Where(t => t.Text.Length > 0).Select(t => (t, t.Bounds))];
        for (int i = 0; i < texts.Count; i++)
        {
            for (int j = i + 1; j < texts.Count; j++)
            {
                if (texts[i].Box.Overlaps(texts[j].Box, tolerance))
                    Assert.Fail($"{texts[i].Text} over {texts[j].Text}");
            }
        }
    }
}
