using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Drawings.Plans;
using Hotside.Drawings.Sheets;
using Hotside.Layouts;
using Hotside.Symbols;

namespace Hotside.Drawings.Sets;

/// <summary>
/// A drawing broken over several sheets of one paper: first what is to be done and who switches what, then the circuits. What belongs together stays together;
/// rails go on from sheet to sheet, and where a line has to be cut both halves say where the other is.
/// </summary>
internal sealed class SheetSet
{
    private const int MostTries = 4, MostHalvings = 12, UsualSheets = 6;

    // Nothing needs to be laid out to see that much too much is too much: of all sheets of the gallery's jobs the fullest has 0.66.
    private const double Fullest = 0.72;

    private readonly DrawingPlan plan;
    private readonly Dictionary<PlanStyle, DrawingPlan> styles = [];
    private readonly Dictionary<string, bool> falls;
    private readonly Dictionary<string, int> widths;
    private readonly SheetRequest request;
    private readonly SheetSize paper;
    private readonly string widestZone;
    private readonly CancellationToken cancel;

    private SheetSet(DrawingPlan plan, SheetRequest request, SheetSize paper, int digits, CancellationToken cancel)
    {
        (this.plan, this.paper, this.cancel) = (plan, paper, cancel);
        widestZone = $"{new string('8', digits)}.{SheetFrame.WidestZone(paper)}";
        this.request = request with { IsInSet = true };
        widths = PartRows.WidthsOf(plan);
        var flow = FlowOfLines.Of(plan);
        falls = plan.Lines.Zip(Layout.FallsOf(plan.Input)).ToDictionary(p => p.First.Line, p => flow.TryGetValue(p.First.Line, out bool known) ? known : p.Second, StringComparer.Ordinal);
    }

    /// <summary>The sheets; none where not even a part with its text finds room.</summary>
    public static ImmutableArray<Scene> Of(DrawingPlan plan, SheetRequest request, SheetSize paper, CancellationToken cancel)
    {
        // A set that turns out to have more sheets than was thought needs wider flags.
        for (int digits = DigitsOf(request.NumberOf(UsualSheets - 1)); ; digits++)
            if (new SheetSet(plan, request, paper, digits, cancel).Scenes() is var set && (set.IsEmpty || DigitsOf(request.NumberOf(set.Length - 1)) <= digits)) return set;
    }

    private static int DigitsOf(int number) => Numbers.Whole(number).Length;

    // Evener halves, with more cuts, where a part would be alone with more flags than a paper holds.
    private ImmutableArray<Scene> Scenes() => new double[] { 3, 10, 30 }.Select(Scenes).FirstOrDefault(s => !s.IsEmpty, []);

    private ImmutableArray<Scene> Scenes(double evenness)
    {
        // A rail that turns out to go on to more sheets than was thought needs a wider flag.
        for (int zones = 2; zones < 2 + MostTries; zones++)
        {
            int thought = zones;
            if (new BlockPacking(plan, b => Holds(b, thought, evenness), WidthOf, evenness).Sheets() is not { } blocks) continue;
            for (int halvings = 0; halvings <= MostHalvings; halvings++)
            {
                var flags = new SetFlags(plan, blocks, falls, 1, widestZone).All();
                SheetPart[] parts = [.. blocks.Zip(flags, (b, f) => new SheetPart(b, f))];
                Found?[] sheets = [.. parts.Select(WidestOn)];
                if (sheets.All(s => s is not null)) return Drawn(parts, AllAlike([.. sheets.OfType<Found>()]));
                // What its own flags make larger than was thought is cut once more.
                int large = Array.IndexOf(sheets, null);
                if (blocks[large].Halved(plan, evenness) is not var (first, second)) break;
                blocks[large] = first;
                blocks.Insert(large + 1, second);
            }
        }
        return [];
    }

    // Every rail is thought to go on, and connectors are as wide as their flags want them, unless that is too much for what cannot be cut.
    private bool Holds(Block block, int zones, double evenness)
    {
        if (PartRows.ShareOf(WidthOf(block), request.Views.Length, paper) > Fullest) return false;
        var part = new SheetPart(block, new SetFlags(plan, [block, Rails], falls, zones, widestZone).All()[0]);
        return On(part with { HasWideWays = true }) is not null || ((part with { HasWideWays = true }).Widens(plan) && block.Halved(plan, evenness) is null && On(part) is not null);
    }

