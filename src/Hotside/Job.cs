using System.Collections.Immutable;
using Hotside.Alterations;
using Hotside.Checks;
using Hotside.CheckSheets;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Drawings.Plans;
using Hotside.Drawings.Sets;
using Hotside.Drawings.Sheets;
using Hotside.Notation;
using Hotside.Orders;
using Hotside.Outputs;
using Hotside.Reading;
using Hotside.Sizing;
using Hotside.Studies;
using Hotside.Symbols;
using Hotside.Wording;

namespace Hotside;

/// <summary>
/// A job: one vehicle's circuit before and after an alteration. The front door: it reads, checks, studies and draws. Immutable; safe to share between threads.
/// </summary>
public sealed partial class Job
{
    private Study? study;
    private readonly Lazy<SizeStudy> sizes;
    private readonly Lazy<ImmutableArray<Diagnostic>> checks, contradictions;
    private readonly ImmutableArray<WrittenReading> written;
    private readonly Lazy<WorkPlan> plan;
    private readonly Lazy<Verdicts> verdicts;
    private readonly Lazy<WorkOrder> order;
    private readonly OrderBook book;
    private readonly string? progress;
    private readonly JobReading? read;
    private readonly YamlNode? rules;
    private readonly ImmutableArray<KeyValuePair<string, string>> fittedBy;
    private readonly ImmutableDictionary<string, SourceSpan> places;
    private readonly ImmutableArray<Diagnostic> reading;
    private readonly ImmutableArray<Acceptance> accepted;
    private readonly JobSource? source;

    private Job(string title, Alteration alteration, JobReading? reading, JobSource? source = null, string? done = null)
    {
        (this.source, read) = (source, reading);
        Title = title;
        TitleBlock = reading?.TitleBlock ?? [];
        Alteration = alteration;
        // The checks are of the altered circuit: what is replaced stands where it is said what it is then.
        places = reading?.Places.SetItems(reading.LaterPlaces) ?? ImmutableDictionary<string, SourceSpan>.Empty;
        this.reading = reading?.Diagnostics ?? [];
        accepted = reading?.Accepted ?? [];
        written = reading?.Readings ?? [];
        contradictions = new(() => [.. ReadingCheck.Of(Study.Before, written.Where(r => !r.IsAfter).Select(r => (r.Text, r.Span))), .. ReadingCheck.Of(Study.After, written.Where(r => r.IsAfter).Select(r => (r.Text, r.Span)))]);
        sizes = new(() => SizeStudy.Of(Study));
        checks = new(() => CheckList.Run(Study, sizes));
        fittedBy = reading?.Fitted ?? [];
        (progress, rules, book) = (done ?? reading?.Done?.Value, reading?.Rules, OrderBook.Standard);
        if (rules is not null)
        {
            List<Diagnostic> wrong = [];
            book = book.With(rules, wrong);
            this.reading = [.. this.reading, .. wrong];
        }
        plan = new(() => new(Alteration, book, progress ?? ""));
        verdicts = new(() => new(plan.Value, Study));
        order = new(() => OrderWork());
        // Without words of its own a job's order is worked out when it is asked for.
        if (progress is not null || rules is not null)
        {
            var span = reading?.Done?.Span;
            this.reading = [.. this.reading, .. plan.Value.Problems.Select(p => p with { Span = p.Kind == ActGraph.Circle ? rules?.Span ?? span : span ?? rules?.Span })];
        }
    }

    /// <summary>What the job is called.</summary>
    public string Title { get; }

    /// <summary>The fields of the title block (ISO 7200) in the order of the file.</summary>
    public ImmutableArray<KeyValuePair<string, string>> TitleBlock { get; private init; }

    /// <summary>Both circuits and what changes between them.</summary>
    public Alteration Alteration { get; }

    /// <summary>On which side each load is switched, before and after; made when first asked for.</summary>
    public Study Study => StudyUnless(CancellationToken.None);

    /// <summary>What each conductor carries, may carry and needs, and each fuse, before and after; made when first asked for.</summary>
    public SizeStudy Sizes => sizes.Value;

    /// <summary>The order of work with what would come to harm in between; worked out when first asked for, which takes a second for a whole vehicle.</summary>
    public WorkOrder WorkOrder => order.Value;

    /// <summary>
    /// All that is wrong or doubtful about the file, about the circuits and by the checks of the trade, with places where there is a file; by place, then code. What the file
    /// accepts is among it, with the reason.
    /// </summary>
    public ImmutableArray<Diagnostic> Findings =>
    [
        .. Acceptance.Apply([.. reading.Concat(Study.Findings.Concat(checks.Value).Concat(contradictions.Value).Select(Placed))], accepted)
            .OrderBy(d => d.Span is null ? 1 : 0).ThenBy(d => d.Span?.File, StringComparer.Ordinal).ThenBy(d => d.Span?.Line).ThenBy(d => d.Span?.Column).ThenBy(d => d.Code, StringComparer.Ordinal),
    ];

