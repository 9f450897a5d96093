using System.Runtime.InteropServices;

namespace Hotside.Studies.Switching;

/// <summary>
/// Multi-valued decision diagrams: functions of positions, shared and hash-consed, so that two equal functions are one number.
/// A function is a node: 0 is never, 1 is always; a node has a child for each position of its variable.
/// </summary>
internal sealed class Diagrams(int[] positions)
{
    /// <summary>Beyond this many nodes a circuit is too tangled to be worked out exactly.</summary>
    public const int Budget = 200_000;

    public const int Never = 0, Always = 1;

    private readonly List<(int Variable, int[] Children)> nodes = [(int.MaxValue, []), (int.MaxValue, [])];
    private readonly Dictionary<Key, int> unique = [];
    private readonly Dictionary<(int, int), int> ands = [], ors = [];
    private readonly Dictionary<int, int> nots = [];

    /// <summary>How many variables there are.</summary>
    public int Variables => positions.Length;

    /// <summary>The variable that a node asks for; a very large number for never and always.</summary>
    public int VariableOf(int f) => nodes[f].Variable;

    /// <summary>What is left of a function once its top variable is in a position.</summary>
    public int Child(int f, int position) => nodes[f].Children[position];

    /// <summary>How many positions a variable has.</summary>
    public int PositionsOf(int variable) => positions[variable];

    /// <summary>Whether a variable is in one of some positions.</summary>
    public int In(int variable, params ReadOnlySpan<int> allowed)
    {
        int[] children = new int[positions[variable]];
        foreach (int position in allowed) children[position] = Always;
        return Node(variable, children);
    }

    public int Node(int variable, int[] children)
    {
        if (Array.TrueForAll(children, c => c == children[0])) return children[0];
        var key = new Key(variable, children);
        if (unique.TryGetValue(key, out int known)) return known;
        if (nodes.Count >= Budget) throw new BudgetException();
        nodes.Add((variable, children));
        unique.Add(key, nodes.Count - 1);
        return nodes.Count - 1;
    }

    public int And(int f, int g)
    {
        if (f == Never || g == Never) return Never;
        if (f == Always || f == g) return g;
        if (g == Always) return f;
        return Combined(ands, f, g, And);
    }

    public int Or(int f, int g)
    {
        if (f == Always || g == Always) return Always;
        if (f == Never || f == g) return g;
        if (g == Never) return f;
        return Combined(ors, f, g, Or);
    }

    public int Not(int f)
    {
        if (f <= Always) return 1 - f;
        if (nots.TryGetValue(f, out int known)) return known;
        var (variable, children) = nodes[f];
        int result = Node(variable, Array.ConvertAll(children, Not));
        nots[f] = result;
        nots[result] = f;
        return result;
    }

    public int Without(int f, int g) => And(f, Not(g));

    public bool Implies(int f, int g) => Without(f, g) == Never;

    /// <summary>A function with each replaced variable gone: where it was in a position, the condition of that position stands.</summary>
    public int Substitute(int f, IReadOnlyDictionary<int, int[]> conditions) => Substitute(f, conditions, []);

    /// <summary>The variables that a function depends on, in order.</summary>
    public IEnumerable<int> Support(int f)
    {
        var seen = new HashSet<int>();
        var found = new SortedSet<int>();
        var stack = new Stack<int>([f]);
        while (stack.TryPop(out int node))
        {
            if (node <= Always || !seen.Add(node)) continue;
            found.Add(nodes[node].Variable);
            foreach (int child in nodes[node].Children) stack.Push(child);
        }
        return found;
    }

    /// <summary>The value of a function where every variable has a position.</summary>
    public bool Value(int f, IReadOnlyList<int> state)
    {
        while (f > Always) f = nodes[f].Children[state[nodes[f].Variable]];
        return f == Always;
    }

    private int Combined(Dictionary<(int, int), int> cache, int f, int g, Func<int, int, int> operation)
    {
        var key = f < g ? (f, g) : (g, f);
        if (cache.TryGetValue(key, out int known)) return known;
        int top = Math.Min(nodes[f].Variable, nodes[g].Variable);
        int[] children = new int[positions[top]];
        for (int i = 0; i < children.Length; i++) children[i] = operation(At(f, top, i), At(g, top, i));
        int result = Node(top, children);
        cache[key] = result;
        return result;
    }

    private int At(int f, int variable, int position) => nodes[f].Variable == variable ? nodes[f].Children[position] : f;

    private int Substitute(int f, IReadOnlyDictionary<int, int[]> conditions, Dictionary<int, int> done)
    {
        if (f <= Always) return f;
        if (done.TryGetValue(f, out int known)) return known;
        var (variable, children) = nodes[f];
        int result = Never;
        if (conditions.TryGetValue(variable, out int[]? condition))
            for (int i = 0; i < children.Length; i++) result = Or(result, And(condition[i], Substitute(children[i], conditions, done)));
        else
            for (int i = 0; i < children.Length; i++) result = Or(result, And(In(variable, i), Substitute(children[i], conditions, done)));
        done[f] = result;
        return result;
    }

    private readonly struct Key(int variable, int[] children) : IEquatable<Key>
    {
        private readonly int variable = variable;
        private readonly int[] children = children;

        public bool Equals(Key other) => variable == other.variable && children.AsSpan().SequenceEqual(other.children);

        public override bool Equals(object? obj) => obj is Key other && Equals(other);

        public override int GetHashCode()
        {
            var hash = new HashCode();
            hash.Add(variable);
            hash.AddBytes(MemoryMarshal.AsBytes(children.AsSpan()));
            return hash.ToHashCode();
        }
    }
}

/// <summary>A circuit is too tangled for the budget; caught where the study is made.</summary>
internal sealed class BudgetException : Exception;
