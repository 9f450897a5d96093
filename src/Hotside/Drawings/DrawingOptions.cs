using System.Collections.Immutable;
using Hotside.Drawings;
using Hotside.Symbols.Texts;

namespace Hotside;

/// <summary>How a job is drawn.</summary>
public sealed record DrawingOptions
{
    /// <summary>The colours; by default those for paper.</summary>
    public Theme Theme { get; init => field = value ?? throw new ArgumentNullException(nameof(value), "Leave Theme out for the colours of paper."); } = Theme.Paper;

    /// <summary>
    /// The loads that are drawn, each with all that feeds and controls it and nothing else; the whole circuit when there are none. A part's id, or one of its loads:
    /// <c>H1</c>, <c>E3.tail</c>.
    /// </summary>
    /// <exception cref="ArgumentException">A name is missing.</exception>
    public ImmutableArray<string> Figure
    {
        get;
        init => field = value.IsDefault ? [] : !value.Any(string.IsNullOrWhiteSpace) ? value : throw new ArgumentException("A figure names each of its loads.", nameof(value));
    } = [];

    /// <summary>The paper; by default the smallest of A4 to A0 that holds the drawing.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is none of the papers.</exception>
    public Page Page { get; init => field = Enum.IsDefined(value) ? value : throw new ArgumentOutOfRangeException(nameof(value), value, "There is no such paper."); }

    /// <summary>How large it is lettered; normal by default.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is none of the sizes.</exception>
    public TextSize Text { get; init => field = Enum.IsDefined(value) ? value : throw new ArgumentOutOfRangeException(nameof(value), value, "There is no such size."); }

    /// <summary>The figures at the conductors; none by default. Where they are shown, the way of the current is marked by a band.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is none of them.</exception>
    public ShownFigures Show { get; init => field = Enum.IsDefined(value) ? value : throw new ArgumentOutOfRangeException(nameof(value), value, "There are no such figures."); }

    /// <summary>The setting of these figures, by its name; needed where figures are shown, and of no effect else.</summary>
    public string? Setting { get; init; }

    /// <summary>
    /// A job whose drawing this one resembles, such as the same one before it was edited: drawn with the same options, what need not move stands where it stands there, on the same
    /// paper. Where that makes no sound drawing, or does not fit, and on sheets that take several, it has no effect.
    /// </summary>
    public Job? Like { get; init; }

    /// <summary>The letters of that size.</summary>
    internal Lettering Lettering => Text == TextSize.Large ? Lettering.Large : Lettering.Normal;

    /// <summary>Whose words the texts use; American by default.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is none of the two.</exception>
    public Words Words { get; init => field = Enum.IsDefined(value) ? value : throw new ArgumentOutOfRangeException(nameof(value), value, "There are no such words."); }

    /// <summary>The number of the first sheet where the drawing goes into a longer document; how many there are is filled in later, in the place of <see cref="Scene.SheetsUnknown"/>.</summary>
    internal int? FirstSheet { get; init; }
}
