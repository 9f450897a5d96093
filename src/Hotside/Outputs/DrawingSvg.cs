using System.Text;
using Hotside.Outputs;

namespace Hotside;

/// <summary>Writes a drawing as SVG: one file with its font, without script and without anything from outside.</summary>
public static class DrawingSvg
{
    /// <summary>The drawing as SVG text.</summary>
    /// <param name="drawing">The drawing.</param>
    public static string ToSvg(this Drawing drawing)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        return SvgOutput.Write(drawing.Scene, new() { Theme = drawing.Theme });
    }

    /// <summary>Writes the drawing to a file: beside it first, then renamed, so that a failed run leaves what was there.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="path">The file; its folder exists.</param>
    /// <exception cref="ArgumentException"><paramref name="path"/> is empty.</exception>
    /// <exception cref="IOException">The file cannot be written, its folder does not exist, or the path is a folder.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be written.</exception>
    public static void SaveSvg(this Drawing drawing, string path)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        SafeFile.Write(path, Encoding.UTF8.GetBytes(drawing.ToSvg()));
    }

    /// <summary>Writes the drawing to a stream as UTF-8; the stream stays open.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="stream">The stream.</param>
    /// <param name="cancel">Stops the writing.</param>
    /// <exception cref="ArgumentException"><paramref name="stream"/> cannot be written to.</exception>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was called for.</exception>
    public static async Task WriteSvgAsync(this Drawing drawing, Stream stream, CancellationToken cancel = default)
    {
        OpenStream.Check(stream);
        cancel.ThrowIfCancellationRequested();
        await stream.WriteAsync(Encoding.UTF8.GetBytes(drawing.ToSvg()), cancel).ConfigureAwait(false);
    }
}
