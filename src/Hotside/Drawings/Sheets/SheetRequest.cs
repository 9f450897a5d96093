using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Symbols;
using Hotside.Wording;

namespace Hotside.Drawings.Sheets;

/// <summary>What is asked of a sheet.</summary>
/// <param name="Views">Which circuits it shows, in their order.</param>
/// <param name="TitleBlock">The fields of the title block.</param>
/// <param name="Words">Whose words.</param>
internal sealed record SheetRequest(SeenIn[] Views, IReadOnlyDictionary<string, string> TitleBlock, Vocabulary Words)
{
    /// <summary>Whether it is one of several: then cautions and changes stand on a sheet of their own.</summary>
    public bool IsInSet { get; init; }

    /// <summary>Whether it has no frame, no title block and no lists.</summary>
    public bool IsBare { get; init; }

    /// <summary>The paper of the sheets of text in a set; <see langword="null"/> where it is that of the others.</summary>
    public SheetSize? TextPaper { get; init; }

    /// <summary>The fields of the title blocks of all sheets of a set; none where it is one sheet.</summary>
    public ImmutableArray<IReadOnlyDictionary<string, string>> InSet { get; init; } = [];

    /// <summary>The number of the first sheet in a longer document; <see langword="null"/> where the drawing is the document.</summary>
    public int? FirstSheet { get; init; }

    /// <summary>The number that a sheet of the drawing has.</summary>
    /// <param name="index">Which sheet of the drawing, from 0.</param>
    public int NumberOf(int index) => index + (FirstSheet ?? 1);

    /// <summary>What is asked of one of several sheets.</summary>
    /// <param name="number">Its number and how many there are.</param>
    /// <param name="subject">What it is about: the supplementary title of its title block (ISO 7200, from memory); the job's own words where it has none.</param>
    public SheetRequest Of(string number, string? subject)
    {
        var fields = new Dictionary<string, string>(TitleBlock) { ["sheet"] = number };
        if (subject is not null) fields["supplementary title"] = subject;
        return this with { TitleBlock = fields };
    }

    /// <summary>Its number and how many there are.</summary>
    /// <param name="index">Which sheet of the drawing, from 0.</param>
    /// <param name="all">How many the drawing has.</param>
    public string SheetText(int index, int all) => $"{Numbers.Whole(NumberOf(index))} / {(FirstSheet is null ? Numbers.Whole(all) : Scene.SheetsUnknown)}";
}
