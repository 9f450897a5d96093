using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Sizing.Tables;

namespace Hotside.Checks.Starting;

/// <summary>Row 39: a starter's cable that drops too much while cranking.</summary>
internal static class CableDrop
{
    public static readonly DiagnosticKind Kind = new("HS3339", Severity.Error, "Starter cable too thin",
        "while {0} draws {1} A, {2} V stay in {3} on the {4} side; {5} V are the most for that current")
    {
        Source = "TM 10-3930-671-24: 0.20 V for each 100 A on each side",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit)
    {
        foreach (var point in circuit.Points.All.Where(p => p is { IsCranking: true, For: not null, IsRunning: false } && p.For.Part.IsStarter(p.For.Element)))
        {
            var load = point.For!;
            double amperes = Math.Abs(point.Solution.Element(load.Part.Id, load.Element.Name).Amperes), most = DropLimit.Of("starter", load.Part.Rated(load.Element.Name, Unit.Volt) ?? circuit.Circuit.System.Volts[0], amperes).Volts;
            foreach (var (side, way) in new[] { ("feed", load.Paths.SelectMany(p => p.Hot)), ("ground", load.Paths.SelectMany(p => p.Ground)) })
            {
                var cables = way.Distinct().Select(point.Solution.Conductor).Where(c => !c.IsAssumed && Math.Abs(c.Volts) > 0.001).ToArray();
                double volts = cables.Sum(c => Math.Abs(c.Volts));
                if (volts <= most) continue;
                string[] ids = [.. cables.OrderByDescending(c => Math.Abs(c.Volts)).Select(c => c.Conductor.Id)];
                yield return Kind.Of([.. ids, load.Part.Id], load.Name, Numbers.Plain(amperes, 0), Numbers.Plain(volts, 2), Listing.Of(ids), side, Numbers.Plain(most, 2)) with
                {
                    Hint = "take thicker or shorter cables, or clean the joints if the drop is measured there",
                };
            }
        }
    }
}
