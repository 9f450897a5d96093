namespace Hotside.Layouts;

/// <summary>The box of a conductor's label.</summary>
/// <param name="OnVertical">Stands beside a vertical run, else beside a horizontal one.</param>
/// <param name="Side">The side of the line on which the label stands.</param>
internal sealed record PlacedLabel(string Wire, double X, double Y, double Width, double Height, bool OnVertical, Side Side)
{
    /// <summary>The end that it names, where the line does not show which it is.</summary>
    public NamedEnd Names { get; init; }
}

/// <summary>An end of a conductor that its label names.</summary>
internal enum NamedEnd
{
    /// <summary>The line shows both.</summary>
    None,

    /// <summary>Where it comes from.</summary>
    From,

    /// <summary>Where it goes to.</summary>
    To,
}
