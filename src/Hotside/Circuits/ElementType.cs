namespace Hotside.Circuits;

/// <summary>What an inner element of a part does.</summary>
public enum ElementType
{
    /// <summary>A filament or another light.</summary>
    Lamp,

    /// <summary>An armature.</summary>
    Motor,

    /// <summary>A winding.</summary>
    Coil,

    /// <summary>A heating element.</summary>
    Heater,

    /// <summary>A horn, bell or buzzer.</summary>
    Horn,

    /// <summary>A pointer's works.</summary>
    Gauge,

    /// <summary>A circuit that draws current for itself.</summary>
    Electronics,

    /// <summary>A battery's cells or a machine that generates.</summary>
    Source,

    /// <summary>A contact.</summary>
    Contact,

    /// <summary>A conductor within a part.</summary>
    Link,

    /// <summary>A fuse or fusible link.</summary>
    Fuse,

    /// <summary>A circuit breaker.</summary>
    Breaker,

    /// <summary>A shunt or an ammeter's works.</summary>
    Shunt,

    /// <summary>A resistor, ballast or in-line heater.</summary>
    Resistor,

    /// <summary>A resistor that a quantity moves, and that never opens.</summary>
    Sender,

    /// <summary>A diode: conducts from the first end to the second.</summary>
    Diode,

    /// <summary>A series regulator or limiter: passes current from the first end to the second.</summary>
    Dropper,

    /// <summary>A spark gap; open at direct current.</summary>
    Gap,

    /// <summary>A capacitor; open at direct current.</summary>
    Capacitor,
}
