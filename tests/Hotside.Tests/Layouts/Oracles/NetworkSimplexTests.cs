using Google.OrTools.LinearSolver;
using Hotside.Layouts.Passes;

namespace Hotside.Tests.Layouts.Oracles;

/// <summary>The network simplex against linear programming (GLOP of OR-Tools), on systems as rows and columns make them.</summary>
public class NetworkSimplexTests
{
    [Fact]
    public void Its_sum_of_lengths_is_that_of_linear_programming()
    {
        var random = new SplitMix(7);
        for (int system = 0; system < 150; system++)
        {
            var (variables, atLeast, near) = Random(random);
            var simplex = new NetworkSimplex();
            for (int i = 0; i < variables; i++) simplex.AddVariable();
            foreach (var c in atLeast) simplex.AtLeast(c.From, c.To, c.Length, c.Weight);
            foreach (var n in near) simplex.Near(n.A, n.AOffset, n.B, n.BOffset, n.Weight);
            int[] x = simplex.Solve()!;
            Assert.All(atLeast, c => Assert.True(x[c.To] - x[c.From] >= c.Length));
            long sum = atLeast.Sum(c => (long)c.Weight * (x[c.To] - x[c.From])) + near.Sum(n => (long)n.Weight * Math.Abs(x[n.A] + n.AOffset - x[n.B] - n.BOffset));
            Assert.Equal(LeastBySolver(variables, atLeast, near), sum, 1e-3);
        }
    }

    // Ordered rows of variables with distances, as neighbours have them, and pulls between any two.
    private static (int Variables, (int From, int To, int Length, int Weight)[], (int A, int AOffset, int B, int BOffset, int Weight)[]) Random(SplitMix random)
    {
        int rows = 2 + random.Below(5), wide = 2 + random.Below(9), variables = rows * wide;
        var atLeast = from row in Enumerable.Range(0, rows)
                      from at in Enumerable.Range(0, wide - 1)
                      select ((row * wide) + at, (row * wide) + at + 1, 1 + random.Below(12), random.Below(3) == 0 ? random.Below(5) : 0);
        var near = Enumerable.Range(0, variables * 2).Select(_ => (random.Below(variables), random.Below(6), random.Below(variables), random.Below(6), 1 + random.Below(40)));
        return (variables, [.. atLeast], [.. near.Where(n => n.Item1 != n.Item3)]);
    }

    private static double LeastBySolver(int variables, (int From, int To, int Length, int Weight)[] atLeast, (int A, int AOffset, int B, int BOffset, int Weight)[] near)
    {
        using var solver = Solver.CreateSolver("GLOP");
        var x = solver.MakeNumVarArray(variables, -1e4, 1e4);
        var sum = new LinearExpr();
        foreach (var c in atLeast)
        {
            solver.Add(x[c.To] - x[c.From] >= c.Length);
            sum += c.Weight * (x[c.To] - x[c.From]);
        }
        foreach (var n in near)
        {
            var apart = solver.MakeNumVar(0, 1e5, "");
            solver.Add(apart >= x[n.A] + n.AOffset - x[n.B] - n.BOffset);
            solver.Add(apart >= x[n.B] + n.BOffset - x[n.A] - n.AOffset);
            sum += n.Weight * apart;
        }
        solver.Minimize(sum);
        Assert.Equal(Solver.ResultStatus.OPTIMAL, solver.Solve());
        return solver.Objective().Value();
    }
}
