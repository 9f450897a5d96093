using System.Collections.Immutable;
using Hotside.Drawings.Pictures;
using Hotside.Drawings.Plans;
using Hotside.Layouts;
using Hotside.Symbols;
using Hotside.Wording;

namespace Hotside.Drawings.Sheets;

/// <summary>
/// A sheet with its circuit or pair: the smallest paper that holds all at full size. Type never shrinks; where no paper is large enough the sheet grows.
/// </summary>
internal sealed class SheetPlan
{
    // Narrow relays save no more of the width than this.
    private const double MostSaved = 0.25;

    // Channels need three modules for a triangle beside a run.
    private static readonly LayoutOptions[] Spacings = [new(), new(Channel: 5), new(Channel: 4), new(Channel: 3)];

    private readonly SeenIn[] views;
    private readonly IReadOnlyDictionary<string, string> titleBlock;
    private readonly Vocabulary words;
    private readonly CancellationToken cancel;

    private SheetPlan(SeenIn[] views, IReadOnlyDictionary<string, string> titleBlock, Vocabulary words, CancellationToken cancel) =>
        (this.views, this.titleBlock, this.words, this.cancel) = (views, titleBlock, words, cancel);

    public static Scene Of(DrawingPlan plan, SeenIn[] views, IReadOnlyDictionary<string, string> titleBlock, Vocabulary words, CancellationToken cancel) =>
        new SheetPlan(views, titleBlock, words, cancel).Compose(plan);

    // The calmest spacing that a paper holds; a smaller paper at closer spacing, with narrow relays or with one view above the other, before a larger one.
    private Scene Compose(DrawingPlan plan)
    {
        Lazy<Candidate>[] candidates = [new(() => Candidate.Of(plan, cancel)), new(() => Candidate.Of(plan.WithCloseRelays(), cancel))];
        foreach (var size in SheetSize.Series)
            foreach (var (paper, standing) in Ways(size))
            {
                var furniture = Furniture.Of(plan, views, paper, titleBlock, words);
                bool isHopeless = false;
                foreach (var candidate in candidates.TakeWhile(_ => !isHopeless).Select(c => c.Value))
                    foreach (var options in Spacings)
                    {
                        var natural = candidate.Arrangement.At(options, cancel);
                        var rooms = RoomsOf(furniture, candidate.Plan, natural, standing);
                        if (rooms.Hold) return Draw(furniture, candidate.Plan, Stretched(furniture, candidate, natural, standing, options), standing);
                        isHopeless = rooms.SpareWidth < -MostSaved * furniture.Room.Width;
                        // Closer rows make nothing narrower.
                        if (rooms.SpareWidth < 0) break;
                    }
            }
        return Grown(plan, candidates[0].Value);
    }

    // Beside each other on a lying sheet as long as that holds; a view alone on a lying sheet.
    private IEnumerable<(SheetSize Paper, Standing Standing)> Ways(SheetSize size) => views.Length == 1
        ? [(size, Standing.Beside)]
        : [(size, Standing.Beside), (size, Standing.Above), (size.Upright, Standing.Above)];

    // Larger than any paper of the series: as large as it must be.
    private Scene Grown(DrawingPlan plan, Candidate candidate)
    {
        var natural = candidate.Arrangement.At(new(), cancel);
        var (paper, standing) = Ways(SheetSize.Series[^1])
            .Select(way => (Paper: Enough(way.Paper, RoomsOf(Furniture.Of(plan, views, way.Paper, titleBlock, words), plan, natural, way.Standing)), way.Standing))
            .MinBy(way => way.Paper.Width * way.Paper.Height);
        return Draw(Furniture.Of(plan, views, paper, titleBlock, words), plan, natural, standing);
    }

    private static SheetSize Enough(SheetSize paper, ViewRooms rooms) =>
        new("", paper.Width + Math.Max(0, Math.Ceiling(-rooms.SpareWidth)), paper.Height + Math.Max(0, Math.Ceiling(-rooms.SpareHeight)));

    /// <summary>A way to draw the job, with what stands where in it.</summary>
    private sealed record Candidate(DrawingPlan Plan, Arrangement Arrangement)
    {
        public static Candidate Of(DrawingPlan plan, CancellationToken cancel) => new(plan, Arrangement.Of(plan.Input, cancel: cancel));
    }

    private ViewRooms RoomsOf(Furniture furniture, DrawingPlan drawn, Layout layout, Standing standing) =>
        ViewRooms.Of(furniture.Room, [.. views.Select(v => PictureBounds.Of(drawn, layout, v))], standing);

    // The drawing fills the room it has, calmly; never beyond it.
    private Layout Stretched(Furniture furniture, Candidate candidate, Layout natural, Standing standing, LayoutOptions options)
    {
        var (width, height) = RoomsOf(furniture, candidate.Plan, natural, standing).Growth;
        var stretched = candidate.Arrangement.At(options with
        {
            FillWidth = natural.Width + (int)Math.Floor(width / Symbol.Module),
            FillHeight = natural.Height + (int)Math.Floor(height / Symbol.Module),
        }, cancel);
        return RoomsOf(furniture, candidate.Plan, stretched, standing).Hold ? stretched : natural;
    }

    private Scene Draw(Furniture furniture, DrawingPlan drawn, Layout layout, Standing standing)
    {
        var rooms = RoomsOf(furniture, drawn, layout, standing);
        var groups = ImmutableArray.CreateBuilder<SceneGroup>();
        groups.AddRange(furniture.Groups);
        for (int i = 0; i < views.Length; i++)
        {
            groups.Add(furniture.Head(drawn, views[i], rooms.Room(i), words));
            var (x, y) = rooms.Origin(i);
            groups.AddRange(CircuitPicture.Of(drawn, layout, views[i], x, y));
        }
        if (views.Length > 1) groups.Add(furniture.Divider(rooms));
        string what = views[0] == SeenIn.Both ? ", before and after over each other" : views.Length > 1 ? ", before and after" : drawn.Alteration.Changes.IsEmpty ? "" : views[0] == SeenIn.Before ? ", before" : ", after";
        return new(furniture.Size.Width, furniture.Size.Height, TitleRow.Value(titleBlock, "title") + what, SheetText.Description(drawn.Alteration, drawn.Study, words), groups.ToImmutable());
    }
}
