namespace Hotside.Studies.Switching;

/// <summary>A decision diagram has outgrown its budget; whoever asked answers approximately instead.</summary>
internal sealed class DecisionBudgetException(int nodes) : Exception(FormattableString.Invariant($"The decision diagram has more than {nodes} nodes."));
