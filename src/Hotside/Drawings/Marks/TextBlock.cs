using System.Collections.Immutable;
using Hotside.Studies;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Drawings.Marks;

/// <summary>
/// What stands beside a symbol, measured before the part is placed: reference (with the change's triangle), name in at most two lines,
/// each rating in at most two, state word, badge, and by whom it is switched.
/// </summary>
internal sealed record TextBlock
{
    /// <summary>The part's reference.</summary>
    public required string Reference { get; init; }

    /// <summary>The change that touches it.</summary>
    public ChangeNumber? Number { get; init; }

    /// <summary>What it is; empty where the symbol says so.</summary>
    public string Name { get; init; } = "";

    /// <summary>Its ratings, one line each if they fit.</summary>
    public ImmutableArray<string> Ratings { get; init; } = [];

    /// <summary>What happens to it, in a word or two, in the colour of its number.</summary>
    public string StateWord { get; init; } = "";

    /// <summary>On which side it is switched.</summary>
    public SwitchedSide? Side { get; init; }

    /// <summary>Badges without words beside the reference, where a table has the words.</summary>
    public ImmutableArray<SwitchedSide> Signs { get; init; } = [];

    /// <summary>The words on the badge of that side.</summary>
    public string SideText { get; init; } = "";

    /// <summary>By whom, and with what current.</summary>
    public string By { get; init; } = "";

    /// <summary>Stands left of its symbol, its lines ending at the right.</summary>
    public bool RightAligned { get; init; }

    /// <summary>Greatest width in units at normal lettering, with which it grows; only badge and triangle may be wider.</summary>
    public double MaxWidth { get; init; } = 120;

    /// <summary>Lettering.</summary>
    public Lettering Lettering { get; init; } = Lettering.Normal;

    /// <summary>Baseline of the reference under the block's top: the symbol's centre lies a little below it.</summary>
    public double ReferenceBaseline => Number is not null ? 22.5 * Lettering.Factor : Signs.IsEmpty ? Lettering.BodyBold.CapHeight : (Lettering.BodyBold.CapHeight + Badge.MiniHeight) / 2;

    private double Room => MaxWidth * Lettering.Factor;

    /// <summary>The block as a piece.</summary>
    public Piece Measure()
    {
        var rows = new TextRows(RightAligned);
        double f = Lettering.Factor;
        rows.Add(HeadLine());
        foreach (string line in TextLines.Break(Name, Lettering.Body, Room, 2))
            rows.Text(line, Lettering.Body, ColourRole.Ink, Whole(line, Name));
        foreach (string rating in Ratings.Where(r => r.Length > 0))
        {
            foreach (string line in TextLines.Break(rating, Lettering.Small, Room, 2))
                rows.Text(line, Lettering.Small, ColourRole.Ink, Whole(line, rating));
        }

        if (StateWord.Length > 0)
            rows.Text(TextMeasure.Shorten(StateWord, Lettering.SmallBold, Room), Lettering.SmallBold, Number?.Colour ?? ColourRole.Ink, null);
        if (Side is { } side)
            rows.Gap(4 * f).Add(Badge.Of(side, SideText, Lettering));
        // What is found is told in full.
        foreach (string line in BySense())
            rows.Text(line, Lettering.Small, ColourRole.Quiet, Whole(line, By));
        return rows.Done();
    }

    // One statement a line, where that takes no line more.
    private ImmutableArray<string> BySense()
    {
        var lines = TextLines.Break(By, Lettering.Small, Room);
        string[] statements = By.Split("; ");
        ImmutableArray<string> bySense = [.. statements.SelectMany((s, i) => TextLines.Break(i < statements.Length - 1 ? s + ";" : s, Lettering.Small, Room))];
        return bySense.Length <= lines.Length ? bySense : lines;
    }

    private static string? Whole(string line, string all) => line.EndsWith('…') && !all.EndsWith('…') ? all : null;

    // Triangle and reference: side by side on the reference's baseline.
    private Piece HeadLine()
    {
        double f = Lettering.Factor, baseline = ReferenceBaseline, x = 0;
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        if (Number is { } number)
        {
            Piece triangle = Triangle.Of(number, Lettering);
            shapes.AddRange(triangle.Shapes);
            x = triangle.Width + (5 * f);
        }

        TextShape reference = TextShape.Of(Reference, Lettering.BodyBold, x, baseline, width: Room);
        shapes.Add(reference);
        x += reference.Width;
        foreach (var side in Signs)
        {
            Piece sign = Badge.Mini(side);
            x += 6 * f;
            shapes.AddRange(sign.At(x, baseline - (Lettering.BodyBold.CapHeight / 2) - (sign.Height / 2)));
            x += sign.Width;
        }

        return new(x, Number is null ? baseline : 24 * f, shapes.ToImmutable());
    }
}
