namespace Hotside.Circuits;

/// <summary>A terminal bolted straight to another node: a joint without a conductor.</summary>
/// <param name="Terminal">The terminal of the part that has the joint; <c>case</c> is not stated here but as the part's mount.</param>
/// <param name="On">What it is bolted to.</param>
public sealed record Joint(string Terminal, End On);
