using System.Collections.Immutable;

namespace Hotside.Proposals.Rules;

/// <summary>A choice with several good answers.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Choices">The answers, the default first.</param>
/// <param name="Meaning">What it is about, in a line.</param>
internal sealed record OptionRule(string Name, ImmutableArray<string> Choices, string Meaning);
