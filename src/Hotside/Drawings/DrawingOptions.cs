using Hotside.Drawings;

namespace Hotside;

/// <summary>How a job is drawn.</summary>
public sealed record DrawingOptions
{
    /// <summary>The colours; by default those for paper.</summary>
    public Theme Theme { get; init => field = value ?? throw new ArgumentNullException(nameof(value), "Leave Theme out for the colours of paper."); } = Theme.Paper;

    /// <summary>Whose words the texts use; American by default.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is none of the two.</exception>
    public Words Words { get; init => field = Enum.IsDefined(value) ? value : throw new ArgumentOutOfRangeException(nameof(value), value, "There are no such words."); }
}
