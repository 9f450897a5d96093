namespace Hotside.Solving.Laws;

/// <summary>
/// The current through an element as a function of the volts across it, both from its first end to its second. No law ever falls: that is what makes every network of them
/// have one solution, and lets Newton's method reach it from anywhere.
/// </summary>
internal abstract record Law
{
    /// <summary>What leaks past whatever blocks or is in its limit, in siemens: so small that no meter shows it, and enough to give every node a potential.</summary>
    public const double Leak = 1e-9;

    /// <summary>The current and its slope at a voltage.</summary>
    /// <param name="volts">Volts from the first end to the second.</param>
    /// <returns>Amperes, and siemens of 0 or more; at a kink the slope of either side.</returns>
    public abstract (double Amperes, double Siemens) At(double volts);

    /// <summary>The straight line that stands for the law before anything is known: amperes are siemens · (volts − emf).</summary>
    public abstract (double Siemens, double Emf) Chord { get; }

    /// <summary>How firmly it ties its ends together at a voltage, in siemens.</summary>
    public virtual double TieAt(double volts) => At(volts).Siemens;
}
