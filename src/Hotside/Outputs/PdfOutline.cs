using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Hotside.Circuits;

namespace Hotside.Outputs;

/// <summary>
/// Adds a list of bookmarks to a finished PDF file as an update behind its end (ISO 32000-1, 7.5.6): the file stays as it was, its catalog is written anew with an outline
/// (12.3.3) whose items lead to the named destinations that the pages already have.
/// </summary>
internal static partial class PdfOutline
{
    /// <summary>The name of the destination of a bookmark.</summary>
    public static string NameOf(int bookmark) => "b" + Numbers.Whole(bookmark + 1);

    /// <summary>The file with bookmarks; itself without any.</summary>
    public static byte[] Add(byte[] file, IReadOnlyList<PdfBookmark> bookmarks)
    {
        if (bookmarks.Count == 0) return file;
        // One character a byte, so that places in the text are places in the file.
        string text = Encoding.Latin1.GetString(file);
        var trailer = Trailer().Matches(text)[^1];
        int size = Number(trailer, "size"), root = Number(trailer, "root"), info = Number(trailer, "info");
        int tableAt = Number(TableAt().Matches(text)[^1], "at");
        string catalog = ObjectAt(text, root);

        StringBuilder update = new();
        SortedDictionary<int, int> places = [];
        void Write(int number, string content)
        {
            places[number] = file.Length + update.Length;
            update.Append(Numbers.Whole(number)).Append(" 0 obj\n").Append(content).Append("\nendobj\n");
        }

        if (file[^1] != (byte)'\n') update.Append('\n');
        Write(root, catalog[..catalog.LastIndexOf(">>", StringComparison.Ordinal)] + $"\n/Outlines {Numbers.Whole(size)} 0 R\n/PageMode /UseOutlines>>");
        Write(size, $"<</Type /Outlines /First {Numbers.Whole(size + 1)} 0 R /Last {Numbers.Whole(size + bookmarks.Count)} 0 R /Count {Numbers.Whole(bookmarks.Count)}>>");
        for (int i = 0; i < bookmarks.Count; i++) Write(size + 1 + i, Item(bookmarks, i, size));
        int updateAt = file.Length + update.Length;
        update.Append("xref\n");
        foreach (var (number, place) in places)
            update.Append(Numbers.Whole(number)).Append(" 1\n").Append(place.ToString("D10", CultureInfo.InvariantCulture)).Append(" 00000 n \n");
        string trailerNow = $"trailer\n<</Size {Numbers.Whole(size + 1 + bookmarks.Count)}\n/Root {Numbers.Whole(root)} 0 R\n/Info {Numbers.Whole(info)} 0 R\n/Prev {Numbers.Whole(tableAt)}>>\nstartxref\n{Numbers.Whole(updateAt)}\n%%EOF\n";
        update.Append(trailerNow);
        return [.. file, .. Encoding.Latin1.GetBytes(update.ToString())];
    }

    private static string Item(IReadOnlyList<PdfBookmark> bookmarks, int i, int outline)
    {
        string before = i > 0 ? $" /Prev {Numbers.Whole(outline + i)} 0 R" : "", next = i < bookmarks.Count - 1 ? $" /Next {Numbers.Whole(outline + i + 2)} 0 R" : "";
        return $"<</Title <FEFF{Convert.ToHexString(Encoding.BigEndianUnicode.GetBytes(bookmarks[i].Title))}> /Parent {Numbers.Whole(outline)} 0 R{before}{next} /Dest /{NameOf(i)}>>";
    }

    private static string ObjectAt(string text, int number)
    {
        string head = $"\n{Numbers.Whole(number)} 0 obj\n";
        int from = text.LastIndexOf(head, StringComparison.Ordinal) + head.Length;
        return text[from..text.IndexOf("\nendobj", from, StringComparison.Ordinal)];
    }

    private static int Number(Match match, string group) => int.Parse(match.Groups[group].ValueSpan, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"trailer\n<</Size (?<size>\d+)\n/Root (?<root>\d+) 0 R\n/Info (?<info>\d+) 0 R")]
    private static partial Regex Trailer();

    [GeneratedRegex(@"startxref\n(?<at>\d+)\n")]
    private static partial Regex TableAt();
}
