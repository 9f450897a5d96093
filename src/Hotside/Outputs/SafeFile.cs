namespace Hotside.Outputs;

/// <summary>Writes a file beside its place and renames it, so that a failed run leaves what was there.</summary>
internal static class SafeFile
{
    public static void Write(string path, byte[] content)
    {
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
