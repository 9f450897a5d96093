using Hotside.Circuits;

namespace Hotside;

/// <summary>Reads the text of a job file, or says in what way the path is wrong and which file was probably meant.</summary>
internal static class JobFile
{
    public static string Text(string path)
    {
        if (File.Exists(path)) return File.ReadAllText(path);
        if (Directory.Exists(path)) throw new IOException($"\"{path}\" is a folder; name the job file in it{First(path)}");
        string folder = Path.GetDirectoryName(path) is { Length: > 0 } named ? named : ".";
        if (!Directory.Exists(folder)) throw new DirectoryNotFoundException($"There is no folder \"{folder}\", and so no file \"{path}\" in it.");
        throw new FileNotFoundException($"There is no file \"{path}\"{NearestName.Suggestion(Path.GetFileName(path), Names(folder, "*"))}", path);
    }

    private static string First(string folder) => Names(folder, "*.yaml").FirstOrDefault() is { } name ? $", such as \"{Path.Combine(folder, name)}\"." : ".";

    private static IEnumerable<string> Names(string folder, string pattern) =>
        Directory.EnumerateFiles(folder, pattern, new EnumerationOptions()).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal);
}
