using System.Text.RegularExpressions;

namespace Hotside.Tests.Support;

/// <summary>A job with the files that it names, divided by lines such as <c>--- rear.yaml</c>, read as from a folder.</summary>
internal static partial class SeveralTexts
{
    public const string First = "job.yaml";

    /// <summary>Reads the job; what it says is completed to the horn circuit.</summary>
    public static ReadResult Read(string text)
    {
        string[] pieces = Divider().Split(text);
        string folder = Directory.CreateTempSubdirectory("hotside-").FullName;
        try
        {
            Write(folder, First, HornJob.With(pieces[0]));
            for (int i = 1; i + 1 < pieces.Length; i += 2) Write(folder, pieces[i], pieces[i + 1]);
            return Job.ReadFile(Path.Combine(folder, First));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    /// <summary>A printed diagnostic without the folder's name.</summary>
    public static string Print(ReadResult read, Hotside.Diagnostics.Diagnostic diagnostic)
    {
        string text = read.Print(diagnostic);
        int at = text.IndexOf(First, StringComparison.Ordinal);
        return diagnostic.Span is { } span && Path.GetFileName(span.File) == First && at > 0 ? text[at..] : text;
    }

    private static void Write(string folder, string file, string text)
    {
        string path = Path.Combine(folder, file);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
    }

    [GeneratedRegex(@"^--- (\S+)\n", RegexOptions.Multiline)]
    private static partial Regex Divider();
}
