using Hotside.Circuits;
using Hotside.Solving;
using Hotside.Studies;

namespace Hotside.Checks.Gauges;

/// <summary>What a gauge gets at both ends of its sender's range.</summary>
internal static class SenderSweep
{
    /// <summary>The sender behind a gauge, with its range in ohms; <see langword="null"/> where there is none, or its range is not stated.</summary>
    public static (Part Sender, double Least, double Most)? Of(CheckedCircuit circuit, LoadStudy gauge)
    {
        var sender = gauge.Paths.SelectMany(p => p.GroundWay).Select(circuit.Circuit.FindPart).OfType<Part>().FirstOrDefault(p => p.Kind.Elements.Any(e => e.Type == ElementType.Sender));
        return sender?.Ratings.Select(r => r.Quantity).FirstOrDefault(q => q.Unit == Unit.Ohm && q.UpTo is not null) is { } range ? (sender, range.Value, range.UpTo!.Value) : null;
    }

    /// <summary>The gauge in the least that feeds it, with its sender at some ohms; <see langword="null"/> where that is a short circuit, or it is never fed.</summary>
    public static ElementPoint? At(CheckedCircuit circuit, LoadStudy gauge, string sender, double ohms)
    {
        if (gauge.Control.Any.IsEmpty) return null;
        var setting = OperatingPoints.SettingOf(gauge) with { Values = [new(sender, new(Math.Max(ohms, 0.1), Unit.Ohm))] };
        return circuit.Points.Solve(setting)?.Element(gauge.Part.Id, gauge.Element.Name);
    }
}
