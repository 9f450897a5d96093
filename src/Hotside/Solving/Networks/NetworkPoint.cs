namespace Hotside.Solving.Networks;

/// <summary>Where a network settles.</summary>
/// <param name="Volts">The potential of each node against the reference.</param>
/// <param name="Steps">Newton's steps that it took.</param>
/// <param name="Residual">The greatest sum of currents that is left at a node, in amperes.</param>
/// <param name="IsConverged">Whether the currents close at every node to what rounding allows.</param>
internal sealed record NetworkPoint(double[] Volts, int Steps, double Residual, bool IsConverged)
{
    /// <summary>The volts along an edge, from its first end to its second.</summary>
    public double Across(NetworkEdge edge) => At(edge.A) - At(edge.B);

    /// <summary>The potential of a node or the reference.</summary>
    public double At(int node) => node < 0 ? 0 : Volts[node];
}
