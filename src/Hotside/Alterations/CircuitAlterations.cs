using Hotside.Circuits;

namespace Hotside.Alterations;

/// <summary>Begins alterations in code.</summary>
public static class CircuitAlterations
{
    /// <summary>Begins an alteration of a circuit.</summary>
    /// <param name="before">The circuit as it is.</param>
    /// <param name="title">What the alteration is called.</param>
    /// <returns>A builder whose calls are the changes.</returns>
    /// <exception cref="ArgumentException"><paramref name="title"/> is empty.</exception>
    public static AlterationBuilder Alter(this Circuit before, string title)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentException.ThrowIfNullOrWhiteSpace(title);
        return new(before, title);
    }
}
