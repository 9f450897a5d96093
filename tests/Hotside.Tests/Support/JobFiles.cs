using Hotside.Kinds;
using Hotside.Reading;

namespace Hotside.Tests.Support;

/// <summary>The job files of the tests, by their path below the folder.</summary>
internal static class JobFiles
{
    private static readonly string Folder = Repository.Path("tests", "Hotside.Tests", "Reading", "jobs");

    public static IEnumerable<string> All => Directory.EnumerateFiles(Folder, "*.yaml", SearchOption.AllDirectories)
        .Select(f => Path.GetRelativePath(Folder, f).Replace('\\', '/')).Order(StringComparer.Ordinal);

    public static string Text(string file) => File.ReadAllText(Path.Combine(Folder, file));

    public static JobReading Read(string file) => JobReader.Read(file, Text(file), Catalogue.Standard, _ => null);
}
