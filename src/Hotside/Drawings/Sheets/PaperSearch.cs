using System.Collections.Immutable;
using Hotside.Drawings.Plans;
using Hotside.Layouts;
using Hotside.Symbols;
using Hotside.Wording;

namespace Hotside.Drawings.Sheets;

/// <summary>Looks for a way to draw circuits on a paper at full size: type never shrinks.</summary>
internal sealed class PaperSearch
{
    // Where a little of the width is missing, texts stand a module from what comes next.
    private const double LittleMissing = 0.1;
    private const int CloseBoxes = 1;

    // Narrow relays save no more of the width than this, and loads higher up no more of the height; of the width these save more, since small pieces then find holes.
    private const double MostSaved = 0.25, MostSavedByHoles = 0.4;

    // Of one of several sheets less is expected, since what it does not hold goes onto another.
    private const double MostSavedInSet = 0.2, MostSavedByHolesInSet = 0.3;


    // A title block with the margins of its frame; without these the headline of each view.
    private const double LeastWidth = 860, LeastHeight = 240, LeastForHeadline = 330;

    /// <summary>Parts in rows that are so many times as wide as a paper never fit on it: a van's two views on A0 are 0.94 times as wide.</summary>
    public const double FarTooWide = 1.5;

    // Channels need three modules for a triangle beside a run.
    private static readonly LayoutOptions[] Spacings = [new(), new(Channel: 5), new(Channel: 4), new(Channel: 3)];

    // A circuit with so many loads has a table that says who switches what, if that saves paper: to read it of each load is quicker.
    private const int ManyLoads = 6;
    private static readonly double LeastForTable = SheetSize.Tabloid.Width * SheetSize.Tabloid.Height;

    private readonly DrawingPlan plan;
    private readonly Func<PlanStyle, DrawingPlan> planIn;
    private readonly SheetRequest request;
    private readonly CancellationToken cancel;
    private readonly KeyValuePair<PlanStyle, Lazy<Candidate>>[] candidates;

    /// <param name="plan">What is drawn.</param>
    /// <param name="planIn">The same in another style.</param>
    /// <param name="request">What is asked of the sheet.</param>
    /// <param name="cancel">Stops the work.</param>
    public PaperSearch(DrawingPlan plan, Func<PlanStyle, DrawingPlan> planIn, SheetRequest request, CancellationToken cancel)
    {
        (this.plan, this.planIn, this.request, this.cancel) = (plan, planIn, request, cancel);
        bool mayHaveTable = !request.IsInSet && SwitchRow.Of(plan.Study, request.Words).Length >= ManyLoads;
        PlanStyle high = new(HangsHigh: true);
        // From the one that shows most to the one that takes least.
        PlanStyle[] ends = plan.Input.Boxes.Any(b => b.IsReturnEnd) ? [new(EndsHigh: true), new(EndsHigh: true, HasCloseRelays: true)] : [];
        PlanStyle[] styles = [new(), new(HasCloseRelays: true), .. ends, high, high with { FacesAsGiven = true }, .. mayHaveTable ? new PlanStyle[] { new(HasSwitchTable: true), new(HasCloseRelays: true, HasSwitchTable: true), high with { HasSwitchTable = true } } : []];
        candidates = [.. styles.Select(s => KeyValuePair.Create(s, new Lazy<Candidate>(() => CandidateIn(s))))];
    }

    /// <summary>The sheet on a page that is asked for; <see langword="null"/> where it does not hold the drawing.</summary>
    public Sheet? On(Page page) => page switch
    {
        Page.Smallest => Smallest(),
        Page.Fit or Page.Bare => Fitted(),
        _ => On(SheetSize.Of(page)),
    };

    /// <summary>The smallest paper of the A series that holds all, or the next if there more labels find room; where none holds it the sheet grows beyond them.</summary>
    public Sheet Smallest() => SmallestOf(SheetSize.Series) ?? Grown();

    /// <summary>The first of some papers, from small to large, that holds all, or the next if there more labels find room; <see langword="null"/> where none holds it.</summary>
    public Sheet? SmallestOf(ImmutableArray<SheetSize> papers)
    {
        papers = [.. papers.Where(p => PartRows.ShareOf(plan, request.Views.Length, p) <= FarTooWide)];
        if (papers.Select(On).FirstOrDefault(s => s is not null) is not { } first) return null;
        if (first.Layout.Labels.Length == first.Plan.Input.Wires.Count(w => w.HasLabel)) return first;
        var next = papers.SkipWhile(s => s.Name != first.Furniture.Size.Name).Skip(1).Select(On).FirstOrDefault();
        return next?.Layout.Labels.Length > first.Layout.Labels.Length ? next : first;
    }

