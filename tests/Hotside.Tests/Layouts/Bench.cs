using System.Collections.Concurrent;
using Hotside.Layouts;
using Hotside.Tests.Support;

namespace Hotside.Tests.Layouts;

/// <summary>The cases of the bench, each laid out once for all tests.</summary>
internal static class Bench
{
    private static readonly string Folder = Repository.Path("tests", "Hotside.Tests", "Layouts", "bench");
    private static readonly ConcurrentDictionary<string, Lazy<(BenchCase, Layout)>> Done = new(StringComparer.Ordinal);

    public static IEnumerable<string> Names => Directory.EnumerateFiles(Folder, "*.json").Select(f => Path.GetFileNameWithoutExtension(f)!).Order(StringComparer.Ordinal);

    public static BenchCase Read(string name) => BenchCase.Read(Path.Combine(Folder, name + ".json"));

    public static (BenchCase Case, Layout Layout) LaidOut(string name) => Done.GetOrAdd(name, n => new(() =>
    {
        var bench = Read(n);
        return (bench, Layout.Of(bench.Input, new()));
    })).Value;
}
