namespace Hotside.Circuits;

/// <summary>Where a conductor ends or a terminal is bolted: a terminal of a part, the chassis, or nothing.</summary>
public readonly record struct End
{
    private End(string? part, string terminal)
    {
        Part = part;
        Terminal = terminal;
    }

    /// <summary>The chassis, which is the reference and the common return.</summary>
    public static End Chassis { get; } = new(null, "chassis");

    /// <summary>Nothing: the free end of a spare.</summary>
    public static End Free { get; } = new(null, "free");

    /// <summary>The part's id; <see langword="null"/> for <see cref="Chassis"/> and <see cref="Free"/>.</summary>
    public string? Part { get; }

    /// <summary>The terminal's name within the part; empty when only the part was named.</summary>
    public string Terminal { get; }

    /// <summary>Whether this is the chassis.</summary>
    public bool IsChassis => Part is null && Terminal == "chassis";

    /// <summary>Whether this is a free end.</summary>
    public bool IsFree => Part is null && Terminal == "free";

    /// <summary>A terminal of a part.</summary>
    /// <param name="part">The part's id.</param>
    /// <param name="terminal">The terminal's name; empty to mean the only terminal of the part.</param>
    /// <exception cref="ArgumentException"><paramref name="part"/> is empty.</exception>
    public static End At(string part, string terminal)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(part);
        ArgumentNullException.ThrowIfNull(terminal);
        return new(part, terminal);
    }

    /// <summary>Reads <c>K1.85</c>, <c>X1</c>, <c>chassis</c> or <c>free</c>; what it names is looked up later.</summary>
    /// <param name="text">The end as written; an id and a terminal hold no dot.</param>
    /// <exception cref="ArgumentException"><paramref name="text"/> is empty.</exception>
    public static End Parse(string text)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(text);
        int dot = text.IndexOf('.', StringComparison.Ordinal);
        return text == "chassis" ? Chassis : text == "free" ? Free : dot < 0 ? new(text, "") : new(text[..dot], text[(dot + 1)..]);
    }

    /// <summary>As it is written everywhere: <c>K1.85</c>.</summary>
    public override string ToString() => Part is null ? Terminal : Terminal.Length == 0 ? Part : Part + "." + Terminal;
}
