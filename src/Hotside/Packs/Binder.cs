using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Drawings;
using Hotside.Orders;
using Hotside.Packs.Lists;
using Hotside.Packs.Pages;
using Hotside.Packs.Papers;

namespace Hotside.Packs;

/// <summary>Makes the pages of a pack, lets them flow over sheets, numbers the sheets and puts a foot on each.</summary>
internal sealed class Binder
{
    // Between what is written and the foot.
    private const double AboveFoot = 8;

    private readonly PackSource source;
    private readonly CancellationToken cancel;
    private readonly PageFoot foot;

    private Binder(PackSource source, CancellationToken cancel) => (this.source, this.cancel, foot) = (source, cancel, Foot(source));

    /// <summary>The pack of a job.</summary>
    public static WorkPack Bind(Job job, PackOptions options, CancellationToken cancel)
    {
        PackSource source = new(job, options);
        var (sheets, pages) = new Binder(source, cancel).Bound();
        return new(source, sheets, pages);
    }

    private (ImmutableArray<PackSheet>, ImmutableArray<PackPage>) Bound()
    {
        List<Section> written = Written();
        bool hasCover = source.Options.Asks(CoverPage.Key), hasSchematics = source.Options.Asks(SchematicPage.Key);
        int cautions = written.Count > 0 && written[0].Key == CautionPage.Key ? 1 : 0;
        // The cover lists what is in the pack, so its height is known before the numbers of the sheets are.
        IEnumerable<ListedPage> Listed(IReadOnlyList<PackPage>? pages) => pages?.Where(p => p.Key != CoverPage.Key).Select(p => new ListedPage(p.Title, Range(p))) ?? [.. written.Select(s => new ListedPage(s.Title, "")), .. hasSchematics ? [new ListedPage("Schematics", "")] : Array.Empty<ListedPage>()];
        IEnumerable<Section> All(IReadOnlyList<PackPage>? pages) => [.. hasCover ? [CoverPage.Of(source, Listed(pages))] : Array.Empty<Section>(), .. written];

        if (hasSchematics)
        {
            int before = Flow(All(null).Take((hasCover ? 1 : 0) + cautions)).Length;
            var schematics = SchematicPage.Of(source, before + 1, cancel);
            source.Zones = new SheetZones(schematics.Drawings, before + 1);
            written = Written();
            written.Insert(cautions, schematics);
            hasSchematics = false;
        }
        cancel.ThrowIfCancellationRequested();
        var numbered = PagesOf(Flow(All(null)));
        var filled = Flow(All(numbered));
        var listed = PagesOf(filled);
        return (Sheets(filled), listed);
    }

    private List<Section> Written() => [.. PageList.Written.Where(p => source.Options.Asks(p.Key)).Select(p => p.Make(source)).OfType<Section>()];

    private static string Range(PackPage page) => page.FirstSheet == page.LastSheet ? Numbers.Whole(page.FirstSheet) : $"{Numbers.Whole(page.FirstSheet)} to {Numbers.Whole(page.LastSheet)}";

    private ImmutableArray<FilledPage> Flow(IEnumerable<Section> sections) =>
        PageFlow.Of(sections, Room, source.Lettering);

    // The foot of a standing page is as high as that of a lying one or higher.
    private (double, double) Room(bool isLying) => (Paper(isLying).Inside.Width, Paper(isLying).Inside.Height - foot.HeightOf(source.Width, source.Lettering) - AboveFoot);

    private PackPaper Paper(bool isLying) => isLying ? source.Options.Paper.Lying : source.Options.Paper;

    private static ImmutableArray<PackPage> PagesOf(ImmutableArray<FilledPage> filled)
    {
        var begins = filled.SelectMany((p, i) => p.Begins.Select(b => (b.Section, Sheet: i + 1))).ToArray();
        int LastOf(Section section, int first) => section.Drawings.Length > 0 ? first + section.Drawings.Length - 1 : filled.Select((p, i) => p.Pieces.Any(x => x.Section == section.Key) ? i + 1 : 0).Max();
        return [.. begins.Select(b => new PackPage(b.Section.Key, b.Section.Title, b.Sheet, LastOf(b.Section, b.Sheet)))];
    }

    private ImmutableArray<PackSheet> Sheets(ImmutableArray<FilledPage> filled)
    {
        string current = "";
        var sheets = ImmutableArray.CreateBuilder<PackSheet>(filled.Length);
        for (int i = 0; i < filled.Length; i++)
        {
            var page = filled[i];
            string name = page.Pieces.Length > 0 ? page.Pieces[0].Section : page.Begins.Length > 0 ? page.Begins[0].Section.Key : current;
            current = name;
            var drawing = page.Picture is { } picture ? new Drawing(picture.Scene.OfSheets(Numbers.Whole(filled.Length)), picture.View, picture.Theme) : Written(page, i + 1, filled.Length);
            sheets.Add(new(i + 1, $"{(i < 9 ? "0" : "")}{Numbers.Whole(i + 1)}-{name}", drawing)
            {
                Begins = [.. page.Begins.Select(b => (b.Section.Key, page.Picture is null ? (source.Options.Paper.Inside.Top + b.Y) / 4 : 0))],
            });
        }
        return sheets.MoveToImmutable();
    }

    private Drawing Written(FilledPage page, int number, int all)
    {
        var paper = Paper(page.IsLying);
        var inside = paper.Inside;
        string titles = string.Join(", ", page.Pieces.Select(p => p.Section).Distinct());
        SceneGroup[] groups =
        [
            .. page.Pieces.Select(p => new SceneGroup(Layer.Notes, p.Piece.At(inside.Left, inside.Top + p.Y)) { Classes = [p.Section] }),
            new(Layer.Notes, foot.Of(number, all, inside.Width, source.Lettering).At(inside.Left, inside.Bottom - foot.HeightOf(inside.Width, source.Lettering))) { Id = "foot", Classes = ["foot"] },
        ];
        return new(new(paper.Width, paper.Height, $"{source.Job.Title}: work pack, sheet {Numbers.Whole(number)}", $"Sheet {Numbers.Whole(number)} of {Numbers.Whole(all)} of the work pack: {titles}.", [.. groups]), View.After, source.Options.Theme);
    }

    // Steps are counted anew with every change of the file, so the mark of their order stands with them.
    private static string StateOf(PackSource source)
    {
        if (!source.IsAltered) return "as it is";
        var plan = source.Job.Plan;
        int done = plan.Steps.TakeWhile(s => s.All(plan.IsDone)).Count();
        return $"{(done == 0 ? "nothing done yet" : $"as of step {Numbers.Whole(done)} of {Numbers.Whole(plan.Steps.Length)}")}, order {OrderWriting.MarkOf(plan)}";
    }

    private static PageFoot Foot(PackSource source)
    {
        string number = source.Field("identification number"), revision = source.Field("revision"), date = source.Field("date of issue");
        string[] facts = [number, revision.Length > 0 ? "revision " + revision : "", date, StateOf(source)];
        return new(source.Job.Title, string.Join(" · ", facts.Where(f => f.Length > 0)), "An aid: workshop manual, local codes and licensed practice come first.");
    }
}
