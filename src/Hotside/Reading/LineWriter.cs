using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Hotside.Circuits;

namespace Hotside.Reading;

/// <summary>Writes parts, wires and settings as lines, items in the canonical order.</summary>
internal static partial class LineWriter
{
    // More than a sheet shows: feet and milliohms must not lose a digit that they were given with.
    private const int Decimals = 9;

    /// <summary>A part line: kind, name, ratings, options, joints, case, assembly, place.</summary>
    /// <param name="spec">The part.</param>
    /// <param name="circuit">The circuit in which its joints lie.</param>
    public static string Part(PartSpec spec, Circuit circuit) => string.Join(", ", PartItems(spec, circuit));

    /// <summary>The specification without a mount that its kind brings anyway.</summary>
    public static PartSpec WithoutDefault(PartSpec spec) => spec.Case == spec.Kind.DefaultMount ? spec with { Case = null } : spec;

    /// <summary>A wire line: ends, size and colour, length, resistance, temperature, the rest, bad joints.</summary>
    public static string Wire(Conductor conductor, Circuit circuit) =>
        string.Join(", ", new[] { Ends(conductor.From, conductor.To, circuit) }.Concat(WireItems(conductor.Wire)).Concat(Joints(conductor, circuit)));

    private static IEnumerable<string> Joints(Conductor conductor, Circuit circuit)
    {
        if (conductor.Wire.JointAtFromInOhms is { } first) yield return $"joint {QuantityText.Of(new(first, Unit.Ohm), Decimals)} at {circuit.TextOf(conductor.From)}";
        if (conductor.Wire.JointAtToInOhms is { } second) yield return $"joint {QuantityText.Of(new(second, Unit.Ohm), Decimals)} at {circuit.TextOf(conductor.To)}";
    }

    public static string Ends(End from, End to, Circuit circuit) => $"{circuit.TextOf(from)} to {circuit.TextOf(to)}";

    public static IEnumerable<string> WireItems(Wire wire)
    {
        string size = string.Join(' ', new[] { wire.Size?.ToString(), wire.IsBraid ? "braid" : wire.Colour?.ToString() }.Where(t => !string.IsNullOrEmpty(t)));
        if (size.Length > 0) yield return size;
        if (wire.LengthInMetres is { } length) yield return QuantityText.Of(new(length, Unit.Metre), Decimals);
        if (wire.ResistanceInOhms is { } ohms) yield return QuantityText.Of(new(ohms, Unit.Ohm), Decimals);
        if (wire.TemperatureInCelsius is { } celsius) yield return QuantityText.Of(new(celsius, Unit.Celsius), Decimals);
        if (wire.Name is { } name) yield return Name(name, []);
        if (wire.Role != WireRole.Wire) yield return wire.Role.ToString().ToLowerInvariant();
        if (wire.Condition is { } condition) yield return condition.ToString().ToLowerInvariant();
        if (wire.Insulation is { } insulation) yield return "insulation " + Text(insulation);
        if (wire.Loom is { } loom) yield return "loom " + Text(loom);
        if (wire.Place is { } place) yield return "at " + Text(place);
    }

    public static IEnumerable<string> SettingItems(Setting setting) =>
        setting.Positions.Select(p => p.Part is null ? $"{p.Actuator} {p.Position}" : $"{p.Part} {p.Actuator} {p.Position}")
            .Concat(setting.Values.Select(v => $"{v.Part} {(v.Quantity.Unit == Unit.Percent && v.Part != SetValue.Charge ? "charge " : "")}{QuantityText.Of(v.Quantity, Decimals)}"));

    public static string System(ElectricalSystem system, Circuit circuit)
    {
        var items = ImmutableArray.CreateBuilder<string>();
        items.Add(system.ToString());
        if (system.Return is { } node) items.Add("return " + circuit.TextOf(node));
        if (system.SizesIn is { } unit) items.Add("sizes in " + QuantityText.Symbol(unit));
        if (system.Insulation is { } insulation) items.Add("insulation " + Text(insulation));
        return string.Join(", ", items);
    }

    public static string Case(CaseMount mount, Circuit circuit) => mount.On is { } on ? "case on " + circuit.TextOf(on) : "case insulated";

    private static IEnumerable<string> PartItems(PartSpec spec, Circuit circuit)
    {
        yield return spec.Kind.Id;
        if (spec.Name is { } name) yield return Name(name, spec.Kind.Options.Keys);
        foreach (var rating in spec.Ratings.Where(r => !r.Name.Contains(' ', StringComparison.Ordinal))) yield return QuantityText.Of(rating.Quantity, Decimals);
        foreach (var rating in spec.Ratings.Where(r => r.Name.Contains(' ', StringComparison.Ordinal)))
            yield return rating.Name[..(rating.Name.LastIndexOf(' ') + 1)] + QuantityText.Of(rating.Quantity, Decimals);
        foreach (string option in spec.Options) yield return option;
        foreach (var joint in spec.Joints) yield return $"{joint.Terminal} on {circuit.TextOf(joint.On)}";
        foreach (string terminal in spec.FreeTerminals) yield return terminal + " free";
        if (spec.Kind.Case != CaseKind.None && spec.Case is { } mount) yield return Case(mount, circuit);
        if (spec.Assembly is { } assembly) yield return "in " + assembly;
        if (spec.Place is { } place) yield return "at " + Text(place);
    }

    // A text behind a word stands bare unless a comma would end it, or its blanks would be lost.
    private static string Text(string text) =>
        text.Contains(',', StringComparison.Ordinal) || text[0] is '\'' or '"' || text.Contains("  ", StringComparison.Ordinal) || text.Contains('\n', StringComparison.Ordinal) ? Quoted(text) : text;

    private static string Quoted(string text) => "'" + text.Replace("'", "''", StringComparison.Ordinal) + "'";

    // A name stands bare only where nothing else could be meant; quotes are never wrong.
    private static string Name(string name, IEnumerable<string> options) =>
        Bare().IsMatch(name) && !Known().IsMatch(name) && !options.Contains(name) && !WireColour.TryParse(name, out _) ? name
        : Quoted(name);

    [GeneratedRegex(@"^[A-Za-z][A-Za-z-]*(?: [A-Za-z-]+)*$")]
    private static partial Regex Bare();

    [GeneratedRegex(@"^(?:in|at|because|loom|insulation|joint) | (?:on|to) |^\S+ (?:free|insulated)$|^(?:spare|lead|shield|good|brittle|burnt|spliced|braid)$")]
    private static partial Regex Known();
}
