using Hotside.Circuits;
using Hotside.Proposals.Rules;
using Hotside.Studies;

namespace Hotside.Proposals.Steps;

/// <summary>Senders go with their gauges: one whose gauge is replaced must suit the new one.</summary>
internal static class SenderStep
{
    /// <summary>Decides the senders of gauges that are replaced; those of gauges that keep their volts stay.</summary>
    public static void Run(Workbench work)
    {
        HashSet<string> paired = new(StringComparer.Ordinal);
        foreach (var part in work.Draft.Before.Parts.Where(p => !work.IsDecided(p.Id)))
        {
            bool isHeated = part.Kind.Voltage == "selfregulating";
            if (!isHeated && !part.Kind.Elements.Any(e => e.Type == ElementType.Sender)) continue;
            var gauges = work.Before.Study.Loads.Where(l => IsReplaced(work, l) && l.Paths.Any(p => p.GroundWay.Contains(part.Id) || p.HotWay.Contains(part.Id))).Select(l => l.Part.Id).ToArray();
            if (gauges.Length == 0) continue;
            work.DecideBy(isHeated ? "selfregulating" : "sender", part.Id);
            paired.UnionWith(gauges);
        }
        foreach (var gauge in work.Before.Study.Loads.Where(l => IsReplaced(work, l) && !paired.Contains(l.Part.Id))) work.Ask(gauge.Part.Id, DecisionTable.Standard["lone-gauge"].Question!);
    }

    private static bool IsReplaced(Workbench work, LoadStudy load) => load.Element.Type == ElementType.Gauge && work.Decisions.Any(d => d.Item == load.Part.Id && d.Kind == DecisionKind.Replace);
}
