using System.Collections.Immutable;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Packs.Papers;

/// <summary>A piece with its place on a page, in units from the top left corner of what may be written on.</summary>
internal sealed record Placed(string Section, Piece Piece, double Y);

/// <summary>A page that was filled: pieces, or a picture.</summary>
internal sealed record FilledPage(ImmutableArray<Placed> Pieces)
{
    /// <summary>Whether it lies.</summary>
    public bool IsLying { get; init; }

    /// <summary>The picture that is the page; <see langword="null"/> where it is written.</summary>
    public Drawing? Picture { get; init; }

    /// <summary>Which sections begin on it, and how far down in units.</summary>
    public ImmutableArray<(Section Section, double Y)> Begins { get; init; } = [];
}

/// <summary>
/// Fills pages with sections. Rows are never split, heads come again, a heading stays with what it heads, and a section begins on the sheet of the one before where all of it,
/// or a fair piece of it, finds room there.
/// </summary>
internal sealed class PageFlow
{
    // Between two sections on one page.
    private const double Gap = 22;

    // A section that goes on to the next page begins where so much of a page is left.
    private const double FairShare = 0.25;

    // What is left over is to be worth a page.
    private const double FairRest = 0.15;

    private const double WholeShare = 0.2;

    private readonly Func<bool, (double Width, double Height)> room;
    private readonly PackLettering lettering;
    private readonly List<FilledPage> pages = [];
    private readonly List<Placed> pieces = [];
    private readonly List<(Section, double)> begins = [];
    private Section current = new("", "", []);
    private double y, width, height;

    private PageFlow(Func<bool, (double, double)> room, PackLettering lettering)
    {
        (this.room, this.lettering) = (room, lettering);
        (width, height) = room(false);
    }

    /// <summary>The pages of some sections.</summary>
    /// <param name="sections">The sections, in order.</param>
    /// <param name="room">Width and height of what is written on a standing and on a lying page.</param>
    /// <param name="lettering">The letters of titles.</param>
    public static ImmutableArray<FilledPage> Of(IEnumerable<Section> sections, Func<bool, (double Width, double Height)> room, PackLettering lettering)
    {
        PageFlow flow = new(room, lettering);
        Section[] all = [.. sections];
        for (int i = 0; i < all.Length; i++)
        {
            if (all[i].Drawings.IsEmpty) flow.Write(all[i], i > 0 ? all[i - 1] : null, i + 1 < all.Length ? all[i + 1] : null);
            else flow.Show(all[i]);
        }
        flow.EndPage();
        return [.. flow.pages];
    }

    private void Show(Section section)
    {
        EndPage();
        for (int i = 0; i < section.Drawings.Length; i++)
            pages.Add(new([]) { Picture = section.Drawings[i], Begins = i == 0 ? [(section, 0)] : [] });
    }

    private void Write(Section section, Section? last, Section? next)
    {
        if (section.IsLying != current.IsLying) EndPage();
        (width, height) = room(section.IsLying);
        var title = Title(section);
        double left = height - y - Gap, all = title.Height + section.Parts.Sum(p => p.Height), least = title.Height + (section.Parts.IsEmpty ? 0 : Least(section, 0));
        bool follows = y > 0 && !section.IsApart && last?.IsApart != true && (all <= left || (!section.IsWhole && left > FairShare * height && least <= left && (all - left > FairRest * height || IsShared(section, next))));
        if (!follows) EndPage();
        current = section;
        if (y > 0) y += Gap;
        begins.Add((section, y));
        Put(title);
        for (int i = 0; i < section.Parts.Length; i++)
        {
            if ((y + Least(section, i) > height || LeavesNote(section, i)) && y > title.Height + 0.001) Turn();
            Flow(section.Parts[i]);
        }
    }

    // A rest that is hardly worth a page is one together with what follows.
    private static bool IsShared(Section section, Section? next) => next is { IsApart: false, IsWhole: false, Drawings.IsEmpty: true } && !section.IsApart && next.IsLying == section.IsLying;

    // A few lines that close a section do not begin a page by themselves: what they belong to goes with them.
    private bool LeavesNote(Section section, int part)
    {
        if (part + 2 != section.Parts.Length || section.Parts[part + 1].BeginsPage) return false;
        double own = section.Parts[part].Height, both = own + section.Parts[part + 1].Height - section.Parts[part + 1].After;
        return both <= WholeShare * height && y + own <= height && y + both > height + 0.001;
    }

    private void Flow(FlowPart part)
    {
        if (part.BeginsPage && y > 0) Turn();
        bool isHeaded = false;
        for (int i = 0; i < part.Rows.Length; i++)
        {
            var row = part.Rows[i];
            // The last row does not stand on a page alone: the one before goes with it.
            double last = i > 1 && i + 2 == part.Rows.Length ? part.Rows[i + 1].Height : 0;
            double needed = row.Height + last + (isHeaded ? 0 : part.Head.Height);
            if (y + needed > height + 0.001 && isHeaded)
            {
                Turn();
                isHeaded = false;
            }
            if (!isHeaded && part.Head.Height > 0) Put(part.Head);
            isHeaded = true;
            Put(row);
        }
        y += part.After;
    }

    // A short table is not split.
    private double LeastOf(FlowPart part) => part.Height - part.After <= WholeShare * height ? part.Height - part.After : part.LeastHeight;

    // A heading needs room for the least of what it heads.
    private double Least(Section section, int part) =>
        section.Parts[part] is { KeepsNext: true } heading && part + 1 < section.Parts.Length ? heading.Height + Least(section, part + 1) : LeastOf(section.Parts[part]);

    private void Put(Piece piece)
    {
        pieces.Add(new(current.Key, piece, y));
        y += piece.Height;
    }

    // A new page in the midst of a section.
    private void Turn()
    {
        EndPage();
        Put(new(width, lettering.TextBold.Pitch + 8, [TextShape.Of(current.Title + ", continued", lettering.TextBold, 0, Ascent(lettering.TextBold), width: width)]));
    }

    private void EndPage()
    {
        if (pieces.Count > 0) pages.Add(new([.. pieces]) { Begins = [.. begins], IsLying = current.IsLying });
        pieces.Clear();
        begins.Clear();
        y = 0;
    }

    // Letters such as Ä stand higher than a capital.
    private static double Ascent(TextStyle style) => style.CapHeight * 1.3;

    private Piece Title(Section section)
    {
        TextStyle style = lettering.Title, beside = lettering.Cell;
        var lines = TextLines.Break(section.Title, style, width, 5);
        double top = Ascent(style), baseline = top + ((lines.Length - 1) * style.Pitch), end = TextMeasure.Width(lines[^1], style) + 16;
        List<Shape> shapes = [.. lines.Select((l, i) => TextShape.Of(l, style, 0, top + (i * style.Pitch)))];
        double below = baseline;
        if (section.Note.Length > 0)
        {
            bool fits = TextMeasure.Width(section.Note, beside) <= width - end;
            string[] notes = fits ? [section.Note] : [.. TextLines.Break(section.Note, beside, width, 3)];
            double first = fits ? baseline : baseline + beside.Pitch + 4;
            shapes.AddRange(notes.Select((n, i) => TextShape.Of(n, beside, fits ? width : 0, first + (i * beside.Pitch), fits ? Anchor.End : Anchor.Start)));
            below = first + ((notes.Length - 1) * beside.Pitch);
        }
        double rule = below + style.Descent + 4;
        shapes.Add(Shape.Line(new(StrokeRank.Rail, ColourRole.Ink), 0, rule, width, rule));
        return new(width, rule + 12, [.. shapes]);
    }
}
