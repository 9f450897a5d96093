using System.Collections.Immutable;

namespace Hotside.Circuits;

/// <summary>Settings one after the other, as hands go through them. Relays begin each step where the one before left them.</summary>
/// <param name="Name">Its name, such as <c>start and drive off</c>.</param>
/// <param name="Steps">The settings, at least one.</param>
public sealed record Sequence(string Name, ImmutableArray<Setting> Steps)
{
    /// <summary>The name of the step in which everything rests; a setting of the job of that name comes before it.</summary>
    public const string AllOff = "all off";

    /// <summary>Whether both say the same; arrays are compared by content.</summary>
    /// <param name="other">The other sequence.</param>
    public bool Equals(Sequence? other) => other is not null && Name == other.Name && Steps.AsSpan().SequenceEqual(other.Steps.AsSpan());

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Name, Steps.Length);

    /// <summary>A sequence of settings that are named; <see langword="null"/> and the first name that is none, when one is not there.</summary>
    internal static Sequence? Of(string name, IEnumerable<string> steps, ImmutableArray<Setting> settings, out string? unknown)
    {
        unknown = null;
        var found = ImmutableArray.CreateBuilder<Setting>();
        foreach (string step in steps)
        {
            var setting = settings.FirstOrDefault(s => s.Name == step) ?? (step == AllOff ? new(AllOff, [], []) : null);
            if (setting is null)
            {
                unknown = step;
                return null;
            }
            found.Add(setting);
        }
        return new(name, found.ToImmutable());
    }
}
