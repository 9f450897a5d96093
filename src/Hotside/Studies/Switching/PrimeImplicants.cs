using System.Collections.Immutable;

namespace Hotside.Studies.Switching;

/// <summary>
/// The prime implicants of a condition over sets of positions: products that cannot be widened by another position, nor by leaving a variable out.
/// </summary>
/// <remarks>
/// Recursion on the first variable. For every set P of its values let f(P) be what holds for all of them; a prime of f(P) that is not one of any f(P and one more)
/// is, together with P, a prime of f. Lists are cut at <see cref="Limit"/>, for their number may be exponential where the diagram is small.
/// </remarks>
internal sealed class PrimeImplicants(DecisionSpace space)
{
    /// <summary>The greatest number of primes that is looked at.</summary>
    public const int Limit = 128;

    private readonly Dictionary<int, ImmutableArray<Cube>> done = [];

    private readonly HashSet<int> cut = [];

    /// <summary>Whether the list of a condition, once it was asked for, is cut or made from one that is.</summary>
    public bool IsCut(Condition wanted, Condition indifferent) => cut.Contains((wanted | indifferent).Node);

    /// <summary>The primes of a condition that meet what is wanted of it.</summary>
    /// <param name="wanted">The states that matter.</param>
    /// <param name="indifferent">The states that may be in or out.</param>
    public ImmutableArray<Cube> Of(Condition wanted, Condition indifferent)
    {
        var core = wanted & !indifferent;
        if (core.IsNever) return [];
        // Every prime of a condition meets it.
        if (core.Node == (wanted | indifferent).Node) return Primes(core.Node);
        return [.. Primes((wanted | indifferent).Node).Where(cube => Meets(cube, 0, core.Node, []))];
    }

    // Whether some state of the cube is one of the function; nodes from which there was no way are not looked at again.
    private bool Meets(Cube cube, int at, int f, HashSet<int> done)
    {
        if (f <= 1) return f == 1;
        if (done.Contains(f)) return false;
        int variable = space.VariableOf(f);
        while (at < cube.Sets.Length && cube.Sets[at].Variable < variable) at++;
        if (at < cube.Sets.Length && cube.Sets[at].Variable == variable)
        {
            foreach (int value in cube.Sets[at].Values)
                if (Meets(cube, at + 1, space.ChildrenOf(f)[value], done))
                    return true;
        }
        else
        {
            foreach (int child in space.ChildrenOf(f))
                if (Meets(cube, at, child, done))
                    return true;
        }
        done.Add(f);
        return false;
    }

    private ImmutableArray<Cube> Primes(int f)
    {
        if (f == 0) return [];
        if (f == 1) return [Cube.Empty];
        if (done.TryGetValue(f, out var known)) return known;
        int variable = space.VariableOf(f), arity = space.ArityOf(variable);
        int[] kids = space.ChildrenOf(f).ToArray();
        int[] common = new int[1 << arity];
        common[0] = 1;
        for (int set = 1; set < common.Length; set++)
        {
            int lowest = int.TrailingZeroCount(set);
            common[set] = space.And(common[set & (set - 1)], kids[lowest]);
        }
        var primes = ImmutableArray.CreateBuilder<Cube>();
        for (int set = common.Length - 1; set > 0; set--)
            foreach (var cube in Primes(common[set]))
            {
                if (CanWiden(cube, set, arity, common)) continue;
                if (primes.Count == Limit)
                {
                    cut.Add(f);
                    break;
                }
                primes.Add(set == common.Length - 1 ? cube : cube.With(variable, [.. Enumerable.Range(0, arity).Where(i => (set >> i & 1) == 1)]));
            }
        if (common.Any(cut.Contains)) cut.Add(f);
        return done[f] = primes.ToImmutable();
    }

    private bool CanWiden(Cube cube, int set, int arity, int[] common)
    {
        for (int i = 0; i < arity; i++)
            if ((set >> i & 1) == 0 && LiesIn(cube, 0, common[set | 1 << i], []))
                return true;
        return false;
    }

    // Whether every state of the cube is one of the function; nodes that were found to hold are not looked at again.
    private bool LiesIn(Cube cube, int at, int f, HashSet<int> done)
    {
        if (f <= 1) return f == 1;
        if (done.Contains(f)) return true;
        int variable = space.VariableOf(f);
        while (at < cube.Sets.Length && cube.Sets[at].Variable < variable) at++;
        if (at < cube.Sets.Length && cube.Sets[at].Variable == variable)
        {
            foreach (int value in cube.Sets[at].Values)
                if (!LiesIn(cube, at + 1, space.ChildrenOf(f)[value], done))
                    return false;
        }
        else
        {
            foreach (int child in space.ChildrenOf(f))
                if (!LiesIn(cube, at, child, done))
                    return false;
        }
        return done.Add(f);
    }
}

/// <summary>A product of sets of positions.</summary>
/// <param name="Sets">For each variable concerned, in the order of the diagram, the values it may have.</param>
internal sealed record Cube(ImmutableArray<(int Variable, ImmutableArray<int> Values)> Sets)
{
    public static Cube Empty { get; } = new([]);

    public Cube With(int variable, ImmutableArray<int> values) => new([(variable, values), .. Sets]);
}
