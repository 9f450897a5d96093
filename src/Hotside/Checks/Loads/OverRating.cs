using Hotside.Circuits;
using Hotside.Diagnostics;

namespace Hotside.Checks.Loads;

/// <summary>Elements that carry more than their part states, each in its worst setting.</summary>
internal static class OverRating
{
    // What rounding and a charging battery's last tenth are worth.
    private const double Tolerance = 1.02;

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit, DiagnosticKind kind, Func<Part, Element, bool> isMeant, string hint)
    {
        var points = circuit.Points.All;
        if (points.IsEmpty) yield break;
        for (int i = 0; i < points[0].Solution.Elements.Length; i++)
        {
            var (part, element) = (points[0].Solution.Elements[i].Part, points[0].Solution.Elements[i].Element);
            if (!isMeant(part, element) || part.Rated(element.Name, Unit.Ampere) is not { } rating) continue;
            var worst = points.MaxBy(p => Math.Abs(p.Solution.Elements[i].Amperes))!;
            double amperes = Math.Abs(worst.Solution.Elements[i].Amperes);
            if (amperes <= rating * Tolerance) continue;
            string name = part.Kind.Elements.Count(e => e.Type == element.Type) > 1 ? $"{part.Id} ({element.Name})" : part.Id;
            yield return kind.Of([part.Id], name, Numbers.Plain(amperes, 1), worst.When, Numbers.Plain(rating, 1)) with { Hint = hint };
        }
    }
}
