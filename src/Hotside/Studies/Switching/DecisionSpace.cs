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
    private readonly List<int> variables = [int.MaxValue, int.MaxValue];
    private readonly List<int[]> children = [[], []];
    private readonly Dictionary<int, List<int>> unique = [];
    private readonly Dictionary<(int, int), int> ands = [];
    private readonly Dictionary<(int, int), int> ors = [];
    private readonly Dictionary<int, int> nots = [];
    private readonly Dictionary<(int, int, int), int> restrictions = [];
    private readonly ConditionalWeakTable<Condition[]?[], Dictionary<int, int>> compositions = [];

    /// <summary>An empty diagram.</summary>
    /// <param name="arities">The number of values of each variable, in the order of the diagram.</param>
    /// <param name="budget">The greatest number of nodes.</param>
    /// <param name="cancel">Ends the work at the next node.</param>
    public DecisionSpace(ImmutableArray<int> arities, int budget = 200_000, CancellationToken cancel = default)
    {
        this.arities = arities;
        this.budget = budget;
        this.cancel = cancel;
    }

    public int VariableCount => arities.Length;

    public int ArityOf(int variable) => arities[variable];

    public Condition NeverHolds => new(this, Never);

    public Condition AlwaysHolds => new(this, Always);

    public int VariableOf(int node) => variables[node];

    public ReadOnlySpan<int> ChildrenOf(int node) => children[node];

    /// <summary>The states in which a variable has one of some values.</summary>
    public Condition Where(int variable, IEnumerable<int> values)
    {
        int[] kids = new int[arities[variable]];
        foreach (int value in values) kids[value] = Always;
        return new(this, Make(variable, kids));
    }

    public Condition Where(int variable, int value) => Where(variable, [value]);

    /// <summary>Does something that may take only so many more nodes; <see langword="null"/> when they do not suffice.</summary>
    public T? Within<T>(int nodes, Func<T> work) where T : struct
    {
        int whole = budget;
        budget = Math.Min(whole, variables.Count + nodes);
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
        var key = f < g ? (f, g) : (g, f);
        if (!ands.TryGetValue(key, out int result)) ands[key] = result = Join(f, g, And);
        return result;
    }

    public int Or(int f, int g)
    {
        if (f == Always || g == Always) return Always;
        if (f == Never || f == g) return g;
        if (g == Never) return f;
        var key = f < g ? (f, g) : (g, f);
        if (!ors.TryGetValue(key, out int result)) ors[key] = result = Join(f, g, Or);
        return result;
    }

    public int Not(int f)
    {
        if (f <= Always) return 1 - f;
        if (nots.TryGetValue(f, out int result)) return result;
        int[] kids = new int[children[f].Length];
        for (int i = 0; i < kids.Length; i++) kids[i] = Not(children[f][i]);
        return nots[f] = Make(variables[f], kids);
    }

    public int Restrict(int f, int variable, int value)
    {
        if (variables[f] > variable) return f;
        if (variables[f] == variable) return children[f][value];
        if (restrictions.TryGetValue((f, variable, value), out int result)) return result;
        int[] kids = new int[children[f].Length];
        for (int i = 0; i < kids.Length; i++) kids[i] = Restrict(children[f][i], variable, value);
        return restrictions[(f, variable, value)] = Make(variables[f], kids);
    }

    public bool Evaluate(int f, ReadOnlySpan<int> state)
    {
        while (f > Always) f = children[f][state[variables[f]]];
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
            int variable = variables[f], result = Never;
            var function = functions[variable];
            for (int i = 0; i < children[f].Length; i++)
            {
                int guard = function is null ? Where(variable, i).Node : function[i].Node;
                if (guard != Never) result = Or(result, And(guard, Rewrite(children[f][i])));
            }
            return done[f] = result;
        }
    }

    /// <summary>The variables on which a condition depends, in order.</summary>
    public ImmutableArray<int> SupportOf(Condition condition)
    {
        SortedSet<int> found = [];
        HashSet<int> seen = [];
        Stack<int> open = new([condition.Node]);
        while (open.TryPop(out int f))
        {
            if (f <= Always || !seen.Add(f)) continue;
            found.Add(variables[f]);
            foreach (int kid in children[f]) open.Push(kid);
        }
        return [.. found];
    }

    /// <summary>A state in which the condition holds, every variable in its first possible value; the condition is not never.</summary>
    public int[] AnyState(Condition condition)
    {
        int[] state = new int[arities.Length];
        for (int f = condition.Node; f > Always;)
        {
            int value = Array.FindIndex(children[f], kid => kid != Never);
            state[variables[f]] = value;
            f = children[f][value];
        }
        return state;
    }

    private int Join(int f, int g, Func<int, int, int> operation)
    {
        int variable = Math.Min(variables[f], variables[g]);
        int[] kids = new int[arities[variable]];
        for (int i = 0; i < kids.Length; i++)
            kids[i] = operation(variables[f] == variable ? children[f][i] : f, variables[g] == variable ? children[g][i] : g);
        return Make(variable, kids);
    }

    private int Make(int variable, int[] kids)
    {
        if (Array.TrueForAll(kids, kid => kid == kids[0])) return kids[0];
        HashCode hash = new();
        hash.Add(variable);
        foreach (int kid in kids) hash.Add(kid);
        int code = hash.ToHashCode();
        if (!unique.TryGetValue(code, out var bucket)) unique[code] = bucket = [];
        foreach (int node in bucket)
            if (variables[node] == variable && children[node].AsSpan().SequenceEqual(kids))
                return node;
        cancel.ThrowIfCancellationRequested();
        if (variables.Count >= budget) throw new DecisionBudgetException(budget);
        variables.Add(variable);
        children.Add(kids);
        bucket.Add(variables.Count - 1);
        return variables.Count - 1;
    }
}
