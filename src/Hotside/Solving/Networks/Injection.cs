namespace Hotside.Solving.Networks;

/// <summary>Something whose current does not follow from the volts across it by a law that never falls: its current is sought apart.</summary>
/// <param name="In">The node that it takes its current from.</param>
/// <param name="Out">The node that it gives it to.</param>
internal abstract record Injection(int In, int Out);
