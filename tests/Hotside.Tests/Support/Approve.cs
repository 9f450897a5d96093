namespace Hotside.Tests.Support;

/// <summary>Compares a text with an approved one that lies beside the tests.</summary>
internal static class Approve
{
    private static bool IsCi => Environment.GetEnvironmentVariable("CI") == "true";

    private static bool Accepts => Environment.GetEnvironmentVariable("HOTSIDE_ACCEPT") == "1";

    /// <summary>Fails where the text differs from the approved one; with HOTSIDE_ACCEPT=1 it becomes the approved one.</summary>
    /// <param name="actual">The text as it is.</param>
    /// <param name="path">The approved file, from the top of the tree.</param>
    public static void Text(string actual, params string[] path)
    {
        string file = Repository.Path(path);
        string? approved = File.Exists(file) ? File.ReadAllText(file).ReplaceLineEndings("\n") : null;
        if (approved == actual) return;
        if (Accepts)
        {
            Assert.False(IsCi, "Nothing is approved on a build machine: HOTSIDE_ACCEPT must not be set there.");
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            File.WriteAllText(file, actual);
            return;
        }
        Assert.Fail(Difference(approved, actual, string.Join('/', path)));
    }

    internal static string Difference(string? approved, string actual, string name)
    {
        string[] was = (approved ?? "").Split('\n'), now = actual.Split('\n');
        int line = 0;
        while (line < was.Length && line < now.Length && was[line] == now[line]) line++;
        return $"""
            {name} {(approved is null ? "is not there" : $"differs from line {line + 1} on")}.
              approved: {(approved is null ? "(nothing)" : line < was.Length ? was[line] : "(ends here)")}
              actual:   {(line < now.Length ? now[line] : "(ends here)")}
            If the new text is right: HOTSIDE_ACCEPT=1 dotnet test, and look at what changed before committing it.
            """;
    }
}
