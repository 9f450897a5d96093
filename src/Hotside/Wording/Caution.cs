using System.Collections.Immutable;

namespace Hotside.Wording;

/// <summary>Something to mind while working.</summary>
/// <param name="Text">A sentence or two.</param>
/// <param name="Items">The ids of the parts and conductors that call for it; empty where the work as such does.</param>
internal sealed record Caution(string Text, ImmutableArray<string> Items);