    private int WidthOf(Block block) => PartRows.Of(widths, block.Parts);

    private Block Rails => field ??= new([], [.. plan.Lines.Select(l => l.Line)], []);

    // With all ways apart, else with those apart that need it.
    private Found? WidestOn(SheetPart part)
    {
        if (!(part with { HasWideWays = true }).Widens(plan)) return On(part);
        if (On(part with { HasWideWays = true }) is { } wide) return wide;
        if (On(part) is not { } narrow) return null;
        var wider = part with { HasWideWays = true, WithoutWideWays = narrow.Sheet.Layout };
        return (wider.Widens(plan) ? On(wider) : null) ?? narrow;
    }

    private Found? On(SheetPart part)
    {
        cancel.ThrowIfCancellationRequested();
        var own = part.Of(plan);
        // A view that shows nothing of a sheet is left out there.
        SeenIn[] views = [.. request.Views.Where(v => own.Lines.Any(l => l.In(v) is not null) || own.Parts.Any(p => !Block.IsShared(p) && p.In(v) is not null))];
        var search = new PaperSearch(own, style => part.Of(Styled(style)), views.Length == 0 ? request : request with { Views = views }, cancel);
        return search.On(paper) is { } sheet ? new(search, sheet) : null;
    }

    // Who binds them turns none: where one has to stand, for no sheet lies less than it could, all stand if they hold so.
    private Sheet[] AllAlike(Found[] found)
    {
        Sheet[] asFound = [.. found.Select(f => f.Sheet)];
        if (asFound.All(s => !s.Furniture.Size.IsUpright)) return asFound;
        Sheet?[] upright = [.. found.Select(f => f.Sheet.Furniture.Size.IsUpright ? f.Sheet : f.Search.Upright(paper))];
        return upright.Contains(null) ? asFound : [.. upright.OfType<Sheet>()];
    }

    private DrawingPlan Styled(PlanStyle style) => styles.TryGetValue(style, out var styled) ? styled : styles[style] = plan.In(style);

    private ImmutableArray<Scene> Drawn(SheetPart[] parts, Sheet[] sheets)
    {
        var subjects = SheetSubject.Of([.. parts.Select(p => p.Block)], plan, request);
        var index = new SetIndexes(plan, request, sheets, subjects);
        // One paper for all.
        var textPaper = request.TextPaper ?? (sheets.All(s => s.Furniture.Size.IsUpright) ? paper.Upright : paper);
        // The lists come first and name the sheets behind them: the more lists, the longer the names.
        var text = TextSheets.Of(plan, request, textPaper, index.After(1));
        for (int thought = 1; text.Length > thought;)
            text = TextSheets.Of(plan, request, textPaper, index.After(thought = text.Length));
        int before = text.Length, all = before + sheets.Length;
        ImmutableArray<IReadOnlyDictionary<string, string>> titles = [.. text.Select(t => t.Subject).Concat(subjects).Select((subject, i) => request.Of(request.SheetText(i, all), subject).TitleBlock)];
        var drawn = sheets.Select((s, i) => s with { Plan = parts[i].Named(s.Plan, (flag, view) => Zones(flag, view, sheets, before)) });
        return [.. text.Select((t, i) => (t with { Request = request with { TitleBlock = titles[i], InSet = titles } }).Draw()), .. drawn.Select((s, i) => s.Titled(titles[before + i], titles).Draw())];
    }

    private IEnumerable<string> Zones(SheetFlag flag, SeenIn view, Sheet[] sheets, int before) =>
        flag.Partners.Select(p => (p.Sheet, Zone: sheets[p.Sheet].ZoneOf(p.Box, view))).Where(p => p.Zone is not null).Select(p => $"{Numbers.Whole(request.NumberOf(before + p.Sheet))}.{p.Zone}");

    /// <summary>A sheet and how it was found.</summary>
    private sealed record Found(PaperSearch Search, Sheet Sheet);
}
