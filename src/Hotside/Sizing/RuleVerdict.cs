using Hotside.Circuits;

namespace Hotside.Sizing;

/// <summary>What one rule says of a conductor.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Outcome">Whether it is kept.</param>
public sealed record RuleVerdict(SizingRule Rule, SizingOutcome Outcome)
{
    /// <summary>How much of what the rule allows is used: 1 is the limit, above it the rule is broken; <see langword="null"/> where it is not judged.</summary>
    public double? Share { get; init; }

    /// <summary>What is left, as a part of what the rule allows: 0.2 is a fifth; below 0 where the rule is broken; <see langword="null"/> where it is not judged.</summary>
    public double? Margin => 1 - Share;

    /// <summary>The smallest size made that keeps the rule, all else as it is; <see langword="null"/> where it is not judged or no size does.</summary>
    public WireSize? LeastSize { get; init; }
}
