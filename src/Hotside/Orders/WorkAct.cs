namespace Hotside.Orders;

/// <summary>One act of a work order: the smallest thing a hand does, in a line.</summary>
/// <param name="Type">What is done.</param>
/// <param name="Item">The part or wire; empty where the whole vehicle is meant.</param>
/// <param name="Change">The number of the change that it belongs to; <see langword="null"/> for what every order has.</param>
/// <param name="Text">What to do, as a sentence.</param>
public sealed record WorkAct(WorkActType Type, string Item, int? Change, string Text)
{
    /// <summary>What stands in the triangle of its change on the drawing: <c>4</c>, or <c>A1</c> for what was fitted otherwise; empty for what every order has.</summary>
    public string Label { get; internal init; } = "";

    /// <summary>For a wire's end, its terminal, such as <c>K1.85</c>; <see langword="null"/> for all else.</summary>
    public string? At { get; internal init; }

    /// <summary>Whether it is done already.</summary>
    public bool IsDone { get; internal init; }
}
