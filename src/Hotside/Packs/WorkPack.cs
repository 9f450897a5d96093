using System.Collections.Immutable;
using System.Text;
using Hotside.Outputs;
using Hotside.Packs;
using Hotside.Packs.Lists;
using Hotside.Packs.Pieces;

namespace Hotside;

/// <summary>
/// Everything that is printed for a job: cautions, schematics, decisions, changes, loads, materials, wires, labels, fuse chart, the owner's page and what is signed; as one PDF
/// with bookmarks, and as its pieces. Immutable; the same job gives the same bytes.
/// </summary>
/// <remarks>It is an aid: the workshop manual, local codes and licensed practice take precedence.</remarks>
public sealed class WorkPack
{
    /// <summary>The name of the PDF file.</summary>
    public const string PdfName = "work-pack.pdf";

    private readonly PackSource source;

    internal WorkPack(PackSource source, ImmutableArray<PackSheet> sheets, ImmutableArray<PackPage> pages) => (this.source, Sheets, Pages) = (source, sheets, pages);

    /// <summary>The names of all pages that a pack may have, in order: <c>cover</c>, <c>cautions</c>, <c>schematics</c> and so on.</summary>
    public static ImmutableArray<string> AllPages => PageList.Keys;

    /// <summary>The sheets of paper, in order.</summary>
    public ImmutableArray<PackSheet> Sheets { get; }

    /// <summary>The pages in the sense of its list, in order; one of which there is nothing to say is not among them.</summary>
    public ImmutableArray<PackPage> Pages { get; }

    /// <summary>What is cut new, in the order of cutting.</summary>
    public ImmutableArray<CutLine> Cuts => CutLine.All(source.Wires);

    /// <summary>What is bought, sort by sort.</summary>
    public ImmutableArray<MaterialLine> Materials => source.IsAltered ? MaterialList.Of(source.Alteration, source.Wires, source.Words) : [];

    /// <summary>The pack as one PDF file with bookmarks and with text that can be searched and copied.</summary>
    public byte[] ToPdf()
    {
        var bookmarks = Sheets.SelectMany((s, i) => s.Begins.Select(b => new PdfBookmark(TitleOf(b.Key), i, b.Top)));
        return PdfOutput.Write([.. Sheets.Select(s => s.Drawing)], $"{source.Job.Title}: work pack", [.. bookmarks]);
    }

    /// <summary>Its lists as JSON of the contract <c>hotside-pack/1</c>.</summary>
    public string ToJson() => PackJson.Write(source, Sheets, Pages);

    /// <summary>Writes the PDF to a file: beside it first, then renamed, so that a failed run leaves what was there.</summary>
    /// <param name="path">The file; its folder exists.</param>
    /// <exception cref="ArgumentException"><paramref name="path"/> is empty.</exception>
    /// <exception cref="IOException">The file cannot be written, its folder does not exist, or the path is a folder.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be written.</exception>
    public void SavePdf(string path)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        SafeFile.Write(path, ToPdf());
    }

    /// <summary>
    /// Writes the pieces into a folder, which is made if it is not there: each sheet as .svg, wires, cut list, materials, changes, labels and fuses as .csv, and
    /// <c>work-pack.json</c>. Files of the same names are replaced, others stay.
    /// </summary>
    /// <param name="folder">The folder.</param>
    /// <exception cref="ArgumentException"><paramref name="folder"/> is empty.</exception>
    /// <exception cref="IOException">A file cannot be written, or the path is a file.</exception>
    /// <exception cref="UnauthorizedAccessException">A file may not be written.</exception>
    public void SavePieces(string folder)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(folder);
        Directory.CreateDirectory(folder);
        foreach (var sheet in Sheets) sheet.Drawing.SaveSvg(Path.Combine(folder, sheet.Name + ".svg"));
        foreach (var (name, text) in PackTables.Of(source)) SafeFile.Write(Path.Combine(folder, name), Encoding.UTF8.GetBytes(text));
        SafeFile.Write(Path.Combine(folder, "work-pack.json"), Encoding.UTF8.GetBytes(ToJson()));
    }

    private string TitleOf(string key) => key == Packs.Pages.CoverPage.Key ? "Cover" : Pages.First(p => p.Key == key).Title;
}
