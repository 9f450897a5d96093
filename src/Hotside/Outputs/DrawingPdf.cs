using Hotside.Outputs;

namespace Hotside;

/// <summary>Writes drawings as PDF at full size, one a page: sharp at any size, with text that can be searched and copied.</summary>
public static class DrawingPdf
{
    /// <summary>The drawing as a PDF file of one page: the same bytes every time, for it holds no date.</summary>
    /// <param name="drawing">The drawing.</param>
    public static byte[] ToPdf(this Drawing drawing)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        return PdfOutput.Write([drawing]);
    }

    /// <summary>Several drawings as one PDF file, a page each in their order; the first gives the file its title.</summary>
    /// <param name="drawings">The drawings, at least one; their sheets may differ in size.</param>
    /// <exception cref="ArgumentException"><paramref name="drawings"/> is empty or holds a null.</exception>
    public static byte[] ToPdf(this IEnumerable<Drawing> drawings)
    {
        ArgumentNullException.ThrowIfNull(drawings);
        return PdfOutput.Write([.. drawings]);
    }

    /// <summary>Writes the drawing to a file: beside it first, then renamed, so that a failed run leaves what was there.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="path">The file; its folder exists.</param>
    /// <exception cref="ArgumentException"><paramref name="path"/> is empty.</exception>
    /// <exception cref="IOException">The file cannot be written, its folder does not exist, or the path is a folder.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be written.</exception>
    public static void SavePdf(this Drawing drawing, string path)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        SafeFile.Write(path, drawing.ToPdf());
    }

    /// <summary>Writes several drawings to one file, a page each: beside it first, then renamed, so that a failed run leaves what was there.</summary>
    /// <param name="drawings">The drawings, at least one.</param>
    /// <param name="path">The file; its folder exists.</param>
    /// <exception cref="ArgumentException"><paramref name="drawings"/> is empty or holds a null, or <paramref name="path"/> is empty.</exception>
    /// <exception cref="IOException">The file cannot be written, its folder does not exist, or the path is a folder.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be written.</exception>
    public static void SavePdf(this IEnumerable<Drawing> drawings, string path)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        SafeFile.Write(path, drawings.ToPdf());
    }

    /// <summary>Writes the drawing to a stream; the stream stays open.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="stream">The stream.</param>
    /// <param name="cancel">Stops the writing.</param>
    /// <exception cref="ArgumentException"><paramref name="stream"/> cannot be written to.</exception>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was called for.</exception>
    public static async Task WritePdfAsync(this Drawing drawing, Stream stream, CancellationToken cancel = default)
    {
        OpenStream.Check(stream);
        cancel.ThrowIfCancellationRequested();
        await stream.WriteAsync(drawing.ToPdf(), cancel).ConfigureAwait(false);
    }

    /// <summary>Writes several drawings to a stream, a page each; the stream stays open.</summary>
    /// <param name="drawings">The drawings, at least one.</param>
    /// <param name="stream">The stream.</param>
    /// <param name="cancel">Stops the writing.</param>
    /// <exception cref="ArgumentException"><paramref name="drawings"/> is empty or holds a null, or <paramref name="stream"/> cannot be written to.</exception>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was called for.</exception>
    public static async Task WritePdfAsync(this IEnumerable<Drawing> drawings, Stream stream, CancellationToken cancel = default)
    {
        OpenStream.Check(stream);
        cancel.ThrowIfCancellationRequested();
        await stream.WriteAsync(drawings.ToPdf(), cancel).ConfigureAwait(false);
    }
}
