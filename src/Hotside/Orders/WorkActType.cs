namespace Hotside.Orders;

/// <summary>The smallest things a hand does.</summary>
public enum WorkActType
{
    /// <summary>Something written down or photographed before anything moves.</summary>
    Record,

    /// <summary>Something measured before anything moves.</summary>
    Measure,

    /// <summary>A cable of the battery taken off its post.</summary>
    CableOff,

    /// <summary>The battery lifted out, to stay out while wires move.</summary>
    BatteryOut,

    /// <summary>Electronics that stay, unplugged before the volts or the polarity change.</summary>
    Unplug,

    /// <summary>The new polarity marked where the battery stands.</summary>
    MarkPolarity,

    /// <summary>One end of a wire taken off its terminal.</summary>
    WireOff,

    /// <summary>A wire, both ends off, pulled out.</summary>
    Pull,

    /// <summary>A part taken out.</summary>
    PartOut,

    /// <summary>A part fitted, with what it is bolted to.</summary>
    Fit,

    /// <summary>A part replaced by another: its wires off, out, in, its wires on.</summary>
    Swap,

    /// <summary>A part's leads swapped.</summary>
    Turn,

    /// <summary>A part's case put on something else.</summary>
    Remount,

    /// <summary>A wire cut in two.</summary>
    Cut,

    /// <summary>A wire laid, both ends off still.</summary>
    Lay,

    /// <summary>One end of a wire put on a terminal.</summary>
    WireOn,

    /// <summary>Work that changes no circuit.</summary>
    Work,

    /// <summary>Something tested while nothing is powered.</summary>
    DeadTest,

    /// <summary>A cable of the battery put on its post.</summary>
    CableOn,

    /// <summary>A stage of the first power, which can stop the next.</summary>
    PowerUp,

    /// <summary>Electronics that stay, plugged in again.</summary>
    PlugIn,

    /// <summary>What is left to do before the vehicle is handed over.</summary>
    Close,
}
