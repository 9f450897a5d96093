namespace Hotside.Tests.Outputs;

/// <summary>What is told to somebody who names a place that cannot be written to; all outputs say the same.</summary>
public sealed class FirstOutputMistakesTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("hotside").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private static readonly WireList Wires = WireList.Of(GalleryJobs.Read("horn"));

    private static readonly Action<string>[] Saves =
    [
        GalleryJobs.HornPair.SaveSvg, p => GalleryJobs.HornPair.SavePng(p, 10), GalleryJobs.HornPair.SavePdf, new[] { GalleryJobs.HornPair }.SavePdf,
        Wires.SaveText, Wires.SaveCsv,
    ];

    private static readonly Func<Stream, CancellationToken, Task>[] Writes =
    [
        GalleryJobs.HornPair.WriteSvgAsync, (s, c) => GalleryJobs.HornPair.WritePngAsync(s, 10, c), GalleryJobs.HornPair.WritePdfAsync, new[] { GalleryJobs.HornPair }.WritePdfAsync,
    ];

    [Fact]
    public void A_folder_is_no_file_and_nothing_is_left_in_it()
    {
        foreach (var save in Saves)
            foreach (string path in new[] { folder, folder + Path.DirectorySeparatorChar })
                Assert.Equal($"\"{path}\" is a folder; name a file in it.", Assert.Throws<IOException>(() => save(path)).Message);
        Assert.Empty(Directory.EnumerateFileSystemEntries(folder));
    }

    [Fact]
    public void A_folder_that_is_not_there_is_named_as_the_caller_wrote_it()
    {
        string missing = Path.Combine(folder, "prints"), path = Path.Combine(missing, "horn.svg");
        foreach (var save in Saves)
            Assert.Equal($"There is no folder \"{missing}\" to write \"{path}\" into.", Assert.Throws<DirectoryNotFoundException>(() => save(path)).Message);
    }

    [Fact]
    public void An_empty_path_is_refused()
    {
        foreach (var save in Saves) Assert.Equal("path", Assert.Throws<ArgumentException>(() => save(" ")).ParamName);
    }

    [Fact]
    public async Task A_stream_for_reading_is_refused()
    {
        foreach (var write in Writes)
            Assert.Equal("stream", (await Assert.ThrowsAsync<ArgumentException>(() => write(new MemoryStream([], writable: false), CancellationToken.None))).ParamName);
    }

    [Fact]
    public async Task Nothing_is_written_that_was_called_off()
    {
        foreach (var write in Writes)
        {
            using var stream = new MemoryStream();
            await Assert.ThrowsAnyAsync<OperationCanceledException>(() => write(stream, new CancellationToken(canceled: true)));
            Assert.Equal(0, stream.Length);
        }
    }

    [Fact]
    public async Task A_stream_stays_open()
    {
        foreach (var write in Writes)
        {
            using var stream = new MemoryStream();
            await write(stream, CancellationToken.None);
            Assert.True(stream is { CanWrite: true, Length: > 1000 });
        }
    }
}
