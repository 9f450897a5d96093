using System.Text.RegularExpressions;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Notation;
using Hotside.Solving.Laws;

namespace Hotside.Diagnoses;

/// <summary>A reading as a person writes it: <c>H1.1 = 3.1 V @ horn pressed</c>, <c>F2.2 to H1.1 = 0.3 V @ …</c>, <c>F2.2 = 0.4 ohm, F2 pulled</c>, <c>H1.1 = lamp dark @ …</c>, <c>E1 = dim @ low beam</c>, <c>F2 = blown</c>.</summary>
/// <param name="Text">As it was written.</param>
/// <param name="Red">Where the red lead is, or what is looked at.</param>
/// <param name="Black">Where the black lead is; empty for the chassis.</param>
/// <param name="Value">What the meter shows; <see langword="null"/> where something was looked at.</param>
/// <param name="Word">What was seen: off, dim, right, strong, blown, whole; lamp dark, lamp dim, lamp bright.</param>
/// <param name="Pulled">The fuse that is pulled; empty for none.</param>
/// <param name="Setting">The setting; empty where it is not said.</param>
internal sealed partial record ReadingLine(string Text, string Red, string Black, StatedValue? Value, string Word, string Pulled, string Setting)
{
    public static readonly DiagnosticKind NotUnderstood = new("HS3401", Severity.Error, "Reading not understood", "\"{0}\" is no reading");

    public static readonly DiagnosticKind UnitMissing = new("HS3403", Severity.Error, "Unit of a reading", "the reading \"{0}\" has no unit of volts or ohms");

    private static readonly string Form = $"write \"H1.1 = 3.1 V @ horn pressed\", \"F2.2 to H1.1 = 0.3 V @ horn pressed\", \"H1.1 = 4 ohm\", \"H1.1 = lamp dark @ horn pressed\" (a {TestBulb.Text} test lamp), \"E1 = dim @ low beam\" or \"F2 = blown\"";

    // What people say, and what is meant.
    private static readonly (string Said, string Meant)[] Words =
    [
        ("off", "off"), ("dead", "off"), ("out", "off"), ("dim", "dim"), ("weak", "dim"), ("glows", "dim"), ("slow", "dim"), ("low", "dim"), ("right", "right"), ("on", "right"), ("works", "right"),
        ("good", "right"), ("strong", "strong"), ("bright", "strong"), ("loud", "strong"), ("high", "strong"), ("blown", "blown"), ("whole", "whole"),
        ("lamp bright", "lamp bright"), ("lamp lights", "lamp bright"), ("lamp lit", "lamp bright"), ("lamp on", "lamp bright"), ("lamp dim", "lamp dim"), ("lamp glows", "lamp dim"),
        ("lamp dark", "lamp dark"), ("lamp off", "lamp dark"), ("lamp does not light", "lamp dark"),
    ];

    /// <summary>Reads a line.</summary>
    /// <param name="text">The line.</param>
    /// <param name="problem">What is wrong with it.</param>
    public static ReadingLine? Read(string text, out Diagnostic? problem)
    {
        problem = null;
        var match = Shape().Match(text);
        if (!match.Success)
        {
            problem = NotUnderstood.At(null, text) with { Hint = Form };
            return null;
        }
        string Group(string name) => match.Groups[name].Value.Trim();
        string said = Group("value"), black = Group("black");
        if (black is "chassis" or "ground" or "earth") black = "";
        var value = QuantityReader.Read(said, out string? why);
        if (value is { Unit: Unit.Volt or Unit.Ohm, Values.Length: 1, UpTo: null, Count: 1 }) return new(text, Group("red"), black, value, "", Group("pulled"), Group("setting"));
        if (said.Equals("open", StringComparison.OrdinalIgnoreCase)) return new(text, Group("red"), black, new(1e9, Unit.Ohm), "", Group("pulled"), Group("setting"));
        if (value is { UpTo: not null } or { Values.Length: > 1 } || (why is not null && Range().IsMatch(said)))
        {
            problem = NotUnderstood.At(null, text) with { Hint = "a reading is one value, as the meter shows it" };
            return null;
        }
        if (value is not null || why is not null || (said.Length > 0 && (char.IsAsciiDigit(said[^1]) || said[^1] == '.')))
        {
            problem = UnitMissing.At(null, text) with { Hint = why ?? $"write \"{match.Groups["red"].Value.Trim()} = {said.Split(' ')[0]} V\", or ohm" };
            return null;
        }
        string? word = Words.FirstOrDefault(w => w.Said.Equals(said, StringComparison.OrdinalIgnoreCase)).Meant;
        if (word is not null) return new(text, Group("red"), black, null, word, "", Group("setting"));
        problem = NotUnderstood.At(null, text) with { Hint = Names.Meant(said, Words.Select(w => w.Said)) is { } near && near.StartsWith("did", StringComparison.Ordinal) ? near : Form };
        return null;
    }

    // As people write a range.
    [GeneratedRegex(@"\d\s*(to|-|–|\.\.)\s*\d")]
    private static partial Regex Range();

    [GeneratedRegex(@"^\s*(?<red>[^=@]+?)(?:\s+to\s+(?<black>[^=@]+?))?\s*=\s*(?<value>[^@,]*?)\s*(?:,\s*(?<pulled>\S+|all fuses) pulled\s*)?(?:@\s*(?<setting>.+?)\s*)?$")]
    private static partial Regex Shape();
}