    /// <summary>Whether a finding of severity error or stop is among them that the file does not accept.</summary>
    public bool HasErrors => Findings.Any(f => f is { Severity: >= Severity.Error, Accepted: null });

    /// <summary>The findings that forbid the work, and that the file does not accept.</summary>
    internal ImmutableArray<Diagnostic> Stops => [.. Findings.Where(f => f is { Severity: Severity.Stop, Accepted: null })];

    /// <summary>Reads a job file and the files it includes, which lie in its folder or below.</summary>
    /// <param name="path">The file.</param>
    /// <param name="options">How it is read.</param>
    /// <returns>The job or what is wrong with the file; nothing that the file says throws.</returns>
    /// <exception cref="ArgumentException"><paramref name="path"/> is empty.</exception>
    /// <exception cref="FileNotFoundException">There is no such file; the message names the nearest in its folder.</exception>
    /// <exception cref="IOException">The file cannot be read, its folder does not exist, or the path is a folder.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be read.</exception>
    public static ReadResult ReadFile(string path, JobOptions? options = null)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        string folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
        return Read(JobFile.Text(path), path, options, name => Path.Combine(folder, name) is var file && File.Exists(file) ? File.ReadAllText(file) : null);
    }

    /// <summary>Reads a job from a text; it includes no other files.</summary>
    /// <param name="text">The text of a job file.</param>
    /// <param name="options">How it is read.</param>
    /// <returns>The job or what is wrong with the text; nothing that it says throws.</returns>
    public static ReadResult Read(string text, JobOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(text);
        return Read(text, "(text)", options, _ => null);
    }

    /// <summary>A job made in code.</summary>
    /// <param name="alteration">Both circuits and what changes.</param>
    /// <param name="title">What it is called; the alteration's title when left out.</param>
    /// <exception cref="ArgumentException"><paramref name="title"/> is stated and empty.</exception>
    public static Job From(Alteration alteration, string? title = null)
    {
        ArgumentNullException.ThrowIfNull(alteration);
        if (title is not null) ArgumentException.ThrowIfNullOrWhiteSpace(title);
        return new(title ?? alteration.Title, alteration, null);
    }

    /// <summary>Draws the job on one sheet at full size, by default on the smallest that holds it.</summary>
    /// <param name="view">Which circuit is shown. A job that alters nothing is drawn once, whatever the view.</param>
    /// <param name="options">Which loads, on what paper, how large the letters, colours, words.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <returns>The picture, to be written by one of the outputs.</returns>
    /// <exception cref="ArgumentException">
    /// The figure names a load that is neither before nor after, or figures are asked of a setting that neither has, and the message names the nearest; figures are asked of
    /// an overlay; or the drawing does not fit on the paper, and the message names one that holds it.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="view"/> is none of the views.</exception>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was called for.</exception>
    public Drawing Draw(View view = View.Pair, DrawingOptions? options = null, CancellationToken cancel = default) => Drawn(view, options ?? new(), null, cancel);

    private Drawing Drawn(View view, DrawingOptions options, LineFigures? marks, CancellationToken cancel) => new(Sheet(view, options, marks, cancel).Draw(), view, options.Theme);

    private Sheet Sheet(View view, DrawingOptions options, LineFigures? marks, CancellationToken cancel)
    {
        var (plan, request) = Planned(view, options, cancel, marks);
        PaperSearch search = new(plan, plan.In, request, cancel);
        return Resembling(search, view, options, cancel) ?? search.On(options.Page)
            ?? throw new ArgumentException($"The drawing does not fit on one {options.Page}; it needs {search.Smallest().Furniture.Size.Called}, or several sheets.", nameof(options));
    }

    private Sheet? Resembling(PaperSearch search, View view, DrawingOptions options, CancellationToken cancel)
    {
        // The same job gives the same drawing without any memory.
        if (options.Like is not { } like || like.ToYaml() == ToYaml()) return null;
        var (plan, request) = like.Planned(view, options, cancel);
        return new PaperSearch(plan, plan.In, request, cancel).On(options.Page) is { } before ? search.Like(before, options.Page is Page.Fit or Page.Bare) : null;
    }

    /// <summary>
    /// Draws the job at full size on as many sheets as the paper asks for: one, or, where it does not fit on one, an overview with cautions, changes and a table of who switches
    /// what, and sheets on which rails and wires go on by flags that name sheet and zone. With <see cref="Page.Smallest"/> that is one sheet up to A2, the largest that is
    /// easily printed and unfolded under a hood, and beyond that several A3.
    /// </summary>
    /// <param name="view">Which circuit is shown.</param>
    /// <param name="options">As for <see cref="Draw"/>.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <returns>The sheets in their order, at least one.</returns>
    /// <exception cref="ArgumentException">
    /// The figure names a load that is neither before nor after, or figures are asked of a setting that neither has, and the message names the nearest; figures are asked of
    /// an overlay; or the paper is too small for even a part of the drawing.
    /// </exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="view"/> is none of the views.</exception>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was called for.</exception>
    public ImmutableArray<Drawing> DrawSheets(View view = View.Pair, DrawingOptions? options = null, CancellationToken cancel = default)
    {
        options ??= new();
        if (options.Page is Page.Fit or Page.Bare || (options.Page == Page.Smallest && options.Like is not null)) return [Draw(view, options, cancel)];
        if (options.Page == Page.Smallest) return DrawFolded(view, [Page.A4, Page.A3, Page.A2], [Page.A3, Page.A2], null, options, cancel);
        var (plan, request) = Planned(view, options, cancel);
        var paper = SheetSize.Of(options.Page);
        PaperSearch search = new(plan, plan.In, request, cancel);
        if (search.On(paper) is { } one) return [new((Resembling(search, view, options, cancel) ?? one).Draw(), view, options.Theme)];
        var scenes = SheetSet.Of(plan, request, paper, cancel);
        return !scenes.IsEmpty ? [.. scenes.Select(s => new Drawing(s, view, options.Theme))]
            : throw new ArgumentException($"{options.Page} is too small for parts of the drawing; take a larger paper.", nameof(options));
    }

    /// <summary>
    /// The job on the first of some papers that holds it on one sheet, else on as many as it takes of the first of others that holds its parts, else on one as large as it must be.
    /// </summary>
    internal ImmutableArray<Drawing> DrawFolded(View view, ImmutableArray<Page> whole, ImmutableArray<Page> sets, Page? textPaper, DrawingOptions options, CancellationToken cancel)
    {
        var (plan, request) = Planned(view, options, cancel);
        request = request with { TextPaper = textPaper is { } text ? SheetSize.Of(text) : null };
        PaperSearch search = new(plan, plan.In, request, cancel);
        if (search.SmallestOf([.. whole.Select(SheetSize.Of)]) is { } one) return [new(one.Draw(), view, options.Theme)];
        foreach (var paper in sets)
            if (SheetSet.Of(plan, request, SheetSize.Of(paper), cancel) is { IsEmpty: false } set) return [.. set.Select(s => new Drawing(s, view, options.Theme))];
        return [new(search.Smallest().Draw(), view, options.Theme)];
    }

    /// <summary>
    /// The job as a job file in line form. Reading it gives the same job: the same circuits, changes and reasons. Kinds that the library lacks, or that the job defines
    /// otherwise, are written into it; numbers have nine decimals at most. Comments, and which file something stood in, are not kept. Wires that hang in the vehicle as of a step are
    /// written as spares.
    /// </summary>
    /// <remarks>
    /// An alteration between two circuits written apart tells no change where only a name, a place, an assembly or a figure that one of them lacks differs;
    /// the after circuit that is read again then has what the before circuit says.
    /// </remarks>
    /// <returns>The text; lines end with a line feed, the last one too.</returns>
    public string ToYaml() => JobWriter.Write(Title, TitleBlock, IsStanding ? WithSpares(Alteration.After) : Alteration, new() { Accepted = accepted, Done = progress, Rules = rules, FittedBy = fittedBy, Readings = written });

    /// <summary>Writes <see cref="ToYaml"/> to a file in UTF-8: beside it first, then renamed, so that a failed run leaves what was there.</summary>
    /// <param name="path">The file; its folder exists.</param>
    /// <exception cref="ArgumentException"><paramref name="path"/> is empty.</exception>
    /// <exception cref="IOException">The file cannot be written, its folder does not exist, or the path is a folder.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be written.</exception>
    public void SaveYaml(string path) => SafeFile.Write(path, ToYaml);

    /// <summary>Says in plain words what happens when a load is on and off, before and after: what feeds it, its current step by step, how to tell its side with a meter, what its switches carry.</summary>
    /// <param name="load">A part's id, or one of its loads: <c>H1</c>, <c>E3.tail</c>.</param>
    /// <param name="words">Whose words.</param>
    /// <exception cref="ArgumentException">There is no such load before or after; the message names the nearest.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="words"/> is none of the two.</exception>
    public Explanation Explain(string load, Words words = Words.American)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(load);
        return Explanation.Of(load, Study, Vocabulary.Of(words));
    }

    /// <summary>
    /// Shows the work by which a wire's size is told, as a person would write it by hand: current, ampacity, fuse, drop, strength, each with formula, values, source and result;
    /// before and after, where the wire is in both.
    /// </summary>
    /// <param name="wire">The wire's id.</param>
    /// <returns>Lines that end with a line feed.</returns>
    /// <exception cref="ArgumentException">There is no such wire before or after; the message names the nearest.</exception>
    public string ShowWork(string wire)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(wire);
        return SizingWork.Write(Sizes, wire);
    }

    /// <summary>All that was found, as JSON of the contract <c>hotside-study/1</c>: the same job gives the same bytes.</summary>
    public string ToJson() => StudyJson.Write(Study, Findings);

    // An ordinary file has no wire that hangs, but for spares.
    private static Alteration WithSpares(Circuit circuit)
    {
        circuit = circuit.With([.. circuit.Conductors.Select(c => c.Ends.Any(e => e.IsFree) ? c with { Wire = c.Wire with { Role = WireRole.Spare } } : c)]);
        return new("", circuit, circuit, []);
    }

    private CircuitStudy StudyOf(View view) => view switch
    {
        View.Before => Study.Before,
        View.After => Study.After,
        _ => throw new ArgumentException("Readings are taken on one circuit: before or after.", nameof(view)),
    };

    // Made once; a study that was called off leaves nothing behind.
    private Study StudyUnless(CancellationToken cancel)
    {
        if (Volatile.Read(ref study) is { } made) return made;
        var fresh = Study.Of(Alteration, cancel);
        return Interlocked.CompareExchange(ref study, fresh, null) ?? fresh;
    }

    private (DrawingPlan Plan, SheetRequest Request) Planned(View view, DrawingOptions options, CancellationToken cancel, LineFigures? marks = null)
    {
        bool isAltered = !ReferenceEquals(Alteration.Before, Alteration.After);
        SeenIn[] views = view switch
        {
            View.Before => [SeenIn.Before],
            View.After => [SeenIn.After],
            View.Pair or View.Overlay when !isAltered => [SeenIn.After],
            View.Overlay => [SeenIn.Both],
            View.Pair => [SeenIn.Before, SeenIn.After],
            _ => throw new ArgumentOutOfRangeException(nameof(view), view, "There is no such view."),
        };
        var study = StudyUnless(cancel);
        if (!options.Figure.IsEmpty) study = study.Only(options.Figure);
        var words = Vocabulary.Of(options.Words);
        if (options.Show != ShownFigures.None && views[0] == SeenIn.Both)
            throw new ArgumentException("Figures stand in before, after or both beside each other: over each other there is no room for two at a wire.", nameof(view));
        if (options.Show != ShownFigures.None && string.IsNullOrWhiteSpace(options.Setting)) throw new ArgumentException("Figures are those of a setting: name one.", nameof(options));
        var plan = DrawingPlan.Of(study.Alteration, study, options.Lettering, words, marks ?? LineFigures.Of(study, options.Show, options.Setting));
        if (views[0] == SeenIn.Both) plan = OverlayPlan.Of(plan);
        return (plan, new(views, Fields(options.Figure, words), words) { FirstSheet = options.FirstSheet, IsBare = options.Page == Page.Bare });
    }

    private static ReadResult Read(string text, string file, JobOptions? options, Func<string, string?> include)
    {
        JobSource source = new(file, text, (options ?? new()).Kinds, include);
        var reading = JobReader.Read(file, text, source.Kinds, include);
        var job = reading.Alteration is { } alteration && reading.Diagnostics.All(d => d.Severity < Severity.Error || d.Kind.Area == DiagnosticArea.Circuit)
            ? new Job(reading.Title, alteration, reading, source) : null;
        return new(job, reading.Diagnostics, reading.Sources);
    }

    // The culprit's place in the file.
    private Diagnostic Placed(Diagnostic diagnostic) =>
        diagnostic.Span is null && diagnostic.Items.Select(i => places.GetValueOrDefault(i)).FirstOrDefault(p => p is not null) is { } place ? diagnostic with { Span = place } : diagnostic;

    private Dictionary<string, string> Fields(ImmutableArray<string> figure, Vocabulary words)
    {
        var fields = TitleBlock.ToDictionary(f => f.Key, f => f.Value, StringComparer.Ordinal);
        fields.TryAdd("title", Title);
        if (!figure.IsEmpty) fields["title"] = SheetText.FigureTitle(figure, fields["title"], Alteration, words);
        fields.TryAdd("supplementary title", Alteration.Title);
        fields.TryAdd("document type", "Circuit diagram");
        return fields;
    }
}
