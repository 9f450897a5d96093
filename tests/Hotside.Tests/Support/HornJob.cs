namespace Hotside.Tests.Support;

/// <summary>The small horn circuit to which an example's lines belong.</summary>
internal static class HornJob
{
    public static string Base { get; } = File.ReadAllText(Repository.Path("tests", "Hotside.Tests", "Reading", "bad", "base.yaml"));

    private static readonly string[] Sections = ["title block", "system", "kinds", "include", "parts", "wires", "settings", "sequences", "readings", "alteration", "accept"];

    /// <summary>The lines of an example within the horn circuit: lines of a section it has go to that section, others behind it. What is a file of its own stays as it is.</summary>
    public static string With(string lines)
    {
        if (lines.StartsWith("---\n", StringComparison.Ordinal)) return Base + lines;
        if (lines.StartsWith("title: [", StringComparison.Ordinal)) return Base.Replace("title: Horn circuit\n", lines, StringComparison.Ordinal);
        var own = Blocks(lines);
        bool isPiece = own.Count > 0 && own.All(b => Sections.Contains(KeyOf(b)) || KeyOf(b) == "wire");
        if (!isPiece) return lines;
        var all = Blocks(Base);
        foreach (var block in own)
        {
            var there = all.Find(b => KeyOf(b) == KeyOf(block));
            if (there is null) all.Add(block);
            else if (block.Count > 1) there.AddRange(block.Skip(1));
            else there[0] = block[0];
        }
        return string.Concat(all.SelectMany(b => b).Select(l => l + "\n"));
    }

    // A block begins at the margin.
    private static List<List<string>> Blocks(string text)
    {
        var blocks = new List<List<string>>();
        foreach (string line in text.TrimEnd('\n').Split('\n'))
            if (blocks.Count > 0 && (line.Length == 0 || line[0] is ' ' or '\t')) blocks[^1].Add(line);
            else if (line.Length > 0) blocks.Add([line]);
        return blocks;
    }

    private static string KeyOf(List<string> block) => block[0].Split(':')[0];
}
