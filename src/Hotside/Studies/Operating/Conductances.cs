namespace Hotside.Studies.Operating;

/// <summary>
/// Node potentials of a network of conductances with currents fed in, by eliminating node after node (star to mesh). Nothing is subtracted, so that conductances
/// of any spread may stand side by side; an island without a way to the reference gets 0 V somewhere, and the right differences.
/// </summary>
internal static class Conductances
{
    /// <summary>Solves a network.</summary>
    /// <param name="between">Conductances between nodes in siemens; symmetric; is used up.</param>
    /// <param name="toReference">Conductances to the reference in siemens; is used up.</param>
    /// <param name="injected">Currents into the nodes in amperes; is used up.</param>
    /// <returns>The potentials against the reference in volts.</returns>
    public static double[] Solve(double[,] between, double[] toReference, double[] injected)
    {
        int count = injected.Length;
        double[] sums = new double[count], potentials = new double[count];
        for (int k = count - 1; k >= 0; k--)
        {
            double sum = toReference[k];
            for (int j = 0; j < k; j++) sum += between[k, j];
            sums[k] = sum;
            if (sum == 0) continue;
            for (int i = 0; i < k; i++)
            {
                double share = between[k, i] / sum;
                if (share == 0) continue;
                toReference[i] += share * toReference[k];
                injected[i] += share * injected[k];
                for (int j = 0; j < k; j++)
                    if (j != i)
                        between[i, j] += share * between[k, j];
            }
        }
        for (int k = 0; k < count; k++)
        {
            if (sums[k] == 0) continue;
            double flow = injected[k];
            for (int j = 0; j < k; j++) flow += between[k, j] * potentials[j];
            potentials[k] = flow / sums[k];
        }
        return potentials;
    }
}
