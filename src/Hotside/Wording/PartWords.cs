using Hotside.Circuits;
using Hotside.Studies;

namespace Hotside.Wording;

/// <summary>Parts, conductors and positions as a sentence names them.</summary>
internal static class PartWords
{
    /// <summary>A part with what it is: <c>S1 (Horn button)</c>, <c>K1 (relay)</c>.</summary>
    public static string Named(Part part, Vocabulary words) => $"{part.Id} ({part.Name ?? words.Noun(part.Kind)})";

    /// <summary>A part by its id, with what it is.</summary>
    public static string Named(string id, Circuit circuit, Vocabulary words) => circuit.FindPart(id) is { } part ? Named(part, words) : id;

    /// <summary>A way: parts by their ids, conductors with their labels.</summary>
    public static string Way(IEnumerable<string> ids, Circuit circuit) => string.Join(" → ", ids.Select(id =>
        circuit.FindConductor(id) is { Wire.Label: { Length: > 0 } label } ? $"{id} ({label})" : id));

    /// <summary>Several names as a sentence has them.</summary>
    public static string And(params IReadOnlyList<string> items) =>
        items.Count < 2 ? string.Concat(items) : string.Join(", ", items.Take(items.Count - 1)) + " and " + items[^1];

    /// <summary>A combination as a clause: <c>S1 (Horn button) is pressed and the engine is running</c>.</summary>
    public static string Clause(Combination combination, Circuit circuit, Vocabulary words) => And([.. combination.All.Select(s => Clause(s, circuit, words))]);

    /// <summary>A control as a clause.</summary>
    public static string Clause(Control control, Circuit circuit, Vocabulary words) =>
        control.Whole is { } all ? all.Shared.IsEmpty ? all.ToString() : "one of very many combinations stands (the study as JSON has them all)"
        : string.Join(control.Any.Any(c => c.All.Length > 1) ? "; or when " : ", or ", control.Any.Select(c => Clause(c, circuit, words)));

    private static string Clause(PositionSet set, Circuit circuit, Vocabulary words)
    {
        string positions = string.Join(" or ", set.Positions);
        if (set.Variable.Part is not { } id) return $"the {set.Variable} is {positions}";
        string rest = set.Variable.Label.Length > id.Length ? set.Variable.Label[id.Length..] : "";
        return $"{Named(id, circuit, words)}{rest} is {(positions.Length > 0 && positions.All(char.IsDigit) ? "at " : "")}{positions}";
    }
}
