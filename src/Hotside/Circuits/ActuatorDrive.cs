namespace Hotside.Circuits;

/// <summary>Who or what moves an actuator.</summary>
public enum ActuatorDrive
{
    /// <summary>A hand.</summary>
    Hand,

    /// <summary>A foot.</summary>
    Foot,

    /// <summary>A key.</summary>
    Key,

    /// <summary>Something outside the circuit: pressure, a cam, a door, a running engine. A condition that a setting may fix.</summary>
    Automatic,

    /// <summary>Windings of the part itself.</summary>
    Driven,
}
