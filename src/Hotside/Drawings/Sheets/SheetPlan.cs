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
    private static readonly SheetSize[] Sizes = [SheetSize.A4, SheetSize.A3, SheetSize.A2];

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

    // The calmest spacing that a paper holds; a smaller paper at closer spacing, then with narrow relays, before a larger one.
    private Scene Compose(DrawingPlan plan)
    {
        Lazy<Candidate>[] candidates = [new(() => Candidate.Of(plan, cancel)), new(() => Candidate.Of(plan.WithCloseRelays(), cancel))];
        foreach (var size in Sizes)
        {
            var furniture = Furniture.Of(plan, views, size, titleBlock, words);
            bool isHopeless = false;
            foreach (var candidate in candidates.TakeWhile(_ => !isHopeless).Select(c => c.Value))
                foreach (var options in Spacings)
                {
                    var natural = candidate.Arrangement.At(options, cancel);
                    var rooms = RoomsOf(furniture, candidate.Plan, natural);
                    if (rooms.Hold) return Draw(furniture, candidate.Plan, Stretched(furniture, candidate, natural, rooms, options));
                    isHopeless = rooms.SpareWidth < -MostSaved * furniture.Room.Width;
                    // Closer rows make nothing narrower.
                    if (rooms.SpareWidth < 0) break;
                }
        }
        // Larger than any paper of the series: as large as it must be.
        var large = candidates[0].Value.Arrangement.At(new(), cancel);
        var missing = RoomsOf(Furniture.Of(plan, views, SheetSize.A2, titleBlock, words), plan, large);
        var grown = new SheetSize("", SheetSize.A2.Width + Math.Max(0, Math.Ceiling(-missing.SpareWidth)), SheetSize.A2.Height + Math.Max(0, Math.Ceiling(-missing.SpareHeight)));
        return Draw(Furniture.Of(plan, views, grown, titleBlock, words), plan, large);
    }

    /// <summary>A way to draw the job, with what stands where in it.</summary>
    private sealed record Candidate(DrawingPlan Plan, Arrangement Arrangement)
    {
        public static Candidate Of(DrawingPlan plan, CancellationToken cancel) => new(plan, Arrangement.Of(plan.Input, cancel));
    }

    private ViewRooms RoomsOf(Furniture furniture, DrawingPlan drawn, Layout layout) =>
        new(furniture.Room, [.. views.Select(v => PictureBounds.Of(drawn, layout, v))]);

    // The drawing fills the room it has, calmly; never beyond it.
    private Layout Stretched(Furniture furniture, Candidate candidate, Layout natural, ViewRooms rooms, LayoutOptions options)
    {
        var stretched = candidate.Arrangement.At(options with
        {
            FillWidth = natural.Width + (int)Math.Floor(rooms.SpareWidth / views.Length / Symbol.Module),
            FillHeight = natural.Height + (int)Math.Floor(rooms.SpareHeight / Symbol.Module),
        }, cancel);
        return RoomsOf(furniture, candidate.Plan, stretched).Hold ? stretched : natural;
    }

    private Scene Draw(Furniture furniture, DrawingPlan drawn, Layout layout)
    {
        var rooms = RoomsOf(furniture, drawn, layout);
        var groups = ImmutableArray.CreateBuilder<SceneGroup>();
        groups.AddRange(furniture.Groups);
        for (int i = 0; i < views.Length; i++)
        {
            groups.Add(furniture.Head(drawn, views[i], rooms.Left(i), rooms.Width(i), words));
            groups.AddRange(CircuitPicture.Of(drawn, layout, views[i], Math.Round(rooms.Left(i) + rooms.Shift.X), Math.Round(rooms.Shift.Y)));
        }
        if (views.Length > 1) groups.Add(furniture.Divider(rooms.Left(1) - (ViewRooms.Between / 2)));
        string what = views[0] == SeenIn.Both ? ", before and after over each other" : views.Length > 1 ? ", before and after" : drawn.Alteration.Changes.IsEmpty ? "" : views[0] == SeenIn.Before ? ", before" : ", after";
        return new(furniture.Size.Width, furniture.Size.Height, TitleRow.Value(titleBlock, "title") + what, SheetText.Description(drawn.Alteration, drawn.Study, words), groups.ToImmutable());
    }
}
