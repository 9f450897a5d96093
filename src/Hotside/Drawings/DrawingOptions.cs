using Hotside.Drawings;

namespace Hotside;

/// <summary>How a job is drawn.</summary>
public sealed record DrawingOptions
{
    /// <summary>The colours; by default those for paper.</summary>
    public Theme Theme { get; init; } = Theme.Paper;

    /// <summary>Whose words the texts use; American by default.</summary>
    public Words Words { get; init; }
}
