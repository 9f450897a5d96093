using Hotside.Solving.Laws;
using Hotside.Solving.Networks;

namespace Hotside.Tests.Solving;

/// <summary>A network made from a seed: resistances of any size, lamps, diodes, motors, sources with limits, joints of a microhm, some of it open.</summary>
internal sealed class RandomNetwork
{
    private readonly Random random;

    private RandomNetwork(int seed, int nodes, bool onlyLines)
    {
        random = new(seed);
        List<NetworkEdge> edges = [];
        List<Law?> laws = [];
        void Add(int a, int b, Law? law)
        {
            edges.Add(new(a, b));
            laws.Add(law);
        }
        Add(0, NetworkEdge.Reference, new ClampLaw(100, 12.6));
        for (int i = 1; i < nodes; i++) Add(random.Next(-1, i), i, Any(onlyLines));
        for (int i = 0; i < nodes / 2; i++) Add(random.Next(nodes), random.Next(-1, nodes), Any(onlyLines));
        Network = new(nodes, [.. edges]);
        Laws = [.. laws];
    }

    public Network Network { get; }

    public Law?[] Laws { get; }

    /// <summary>The network of a seed.</summary>
    public static RandomNetwork Of(int seed, bool onlyLines = false) => new(seed, 5 + (seed * 7 % 120), onlyLines);

    /// <summary>The network of a size, of resistances and sources alone.</summary>
    public static RandomNetwork Lines(int seed, int nodes) => new(seed, nodes, onlyLines: true);

    private Law? Any(bool onlyLines) => random.Next(onlyLines ? 3 : 13) switch
    {
        0 or 1 => ClampLaw.Resistance(Math.Pow(10, (5 * random.NextDouble()) - 2)),
        2 => new ClampLaw(1 / (0.01 + random.NextDouble()), 14 * random.NextDouble()),
        3 => ClampLaw.Resistance(CopperResistance.Contact),
        4 => new LampLaw(12, 0.1 + (5 * random.NextDouble())),
        5 => new ClampLaw(50, 0.7, Least: 0),
        6 => new FanLaw(12, 5, 0.6),
        7 => new SeriesFanLaw(12, 5, 0.6),
        8 => new ClampLaw(1.7, 0, -5, 5),
        9 => new ClampLaw(20, 14.3, -30, 0),
        10 => new ClampLaw(0.4, 7.2, Least: 0),
        11 => null,
        _ => new LampLaw(6, 1),
    };
}
