namespace Hotside.Symbols.Parts;

/// <summary>What moves a contact.</summary>
internal enum Actuator
{
    /// <summary>Nothing drawn.</summary>
    None,

    /// <summary>A button, returns by itself.</summary>
    Push,

    /// <summary>A lever that stays put.</summary>
    Toggle,

    /// <summary>A knob that is turned.</summary>
    Rotary,

    /// <summary>A knob that is pulled.</summary>
    Pull,

    /// <summary>A key.</summary>
    Key,

    /// <summary>A foot.</summary>
    Pedal,

    /// <summary>Pressure of oil or of brake fluid.</summary>
    Pressure,

    /// <summary>Heat.</summary>
    Heat,

    /// <summary>A door.</summary>
    Door,

    /// <summary>Something else that happens by itself.</summary>
    Automatic,
}
