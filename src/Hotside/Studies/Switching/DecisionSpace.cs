using System.Collections.Immutable;
using System.Runtime.CompilerServices;

namespace Hotside.Studies.Switching;

/// <summary>
/// Shared multi-valued decision diagrams over variables in a fixed order. Equal functions are the same node, so that a comparison is a comparison of numbers.
/// </summary>
/// <remarks>Not safe for several threads; every study makes its own.</remarks>
internal sealed class DecisionSpace
{
    private const int Never = 0, Always = 1;

    private readonly ImmutableArray<int> arities;
    private int budget;
    private readonly CancellationToken cancel;
    private readonly NodeTable nodes;
    private readonly OperationCache ands = new(), ors = new(), restrictions = new();
    private readonly Dictionary<int, int> nots = [], left = [];
    private readonly Dictionary<int, ImmutableArray<int>> supports = [];
    private readonly ConditionalWeakTable<Condition[]?[], Dictionary<int, int>> compositions = [];

    /// <summary>An empty diagram.</summary>
    /// <param name="arities">The number of values of each variable, in the order of the diagram.</param>
    /// <param name="budget">The greatest number of nodes.</param>
    /// <param name="cancel">Ends the work at the next node.</param>
    public DecisionSpace(ImmutableArray<int> arities, int budget = 200_000, CancellationToken cancel = default)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(budget, OperationCache.Bound);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(arities.Length, OperationCache.Bound >> 8);
        this.arities = arities;
        this.budget = budget;
        this.cancel = cancel;
        nodes = new(arities);
    }

    public int VariableCount => arities.Length;

    public int ArityOf(int variable) => arities[variable];

    public Condition NeverHolds => new(this, Never);

    public Condition AlwaysHolds => new(this, Always);

    public int VariableOf(int node) => nodes.VariableOf(node);

    public ReadOnlySpan<int> ChildrenOf(int node) => nodes.ChildrenOf(node);

    /// <summary>The states in which a variable has one of some values.</summary>
    public Condition Where(int variable, IEnumerable<int> values)
    {
        Span<int> kids = stackalloc int[arities[variable]];
        kids.Clear();
        foreach (int value in values) kids[value] = Always;
        return new(this, Make(variable, kids));
    }

    public Condition Where(int variable, int value)
    {
        Span<int> kids = stackalloc int[arities[variable]];
        kids.Clear();
        kids[value] = Always;
        return new(this, Make(variable, kids));
    }

    /// <summary>Does something that may take only so many more nodes; <see langword="null"/> when they do not suffice.</summary>
    public T? Within<T>(int more, Func<T> work) where T : struct
    {
        int whole = budget;
        budget = Math.Min(whole, nodes.Count + more);
        try
        {
            return work();
        }
        catch (DecisionBudgetException)
        {
            return null;
        }
        finally
        {
            budget = whole;
        }
    }

    public int And(int f, int g)
    {
        if (f == Never || g == Never) return Never;
        if (f == Always || f == g) return g;
        if (g == Always) return f;
        if (f > g) (f, g) = (g, f);
        if (ands.TryGet(f, g, out int result)) return result;
        ands.Put(f, g, result = Join(f, g, isAnd: true));
        return result;
    }

    public int Or(int f, int g)
    {
        if (f == Always || g == Always) return Always;
        if (f == Never || f == g) return g;
        if (g == Never) return f;
        if (f > g) (f, g) = (g, f);
        if (ors.TryGet(f, g, out int result)) return result;
        ors.Put(f, g, result = Join(f, g, isAnd: false));
        return result;
    }

    public int Not(int f)
    {
        if (f <= Always) return 1 - f;
        if (nots.TryGetValue(f, out int result)) return result;
        int variable = nodes.VariableOf(f);
        Span<int> kids = stackalloc int[arities[variable]];
        for (int i = 0; i < kids.Length; i++) kids[i] = Not(nodes.ChildOf(f, i));
        result = Make(variable, kids);
        nots[result] = f;
        return nots[f] = result;
    }

    public int Restrict(int f, int variable, int value)
    {
        int top = nodes.VariableOf(f);
        if (top > variable) return f;
        if (top == variable) return nodes.ChildOf(f, value);
        int what = (variable << 8) | value;
        if (restrictions.TryGet(f, what, out int result)) return result;
        Span<int> kids = stackalloc int[arities[top]];
        for (int i = 0; i < kids.Length; i++) kids[i] = Restrict(nodes.ChildOf(f, i), variable, value);
        restrictions.Put(f, what, result = Make(top, kids));
        return result;
    }

    /// <summary>What remains of a function once some variables are known; −1 leaves one open.</summary>
    public int Restrict(int f, ReadOnlySpan<int> values)
    {
        left.Clear();
        return Left(f, values);
    }

    private int Left(int f, ReadOnlySpan<int> values)
    {
        while (f > Always && values[nodes.VariableOf(f)] is >= 0 and var value) f = nodes.ChildOf(f, value);
        if (f <= Always || !nodes.ChildrenOf(f).ContainsAnyExceptInRange(Never, Always)) return f;
        if (left.TryGetValue(f, out int result)) return result;
        int variable = nodes.VariableOf(f);
        Span<int> kids = stackalloc int[arities[variable]];
        for (int i = 0; i < kids.Length; i++) kids[i] = Left(nodes.ChildOf(f, i), values);
        return left[f] = Make(variable, kids);
    }

    public bool Evaluate(int f, ReadOnlySpan<int> state)
    {
        while (f > Always) f = nodes.ChildOf(f, state[nodes.VariableOf(f)]);
        return f == Always;
    }

    /// <summary>Puts functions in the place of variables.</summary>
    /// <param name="condition">The condition.</param>
    /// <param name="functions">For each variable that is replaced, when it has which value; the others are <see langword="null"/>. What was worked out with it is kept as long as it is.</param>
    public Condition Compose(Condition condition, Condition[]?[] functions)
    {
        var done = compositions.GetOrCreateValue(functions);
        return new(this, Rewrite(condition.Node));

        int Rewrite(int f)
        {
            if (f <= Always) return f;
            if (done.TryGetValue(f, out int known)) return known;
            int variable = nodes.VariableOf(f), result = Never;
            var function = functions[variable];
            for (int i = 0; i < arities[variable]; i++)
            {
                int guard = function is null ? Where(variable, i).Node : function[i].Node;
                if (guard != Never) result = Or(result, And(guard, Rewrite(nodes.ChildOf(f, i))));
            }
            return done[f] = result;
        }
    }

    /// <summary>The variables on which a condition depends, in order.</summary>
    public ImmutableArray<int> SupportOf(Condition condition)
    {
        if (supports.TryGetValue(condition.Node, out var known)) return known;
        SortedSet<int> found = [];
        HashSet<int> seen = [];
        Stack<int> open = new([condition.Node]);
        while (open.TryPop(out int f))
        {
            if (f <= Always || !seen.Add(f)) continue;
            found.Add(nodes.VariableOf(f));
            foreach (int kid in nodes.ChildrenOf(f)) open.Push(kid);
        }
        return supports[condition.Node] = [.. found];
    }

    /// <summary>A state in which the condition holds, every variable in its first possible value; the condition is not never.</summary>
    public int[] AnyState(Condition condition)
    {
        int[] state = new int[arities.Length];
        for (int f = condition.Node; f > Always;)
        {
            var kids = nodes.ChildrenOf(f);
            int value = kids.IndexOfAnyExcept(Never);
            state[nodes.VariableOf(f)] = value;
            f = kids[value];
        }
        return state;
    }

    private int Join(int f, int g, bool isAnd)
    {
        int ofF = nodes.VariableOf(f), ofG = nodes.VariableOf(g), variable = Math.Min(ofF, ofG);
        Span<int> kids = stackalloc int[arities[variable]];
        for (int i = 0; i < kids.Length; i++)
        {
            int a = ofF == variable ? nodes.ChildOf(f, i) : f, b = ofG == variable ? nodes.ChildOf(g, i) : g;
            kids[i] = isAnd ? And(a, b) : Or(a, b);
        }
        return Make(variable, kids);
    }

    private int Make(int variable, ReadOnlySpan<int> kids)
    {
        if (!kids.ContainsAnyExcept(kids[0])) return kids[0];
        if (nodes.Find(variable, kids) is > 0 and var known) return known;
        cancel.ThrowIfCancellationRequested();
        if (nodes.Count >= budget) throw new DecisionBudgetException(budget);
        return nodes.Add(variable, kids);
    }
}
