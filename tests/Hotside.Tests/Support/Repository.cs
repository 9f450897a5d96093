using System.Runtime.CompilerServices;

namespace Hotside.Tests.Support;

/// <summary>The source tree that the tests were built from.</summary>
internal static class Repository
{
    /// <summary>A path below the top of the tree.</summary>
    public static string Path(params string[] parts) => System.IO.Path.Combine([Top, .. parts]);

    private static string Top { get; } = Find();

    private static string Find([CallerFilePath] string here = "")
    {
        // A deterministic build may rewrite the compiler's paths; the output folder then still lies in the tree.
        foreach (string start in new[] { System.IO.Path.GetDirectoryName(here) ?? "", AppContext.BaseDirectory })
            for (string? folder = start; !string.IsNullOrEmpty(folder); folder = System.IO.Path.GetDirectoryName(folder))
                if (File.Exists(System.IO.Path.Combine(folder, "Hotside.slnx")))
                    return folder;
        throw new InvalidOperationException("The source tree is not to be found.");
    }
}
