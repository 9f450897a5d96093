namespace Hotside.Proposals;

/// <summary>What the file does not say and no rule may guess.</summary>
/// <param name="Item">The id of the part or wire.</param>
/// <param name="Text">What is asked, with the default that was used.</param>
public sealed record OpenQuestion(string Item, string Text)
{
    /// <summary>As it stands in the file: <c>ask G1: …</c>.</summary>
    public override string ToString() => $"ask {Item}: {Text}";
}
