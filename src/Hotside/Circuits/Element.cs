namespace Hotside.Circuits;

/// <summary>An inner element of a part kind, between two of its terminals or inner nodes.</summary>
/// <param name="Name">Its name within the kind, such as <c>coil</c>.</param>
/// <param name="Type">What it does.</param>
/// <param name="From">Its first end: a terminal, an inner node or <c>case</c>. A source's first end is plus.</param>
/// <param name="To">Its second end.</param>
public sealed record Element(string Name, ElementType Type, string From, string To)
{
    /// <summary>Whether current flows from the first end to the second only.</summary>
    public bool IsOneWay { get; init; }

    /// <summary>Whether a source takes either polarity, as a generator does once polarised.</summary>
    public bool TakesEitherPolarity { get; init; }

    /// <summary>Whether a dropper holds its output against the case.</summary>
    public bool IsAgainstCase { get; init; }

    /// <summary>The terminal that a dropper holds its output against, where that is not the case; <see langword="null"/>: the return of the vehicle.</summary>
    public string? Against { get; init; }

    /// <summary>Whether it is no load of its own in tables.</summary>
    public bool IsInternal { get; init; }

    /// <summary>Whether a contact interrupts by itself and so controls nothing.</summary>
    public bool IsNoControl { get; init; }

    /// <summary>What decides by which law it draws current.</summary>
    internal ElementTraits Traits { get; init; }

    /// <summary>When a contact is closed, or a source gives; <see langword="null"/>: always.</summary>
    public ElementCondition? When { get; init; }

    /// <summary>Whether it consumes: a lamp, motor, coil, heater, horn, gauge or electronics.</summary>
    public bool IsConsumer => Type is >= ElementType.Lamp and <= ElementType.Electronics;

    /// <summary>Whether it is a source.</summary>
    public bool IsSource => Type == ElementType.Source;

    /// <summary>Whether it gives current only while an engine turns it; a panel, which light drives, is no machine.</summary>
    internal bool IsMachine => IsSource && When?.Tests.Any(t => t.Actuator == Engine) == true;

    /// <summary>The condition that all machines share.</summary>
    internal const string Engine = "engine";

    /// <summary>Whether it is in line and taken as without resistance.</summary>
    public bool IsLink => Type is ElementType.Contact or ElementType.Link or ElementType.Fuse or ElementType.Breaker or ElementType.Shunt;

    /// <summary>Whether it is in line at all.</summary>
    public bool IsInLine => IsLink || Type is ElementType.Resistor or ElementType.Sender or ElementType.Diode or ElementType.Dropper;

    /// <summary>Whether current passes in one direction only, by type or by statement.</summary>
    public bool Directs => IsOneWay || Type is ElementType.Diode || (Type is ElementType.Dropper && !Traits.HasFlag(ElementTraits.Pulsing));
}
