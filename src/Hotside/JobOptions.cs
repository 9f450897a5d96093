using Hotside.Kinds;

namespace Hotside;

/// <summary>How a job file is read.</summary>
public sealed record JobOptions
{
    /// <summary>The part kinds that the file may use, beside those it brings itself; by default those that come with the library.</summary>
    public Catalogue Kinds { get; init => field = value ?? throw new ArgumentNullException(nameof(value), "Leave Kinds out for the kinds of the library."); } = Catalogue.Standard;
}
