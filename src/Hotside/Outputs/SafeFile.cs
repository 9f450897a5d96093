using System.Text;

namespace Hotside.Outputs;

/// <summary>Writes a file beside its place and renames it, so that a failed run leaves what was there.</summary>
internal static class SafeFile
{
    public static void Write(string path, Func<string> text)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        Write(path, Encoding.UTF8.GetBytes(text()));
    }

    public static void Write(string path, byte[] content)
    {
        // Said here, for the system would speak of the file beside.
        if (Directory.Exists(path)) throw new IOException($"\"{path}\" is a folder; name a file in it.");
        if (Path.GetDirectoryName(path) is { Length: > 0 } folder && !Directory.Exists(folder))
            throw new DirectoryNotFoundException($"There is no folder \"{folder}\" to write \"{path}\" into.");
        string beside = path + ".new";
        try
        {
            File.WriteAllBytes(beside, content);
            File.Move(beside, path, overwrite: true);
        }
        catch
        {
            if (File.Exists(beside)) File.Delete(beside);
            throw;
        }
    }
}
