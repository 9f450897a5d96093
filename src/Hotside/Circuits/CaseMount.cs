namespace Hotside.Circuits;

/// <summary>What a part's case stands on.</summary>
/// <param name="On">The node; <see langword="null"/> when the case is insulated and touches nothing.</param>
internal sealed record CaseMount(End? On)
{
    /// <summary>On the chassis.</summary>
    public static CaseMount OnChassis { get; } = new(End.Chassis);

    /// <summary>On nothing.</summary>
    public static CaseMount Insulated { get; } = new((End?)null);
}