    /// <summary>
    /// The calmest spacing that a paper holds, at closer spacing, with narrow relays, with loads higher up, with no part turned, or standing, if it must be; <see langword="null"/> where it holds nothing of that.
    /// </summary>
    public Sheet? On(SheetSize size) => On(size, Ways(size));

    /// <summary>The same on a paper that stands, whether or not it would hold all lying.</summary>
    public Sheet? Upright(SheetSize size) => On(size, Ways(size).Where(w => w.Paper.IsUpright));

    private Sheet? On(SheetSize size, IEnumerable<(SheetSize Paper, Standing Standing)> ways)
    {
        // Badges in words come first, however they must stand.
        var inWords = candidates.Where(c => !c.Key.HasSwitchTable);
        var inTable = candidates.Where(c => c.Key.HasSwitchTable && size.Width * size.Height >= LeastForTable);
        return ways.Select(w => On(w.Paper, w.Standing, inWords)).FirstOrDefault(s => s is not null) ?? ways.Select(w => On(w.Paper, w.Standing, inTable)).FirstOrDefault(s => s is not null);
    }

    private Sheet? On(SheetSize paper, Standing standing, IEnumerable<KeyValuePair<PlanStyle, Lazy<Candidate>>> styles)
    {
        var (byHoles, saved) = request.IsInSet ? (MostSavedByHolesInSet, MostSavedInSet) : (MostSavedByHoles, MostSaved);
        bool isHopeless = false, endsHigh = false;
        var tried = new HashSet<Arrangement>();
        foreach (var (style, found) in styles)
        {
            // What goes on elsewhere takes a column of its own that none of the other ways saves; where ending high saves none either, it does no better with narrow relays.
            if (isHopeless && (!style.EndsHigh || (style.HasCloseRelays && !endsHigh))) continue;
            var candidate = found.Value;
            bool isNew = tried.Add(candidate.Arrangement);
            if (style.EndsHigh) endsHigh |= isNew;
            if (!isNew) continue;
            if (FurnitureOn(paper, candidate.Plan) is not { } furniture) return null;
            bool isNarrow = false;
            foreach (var options in Spacings.Concat(Spacings.Select(s => s with { BoxToBox = CloseBoxes })))
            {
                // Closer rows make nothing narrower, and closer columns nothing lower.
                if (isNarrow != (options.BoxToBox == CloseBoxes)) continue;
                Sheet natural = new(request, furniture, candidate.Plan, candidate.Arrangement.At(options, cancel), standing);
                // The legend keeps room for all that a layout may have; where that is missing, this one may have less.
                if (furniture.HasHighLegend && !natural.Rooms.Hold) natural = natural.WithExactLegend();
                var rooms = natural.Rooms;
                if (rooms.Hold) return Stretched(natural, candidate, options);
                double height = rooms.SpareHeight + Closer(natural, options);
                isHopeless = rooms.SpareWidth < -byHoles * furniture.Room.Width || height < -saved * furniture.Room.Height;
                if (height < 0 || rooms.SpareWidth < -LittleMissing * furniture.Room.Width || (isNarrow && rooms.SpareWidth < 0)) break;
                isNarrow |= rooms.SpareWidth < 0;
            }
        }
        return null;
    }

    /// <summary>A sheet as large as the drawing with its frame, in whole millimetres: views beside each other or one above the other, whichever takes less.</summary>
    public Sheet Fitted()
    {
        var natural = candidates[0].Value.Value;
        return Fitted(natural.Plan, natural.Arrangement.At(new(), cancel), Standings());
    }

    /// <summary>
    /// As a sheet that was drawn before, on its paper or, if asked, on one that fits: what need not move stands where it stood; <see langword="null"/> where that makes no sound drawing.
    /// </summary>
    public Sheet? Like(Sheet before, bool isFitted)
    {
        var alike = before.Plan.Style == plan.Style ? plan : planIn(before.Plan.Style);
        if (Layout.Like(alike.Laid, before.Layout, cancel) is not { } layout) return null;
        var sheet = isFitted ? Fitted(alike, layout, [before.Standing]) : On(before.Furniture.Size, alike, layout, before.Standing);
        return sheet.Rooms.Hold ? sheet with { Kept = before.Origins } : null;
    }

    private Sheet Fitted(DrawingPlan natural, Layout layout, Standing[] standings) => standings.Select(standing =>
    {
        // First as wide as it must be; the lists then say how high.
        SheetSize paper = new("", request.IsBare ? LeastForHeadline * request.Views.Length * natural.Lettering.Factor : LeastWidth, request.IsBare ? 1 : LeastHeight);
        for (int pass = 0; pass < 2; pass++) paper = Enough(paper, On(paper, natural, layout, standing).Rooms);
        // On a wider paper the lists are lower.
        paper = paper with { Height = WholeMillimetres(paper.Height - Math.Max(0, On(paper, natural, layout, standing).Rooms.SpareHeight)) };
        return On(paper with { Name = paper.InMillimetres }, natural, layout, standing);
    }).MinBy(s => s.Furniture.Size.Width * s.Furniture.Size.Height)!;

