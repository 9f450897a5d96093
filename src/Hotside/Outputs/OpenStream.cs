namespace Hotside.Outputs;

/// <summary>Writes to a stream of the caller's, which stays open.</summary>
internal static class OpenStream
{
    /// <summary>Refuses a stream before the work of drawing is done for it.</summary>
    public static void Check(Stream stream)
    {
        ArgumentNullException.ThrowIfNull(stream);
        if (!stream.CanWrite) throw new ArgumentException("The stream cannot be written to; it is closed, or open for reading only.", nameof(stream));
    }
}
