namespace Hotside.Orders;

/// <summary>Which battery is connected in the vehicle as it stands between two steps of an order.</summary>
public enum StandingBattery
{
    /// <summary>As the order has it there: its cables come off before anything else, and the one to come is connected once its cables are on.</summary>
    AsOrdered,

    /// <summary>None: the cables are off its posts.</summary>
    Out,

    /// <summary>The one that was in the vehicle, put back to move it or to look for a fault. Where the order says that it stays out, it would do harm.</summary>
    Old,

    /// <summary>The one that will be in the vehicle, put in for a trial; the same where it is not changed. Where the order says that it stays out, it would do harm.</summary>
    New,
}
