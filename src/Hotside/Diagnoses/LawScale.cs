using Hotside.Solving.Laws;

namespace Hotside.Diagnoses;

/// <summary>Laws of things that are not as stated: more or less current, more resistance, other volts, the other way round.</summary>
internal static class LawScale
{
    /// <summary>So many times the current at every voltage.</summary>
    public static Law Times(Law law, double factor) => law switch
    {
        ClampLaw c => c with { Siemens = c.Siemens * factor, Least = c.Least * factor, Most = c.Most * factor },
        LampLaw l => l with { Amperes = l.Amperes * factor },
        FanLaw f => new FanLaw(f.Volts, f.Amperes * factor, f.ArmatureOhms / factor),
        SeriesFanLaw s => new SeriesFanLaw(s.Volts, s.Amperes * factor, s.WindingOhms / factor),
        _ => law,
    };

    /// <summary>With a resistance in line; what is no straight line stays as it is.</summary>
    public static Law InSeries(Law law, double ohms) => law is ClampLaw c ? c with { Siemens = 1 / ((1 / c.Siemens) + ohms) } : law;

    /// <summary>A source of so many times its volts, with a resistance in line.</summary>
    public static Law Source(Law law, double factor, double ohms) => law is ClampLaw c ? c with { Emf = c.Emf * factor, Siemens = 1 / ((1 / c.Siemens) + ohms) } : law;

    /// <summary>Its ends exchanged.</summary>
    public static Law Turned(Law law) => law is ClampLaw c ? c with { Emf = -c.Emf, Least = -c.Most, Most = -c.Least } : law;
}
