namespace Hotside.Studies.Switching;

/// <summary>The set of states in which something holds, as a node of a shared decision diagram.</summary>
/// <param name="Space">The diagram.</param>
/// <param name="Node">The node; 0 is never, 1 is always.</param>
internal readonly record struct Condition(DecisionSpace Space, int Node)
{
    public bool IsNever => Node == 0;

    public bool IsAlways => Node == 1;

    /// <summary>Whether it depends on any variable.</summary>
    public bool IsOpen => Node > 1;

    /// <summary>The first variable on which it depends.</summary>
    public int TopVariable => Space.VariableOf(Node);

    public static Condition operator &(Condition a, Condition b) => new(a.Space, a.Space.And(a.Node, b.Node));

    public static Condition operator |(Condition a, Condition b) => new(a.Space, a.Space.Or(a.Node, b.Node));

    public static Condition operator !(Condition a) => new(a.Space, a.Space.Not(a.Node));

    /// <summary>What remains of it once a variable is known.</summary>
    public Condition Given(int variable, int value) => new(Space, Space.Restrict(Node, variable, value));

    /// <summary>What remains of it once some variables are known; −1 leaves one open.</summary>
    public Condition Given(ReadOnlySpan<int> values) => new(Space, Space.Restrict(Node, values));

    /// <summary>Whether every state of it is one of the other.</summary>
    public bool Implies(Condition other) => (this & !other).IsNever;

    /// <summary>Whether it holds in a state.</summary>
    public bool HoldsIn(ReadOnlySpan<int> state) => Space.Evaluate(Node, state);
}
