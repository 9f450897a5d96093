using Hotside.Diagnostics;

namespace Hotside.Alterations;

/// <summary>One number of a list that needs another to come before it.</summary>
/// <param name="First">The group that comes first.</param>
/// <param name="Then">The group that needs it.</param>
/// <param name="Kind">Why, as a note on the group that has to wait.</param>
/// <param name="What">The part or conductor that has to wait.</param>
/// <param name="For">The part or conductor for which it waits.</param>
internal sealed record Need(int First, int Then, DiagnosticKind Kind, string What, string For);
