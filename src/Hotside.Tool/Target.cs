using System.Globalization;
using System.Text;

namespace Hotside.Tool;

/// <summary>Where a command writes: a file whose ending says its kind, or standard output.</summary>
/// <param name="Path">The file; <see langword="null"/> for standard output.</param>
/// <param name="Format">The kind of output, such as <c>svg</c>.</param>
internal sealed record Target(string? Path, string Format)
{
    /// <summary>The target that the options ask for.</summary>
    /// <param name="output">What stands behind -o: a file, - for standard output, or nothing.</param>
    /// <param name="format">What stands behind --format, or nothing.</param>
    /// <param name="otherwise">The kind where neither says one.</param>
    /// <param name="endings">The kinds there are with the endings of their files; the first ending of a kind is its usual one.</param>
    /// <param name="wrong">What is wrong, in a sentence; <see langword="null"/> when nothing is.</param>
    public static Target? Of(string? output, string? format, string otherwise, IReadOnlyList<(string Ending, string Format)> endings, out string? wrong)
    {
        wrong = null;
        if (output is null or "-") return new(null, format ?? otherwise);
        var known = endings.FirstOrDefault(e => output.EndsWith(e.Ending, StringComparison.OrdinalIgnoreCase));
        if (known.Format is null && format is null) wrong = $"\"{output}\" ends in no kind of file that is written here; there are {Listed(endings)}.";
        else if (format is not null && known.Format is not null && known.Format != format) wrong = $"\"{output}\" is a file of kind {known.Format}, but --format says {format}.";
        return wrong is null ? new(output, format ?? known.Format!) : null;
    }

    /// <summary>The file of one of several sheets: <c>van-2.svg</c>.</summary>
    public Target Numbered(int sheet) => this with
    {
        Path = System.IO.Path.Combine(System.IO.Path.GetDirectoryName(Path) ?? "", $"{System.IO.Path.GetFileNameWithoutExtension(Path)}-{sheet.ToString(CultureInfo.InvariantCulture)}{System.IO.Path.GetExtension(Path)}"),
    };

    /// <summary>Writes a text to standard output, or a file by an action that writes beside and renames.</summary>
    public void Write(Func<string> text, Action<string> save) => Write(() => Encoding.UTF8.GetBytes(text()), save);

    /// <summary>Writes bytes to standard output as they are, or a file by an action that writes beside and renames.</summary>
    public void Write(Func<byte[]> content, Action<string> save)
    {
        if (Path is not null)
        {
            save(Path);
            return;
        }
        using var stream = Console.OpenStandardOutput();
        stream.Write(content());
    }

    private static string Listed(IReadOnlyList<(string Ending, string Format)> endings) =>
        string.Join(", ", endings.Take(endings.Count - 1).Select(e => e.Ending)) + " and " + endings[^1].Ending;
}
