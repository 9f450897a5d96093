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
}
