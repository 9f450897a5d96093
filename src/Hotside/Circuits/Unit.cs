namespace Hotside.Circuits;

/// <summary>What a rating is measured in. Values are stored in the unit named here, which is the SI unit where there is one.</summary>
public enum Unit
{
    /// <summary>Volts.</summary>
    Volt,

    /// <summary>Amperes.</summary>
    Ampere,

    /// <summary>Watts.</summary>
    Watt,

    /// <summary>Ohms.</summary>
    Ohm,

    /// <summary>Ampere-hours (the trade's unit of a battery's capacity; 1 Ah is 3600 C).</summary>
    AmpereHour,

    /// <summary>Metres.</summary>
    Metre,

    /// <summary>A wire gauge of the AWG series (ASTM B258); 0 is 1/0, −1 is 2/0.</summary>
    Awg,

    /// <summary>Square millimetres of conductor.</summary>
    SquareMillimetre,

    /// <summary>A number of ways of a connector or block.</summary>
    Ways,

    /// <summary>Degrees Celsius.</summary>
    Celsius,

    /// <summary>Per cent.</summary>
    Percent,

    /// <summary>Turns a minute.</summary>
    TurnsPerMinute,
}
