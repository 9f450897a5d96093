namespace Hotside.Drawings.Marks;

/// <summary>On which side a load is switched, as its badge shows it.</summary>
internal enum Verdict
{
    /// <summary>Bar above.</summary>
    Hot,

    /// <summary>Bar below.</summary>
    Ground,

    /// <summary>Bars above and below.</summary>
    Both,

    /// <summary>No bar.</summary>
    Unswitched,

    /// <summary>Dotted outline.</summary>
    InSeries,

    /// <summary>Dashed outline.</summary>
    Dead,
}
