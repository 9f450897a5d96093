using Hotside.Diagnostics;

namespace Hotside.Orders.Harms;

/// <summary>A harm in one setting of one state.</summary>
/// <param name="Kind">In what way.</param>
/// <param name="Severity">How bad.</param>
/// <param name="Item">The part or wire.</param>
/// <param name="What">What happens, with value and unit, the setting left out.</param>
internal sealed record FoundHarm(HarmKind Kind, Severity Severity, string Item, string What)
{
    /// <summary>Whether a battery must stay off for it.</summary>
    public bool IsUnsafe => Severity >= Severity.Error;
}
