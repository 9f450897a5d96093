using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Studies.Switching;

/// <summary>Current through a load that its verdict does not know of.</summary>
/// <param name="Load">The load.</param>
/// <param name="Name">Its name.</param>
/// <param name="States">When it flows.</param>
/// <param name="Volts">The most volts found across the load.</param>
/// <param name="IsFaint">Whether that is next to nothing.</param>
/// <param name="When">The states in which they were found.</param>
/// <param name="Through">The other consumers passed, by name.</param>
/// <param name="Parts">The parts passed, by id.</param>
internal sealed record SneakPath(
    Branch Load, string Name, Control States, double Volts, bool IsFaint, Condition When, ImmutableArray<string> Through, ImmutableArray<string> Parts)
{
    /// <summary>A sneak path that leaves a consumer less than this part of its volts is called faint (own choice).</summary>
    public const double Faint = 0.1;

    /// <summary>Below this part of its volts nothing is said: a balanced bridge, or rounding (own choice).</summary>
    public const double Nothing = 0.005;

    /// <summary>In so many states of a load its volts are computed.</summary>
    public const int Looked = 4;

    private const int Named = 4;

    /// <summary>The findings, one for all loads that one other feeds, as a charge lamp does with everything on the ignition rail.</summary>
    public static IEnumerable<Diagnostic> Findings(SwitchingStudy study, IEnumerable<SneakPath> paths)
    {
        foreach (var group in paths.GroupBy(p => (p.IsFaint, Through: p.Through.FirstOrDefault() ?? "")))
        {
            var worst = group.MaxBy(p => p.Volts)!;
            SneakPath[] all = [worst, .. group.Where(p => p != worst)];
            string names = string.Join(", ", all.Take(Named).Select(p => p.Name)) + (all.Length > Named ? $" and {Numbers.Whole(all.Length - Named)} more" : "");
            var kind = worst.IsFaint ? SwitchingFindings.FaintSneak : SwitchingFindings.Sneak;
            yield return kind.Of(all.Select(p => p.Load.Part.Id).Concat(worst.Parts).Distinct(), names,
                Numbers.Plain(worst.Volts, 1), string.Join(" and ", worst.Through), study.Words(worst.When)) with
            {
                Hint = worst.IsFaint ? null : "part the ways with a diode, a relay or a feed of its own",
            };
        }
    }
}
