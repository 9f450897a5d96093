using Hotside.Outputs;

namespace Hotside;

/// <summary>Writes a drawing as PNG, opaque, in its own font whatever fonts the machine has; the file says its resolution and title.</summary>
public static class DrawingPng
{
    /// <summary>The drawing as a PNG file: the same bytes every time on one machine.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="resolution">Dots per inch of paper, 10 to 4800; at most 2²⁸ pixels in all.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="resolution"/> is outside its range, or too high for so large a sheet.</exception>
    public static byte[] ToPng(this Drawing drawing, double resolution = 300)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        return PngOutput.Write(drawing, resolution);
    }

    /// <summary>Writes the drawing to a file: beside it first, then renamed, so that a failed run leaves what was there.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="path">The file; its folder exists.</param>
    /// <param name="resolution">Dots per inch of paper, as for <see cref="ToPng"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="resolution"/> is outside its range, or too high for so large a sheet.</exception>
    /// <exception cref="ArgumentException"><paramref name="path"/> is empty.</exception>
    /// <exception cref="IOException">The file cannot be written, its folder does not exist, or the path is a folder.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be written.</exception>
    public static void SavePng(this Drawing drawing, string path, double resolution = 300)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        SafeFile.Write(path, drawing.ToPng(resolution));
    }

    /// <summary>Writes the drawing to a stream; the stream stays open.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="stream">The stream.</param>
    /// <param name="resolution">Dots per inch of paper, as for <see cref="ToPng"/>.</param>
    /// <param name="cancel">Stops the writing.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="resolution"/> is outside its range, or too high for so large a sheet.</exception>
    /// <exception cref="ArgumentException"><paramref name="stream"/> cannot be written to.</exception>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was called for.</exception>
    public static async Task WritePngAsync(this Drawing drawing, Stream stream, double resolution = 300, CancellationToken cancel = default)
    {
        OpenStream.Check(stream);
        cancel.ThrowIfCancellationRequested();
        await stream.WriteAsync(drawing.ToPng(resolution), cancel).ConfigureAwait(false);
    }
}
