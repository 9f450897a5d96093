using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Studies.Figures;

namespace Hotside.Studies;

/// <summary>What becomes of a circuit in settings one after the other, each from where the one before left the relays.</summary>
public sealed class SequenceStudy
{
    private readonly Operation operation;

    internal SequenceStudy(Sequence sequence, Operation operation) => (Sequence, this.operation) = (sequence, operation);

    /// <summary>The sequence.</summary>
    public Sequence Sequence { get; }

    /// <summary>
    /// The figures of its steps, in order; worked out when asked for. What a step changes moves in the order in which the setting is written, conditions first, and contacts
    /// part before others close, so that what holds by itself can fall.
    /// </summary>
    public ImmutableArray<SettingFigures> Steps => operation.Through(Sequence);
}