    // Larger than any paper of the series: as large as it must be.
    private Sheet Grown()
    {
        var natural = candidates[0].Value.Value;
        var layout = natural.Arrangement.At(new(), cancel);
        var (paper, standing) = Ways(SheetSize.Series[^1])
            .Select(way => (Paper: Enough(way.Paper with { Name = "" }, On(way.Paper, natural.Plan, layout, way.Standing).Rooms), way.Standing))
            .MinBy(way => way.Paper.Width * way.Paper.Height);
        return On(paper, natural.Plan, layout, standing);
    }

    private Sheet On(SheetSize paper, DrawingPlan plan, Layout layout, Standing standing) => new(request, Furniture.Of(plan, request, paper), plan, layout, standing);

    // What closer rows can save of the height.
    private static double Closer(Sheet sheet, LayoutOptions options) =>
        (options.Channel - Spacings[^1].Channel) * (sheet.Layout.Memory!.Rows + 1) * Symbol.Module * (sheet.Standing == Standing.Above ? sheet.Request.Views.Length : 1);

    // A paper narrower than the title block holds nothing.
    private Furniture? FurnitureOn(SheetSize paper, DrawingPlan plan) =>
        paper.Width - 120 < TitleBlock.Width || Furniture.Of(plan, request, paper) is not { Room.Height: > 0 } furniture ? null : furniture;

    // Beside each other on a lying sheet as long as that holds; a view alone on a lying sheet, or else a standing one.
    private IEnumerable<(SheetSize Paper, Standing Standing)> Ways(SheetSize size) => request.Views.Length == 1
        ? [(size, Standing.Beside), (size.Upright, Standing.Beside)]
        : [(size, Standing.Beside), (size, Standing.Above), (size.Upright, Standing.Above)];

    private Standing[] Standings() => request.Views.Length == 1 ? [Standing.Beside] : [Standing.Beside, Standing.Above];

    private static SheetSize Enough(SheetSize paper, ViewRooms rooms) =>
        paper with { Width = WholeMillimetres(paper.Width + Math.Max(0, -rooms.SpareWidth)), Height = WholeMillimetres(paper.Height + Math.Max(0, -rooms.SpareHeight)) };

    private static double WholeMillimetres(double units) => Math.Ceiling((units - 0.001) / 4) * 4;

    // The drawing fills the room it has, calmly; never beyond it.
    private Sheet Stretched(Sheet natural, Candidate candidate, LayoutOptions options)
    {
        var (width, height) = natural.Rooms.Growth;
        var stretched = natural with
        {
            Layout = candidate.Arrangement.At(options with
            {
                FillWidth = natural.Layout.Width + (int)Math.Floor(width / Symbol.Module),
                FillHeight = natural.Layout.Height + (int)Math.Floor(height / Symbol.Module),
            }, cancel),
        };
        if (natural.Joints is not null) stretched = stretched.WithExactLegend();
        return stretched.Rooms.Hold ? stretched : natural;
    }

    // Where parts and texts are the same, what was found for them may serve again.
    private Candidate CandidateIn(PlanStyle style)
    {
        var styled = style == plan.Style ? plan : planIn(style);
        // Without a relay that gets narrower the drawing is the same.
        if (style.HasCloseRelays && candidates.FirstOrDefault(c => c.Key == style with { HasCloseRelays = false }).Value?.Value is { } wide && HasSameBoxes(wide.Plan, styled)) return wide;
        var like = candidates.TakeWhile(c => c.Key != style).Where(c => c.Key.OfParts() == style.OfParts()).Select(c => c.Value.Value.Arrangement).LastOrDefault();
        return new(styled, like?.With(styled.Laid, cancel) ?? Arrangement.Of(styled.Laid, cancel: cancel));
    }

    private static bool HasSameBoxes(DrawingPlan one, DrawingPlan other) => one.Input.Boxes.Length == other.Input.Boxes.Length
        && one.Input.Boxes.Zip(other.Input.Boxes).All(p => p.First.Width == p.Second.Width && p.First.TextWidths == p.Second.TextWidths && p.First.TextHeight == p.Second.TextHeight && p.First.Pins.SequenceEqual(p.Second.Pins));

    /// <summary>A way to draw the job, with what stands where in it.</summary>
    private sealed record Candidate(DrawingPlan Plan, Arrangement Arrangement);
}
