using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Solving.Laws;

namespace Hotside.Solving;

/// <summary>A law between two nodes of a circuit, and when it holds.</summary>
/// <param name="Closed">The law while the condition holds; <see langword="null"/>: open then.</param>
/// <param name="Open">The law while it does not.</param>
/// <param name="When">The condition: every test holds.</param>
internal sealed record ModelEdge(Law? Closed, Law? Open, ImmutableArray<StateTest> When)
{
    /// <summary>The law in the first moment, in place of <see cref="Closed"/>.</summary>
    public Law? AtOnce { get; init; } = Closed;

    /// <summary>Whether it is a straight line whenever it conducts.</summary>
    public bool IsStraight => IsLine(Closed) && IsLine(Open) && IsLine(AtOnce);

    private static bool IsLine(Law? law) => law is null or ClampLaw { IsLine: true };

    /// <summary>The law in a state.</summary>
    /// <param name="state">The position of each variable.</param>
    /// <param name="before">The state that is being left, where contacts part before others close; else the same.</param>
    /// <param name="isAtOnce">Whether in the first moment.</param>
    public Law? LawIn(int[] state, int[] before, bool isAtOnce = false)
    {
        foreach (var test in When)
            if (!test.Holds(state) || !test.Holds(before))
                return Open;
        return isAtOnce ? AtOnce : Closed;
    }
}

/// <summary>Whether a variable of a circuit is in one of some positions.</summary>
/// <param name="Variable">The variable's index among the circuit's.</param>
/// <param name="Positions">Which positions pass, by their index.</param>
internal sealed record StateTest(int Variable, ImmutableArray<bool> Positions)
{
    /// <summary>Whether it passes in a state.</summary>
    public bool Holds(int[] state) => Positions[state[Variable]];
}

/// <summary>An element of a part within the network.</summary>
/// <param name="Part">The part.</param>
/// <param name="Element">The element.</param>
/// <param name="A">The node of its first end; a source's plus pole.</param>
/// <param name="B">The node of its second end.</param>
/// <param name="FirstEdge">Its first edge.</param>
/// <param name="EdgeCount">The number of its edges, which are parallel.</param>
/// <param name="Regulator">The number of its current that is sought apart, as a regulator's is; −1 when it has none.</param>
internal sealed record ModelElement(Part Part, Element Element, int A, int B, int FirstEdge, int EdgeCount, int Regulator)
{
    /// <summary>The volts it is made for.</summary>
    public required double RatedVolts { get; init; }
}
