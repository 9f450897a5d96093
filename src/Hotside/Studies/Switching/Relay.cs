using Hotside.Circuits;

namespace Hotside.Studies.Switching;

/// <summary>An actuator that windings move, and where it goes.</summary>
internal sealed class Relay
{
    private Relay(Variable variable, int number, Condition[] next, Condition conflict)
    {
        Variable = variable;
        Number = number;
        Next = next;
        Conflict = conflict;
    }

    /// <summary>The actuator.</summary>
    public Variable Variable { get; }

    /// <summary>Its number in the diagram.</summary>
    public int Number { get; }

    /// <summary>For each position, when it is or goes there, as a function of free positions and of relays, itself included.</summary>
    public Condition[] Next { get; }

    /// <summary>When windings pull it into several positions at once.</summary>
    public Condition Conflict { get; }

    /// <summary>Whether it stays without current.</summary>
    public bool Stays => Variable.Actuator.Stays;

    /// <summary>The id of its part.</summary>
    public string Part => Variable.Part!;

    /// <summary>The relay of a variable.</summary>
    /// <param name="positions">The variables.</param>
    /// <param name="variable">One that windings move.</param>
    /// <param name="energised">When a winding of its part carries enough to pull.</param>
    public static Relay Of(Positions positions, Variable variable, Func<string, Condition> energised)
    {
        var space = positions.Space;
        var actuator = variable.Actuator;
        int number = positions.NumberOf(variable)!.Value;
        Condition Any(IEnumerable<string> coils) => coils.Aggregate(space.NeverHolds, (sum, coil) => sum | energised(coil));
        var pulled = actuator.Positions.Select(_ => space.NeverHolds).ToArray();
        var conflict = space.NeverHolds;
        foreach (var pull in actuator.Pulls)
        {
            int position = actuator.Positions.IndexOf(pull.Position);
            var by = Any(pull.Coils);
            for (int other = 0; other < pulled.Length; other++)
                if (other != position)
                    conflict |= pulled[other] & by;
            pulled[position] |= by;
        }

        // Of several pulls at once, which nobody defines, the later position wins over rest: the finding says so.
        var next = new Condition[pulled.Length];
        var taken = space.NeverHolds;
        for (int position = 1; position < next.Length; position++)
        {
            next[position] = pulled[position] & !taken;
            taken |= pulled[position];
        }
        next[0] = pulled[0] & !taken;
        taken |= pulled[0];
        var kept = Any(actuator.KeptBy);
        var left = space.AlwaysHolds & !taken;
        for (int position = 1; position < next.Length; position++)
        {
            var stays = left & space.Where(number, position) & (actuator.Stays ? space.AlwaysHolds : kept);
            next[position] |= stays;
            taken |= stays;
        }
        next[0] |= !taken;
        return new(variable, number, next, conflict);
    }
}
