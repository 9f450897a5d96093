using System.IO.Compression;
using System.Text;
using System.Text.RegularExpressions;
using Hotside.Tests.Support;

namespace Hotside.Tests.Outputs;

/// <summary>Both packages are made, looked into, and used from a folder as a stranger would use them.</summary>
public sealed partial class PackageTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("hotside");

    [Fact]
    public void The_packages_hold_what_they_should_and_work_from_a_feed()
    {
        // Output of its own: the tests run from the ordinary one.
        foreach (string project in new[] { "Hotside", "Hotside.Tool" })
            Dotnet(Repository.Path("src", project), "pack", "-o", Path("feed"), "--artifacts-path", Path("artifacts"), "-v", "q", "--nologo");
        HoldsWhatItShould();
        TheToolDraws();
        AProgramDraws();
    }

    public void Dispose() => folder.Delete(recursive: true);

    private void HoldsWhatItShould()
    {
        using var library = ZipFile.OpenRead(Package("Hotside."));
        string[] names = [.. library.Entries.Select(e => e.FullName)];
        Assert.Superset(new HashSet<string>(["lib/net10.0/Hotside.dll", "lib/net10.0/Hotside.xml", "README.md", "LICENSE", "OFL.txt"]), names.ToHashSet());
        string facts = Text(library, "Hotside.nuspec");
        Assert.Contains("<license type=\"expression\">MIT</license>", facts, StringComparison.Ordinal);
        // No path of the machine that built it.
        Assert.DoesNotContain(Repository.Path("src"), Encoding.Latin1.GetString(Bytes(library, "lib/net10.0/Hotside.dll")), StringComparison.Ordinal);
        using var tool = ZipFile.OpenRead(Package("Hotside.Tool."));
        string[] natives = [.. tool.Entries.Select(e => e.FullName).Where(n => n.Contains("libSkiaSharp", StringComparison.Ordinal)).Select(n => n.Split('/')[^3])];
        Assert.Equal(["linux-arm64", "linux-musl-arm64", "linux-musl-x64", "linux-x64", "osx", "win-arm64", "win-x64"], natives.Order(StringComparer.Ordinal));
    }

    private void TheToolDraws()
    {
        Dotnet(folder.FullName, "tool", "install", "Hotside.Tool", "--tool-path", Path("tool"), "--source", Path("feed"));
        Run(Path("tool/hotside"), folder.FullName, "draw", Repository.Path("gallery", "horn", "job.yaml"), "-o", Path("horn.svg"));
        Assert.Equal(File.ReadAllText(Repository.Path("gallery", "horn", "pair.svg")), File.ReadAllText(Path("horn.svg")));
        Run(Path("tool/hotside"), folder.FullName, "draw", Repository.Path("gallery", "horn", "job.yaml"), "-o", Path("horn.png"), "--resolution", "72");
        Assert.True(new FileInfo(Path("horn.png")).Length > 10_000);
    }

    // The program is the one that the package's own page shows.
    private void AProgramDraws()
    {
        Directory.CreateDirectory(Path("program"));
        File.WriteAllText(Path("program/Program.cs"), Program().Matches(File.ReadAllText(Repository.Path("src", "Hotside", "PACKAGE.md")))[1].Groups[1].Value);
        File.WriteAllText(Path("program/program.csproj"), $"""
            <Project Sdk="Microsoft.NET.Sdk">
              <PropertyGroup>
                <OutputType>Exe</OutputType><TargetFramework>net10.0</TargetFramework><ImplicitUsings>enable</ImplicitUsings><Nullable>enable</Nullable>
                <UseCurrentRuntimeIdentifier>true</UseCurrentRuntimeIdentifier><RestoreAdditionalProjectSources>{Path("feed")}</RestoreAdditionalProjectSources>
              </PropertyGroup>
              <ItemGroup><PackageReference Include="Hotside" Version="0.1.0" /></ItemGroup>
            </Project>
            """);
        Assert.EndsWith("H1: hot-switched by K1; on when S1 pressed\nK1: ground-switched by S1; on when S1 pressed\n", Dotnet(Path("program"), "run"), StringComparison.Ordinal);
        Assert.Contains("data-ref=\"K1\"", File.ReadAllText(Path("program/pair.svg")), StringComparison.Ordinal);
    }

    private string Path(string name) => System.IO.Path.Combine(folder.FullName, name);

    private string Package(string start) => Directory.GetFiles(Path("feed"), "*.nupkg").Single(f => System.IO.Path.GetFileName(f) is var name && name.StartsWith(start, StringComparison.Ordinal) && char.IsAsciiDigit(name[start.Length]));

    private static string Text(ZipArchive archive, string entry) => Encoding.UTF8.GetString(Bytes(archive, entry));

    private static byte[] Bytes(ZipArchive archive, string entry)
    {
        using var stream = archive.GetEntry(entry)!.Open();
        using var memory = new MemoryStream();
        stream.CopyTo(memory);
        return memory.ToArray();
    }

    private string Dotnet(string place, params string[] arguments) => Run("dotnet", place, arguments);

    // The package of this run, not one that an earlier run left behind; what it needs is taken from where it is.
    private string Run(string program, string place, params string[] arguments)
    {
        string known = Environment.GetEnvironmentVariable("NUGET_PACKAGES") ?? System.IO.Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), ".nuget", "packages");
        (string, string)[] packages = place.StartsWith(folder.FullName, StringComparison.Ordinal) ? [("NUGET_PACKAGES", Path("packages")), ("NUGET_FALLBACK_PACKAGES", known)] : [];
        return OutsideProgram.Finish(OutsideProgram.Start(place, program, arguments, packages));
    }

    [GeneratedRegex("```csharp\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex Program();
}
