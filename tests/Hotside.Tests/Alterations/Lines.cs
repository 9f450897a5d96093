using System.Collections.Immutable;
using Hotside.Alterations;
using Hotside.Circuits;

namespace Hotside.Tests.Alterations;

/// <summary>Change lines in code, in the words of a job file.</summary>
internal static class Lines
{
    public static EditResult Apply(Circuit before, params EditGroup[] groups) => Apply(before, before.System, groups);

    public static EditResult Apply(Circuit before, ElectricalSystem system, params EditGroup[] groups) =>
        EditList.Apply(before, "Test", system, [.. groups]);

    /// <summary>The alteration; fails with the problems where there is none.</summary>
    public static Alteration Made(Circuit before, params EditGroup[] groups) => Made(before, before.System, groups);

    public static Alteration Made(Circuit before, ElectricalSystem system, params EditGroup[] groups)
    {
        var result = Apply(before, system, groups);
        Assert.True(result.Alteration is not null, string.Join("\n", Problems(result)));
        return result.Alteration;
    }

    /// <summary>The problems as <c>group.edit severity code: message | hint</c>, lines counted from 1.</summary>
    public static string[] Problems(EditResult result) =>
    [
        .. result.Problems.Select(p =>
            $"{p.Group + 1}.{p.Edit + 1} {p.Diagnostic.Severity} {p.Diagnostic.Code}: {p.Diagnostic.Message}"
            + (p.Diagnostic.Hint is { } hint ? " | " + hint : "")),
    ];

    public static EditGroup One(Edit edit, string? because = null) => new([edit], because);

    public static EditGroup Many(params EditGroup[] groups) => new([.. groups.SelectMany(g => g.Edits)], null);

    public static EditGroup TakeOut(params string[] ids) => One(new TakeOutEdit([.. ids]));

    public static EditGroup Fit(string ids, PartKind kind, string ratings = "", string? name = null, string joints = "", string? on = null) =>
        One(new FitEdit(Ids(ids), Spec(kind, ratings, name, joints, on)));

    public static EditGroup Replace(string ids, PartKind kind, string ratings = "", string map = "", string? name = null, string joints = "", string? on = null) =>
        One(new ReplaceEdit(Ids(ids), Spec(kind, ratings, name, joints, on), Reversed: false, Pairs(map)));

    public static EditGroup ReplaceReversed(string ids, PartKind kind, string ratings = "", string map = "") =>
        One(new ReplaceEdit(Ids(ids), Spec(kind, ratings, null, "", null), Reversed: true, Pairs(map)));

    public static EditGroup Reverse(string id) => One(new ReverseEdit(id));

    public static EditGroup Remount(string id, string? on) => One(new RemountEdit(id, on is null ? CaseMount.Insulated : new(End.Parse(on))));

    public static EditGroup Run(string id, string from, string to, string wire = "") =>
        One(new RunEdit(new(id, End.Parse(from), End.Parse(to), WireOf(wire))));

    public static EditGroup Move(string id, string ends, string wire = "") =>
        One(new MoveEdit(id, [.. ends.Split(", ").Select(e => e.Split(" to ")).Select(e => (End.Parse(e[0]), End.Parse(e[1])))],
            wire.Length == 0 ? null : WireOf(wire)));

    public static EditGroup Renew(string ids, string wire) => One(new RenewEdit(Ids(ids), WireOf(wire)));

    public static EditGroup Cut(string id, string first, string second, string newId) =>
        One(new CutEdit(id, End.Parse(first), End.Parse(second), newId));

    public static EditGroup Do(string id, string sentence) => One(new DoEdit(id, sentence));

    /// <summary>A wire such as <c>14 BK 0.4 m</c>, <c>8 BN</c>, <c>1/0 braid</c>, <c>spare</c>.</summary>
    public static Wire WireOf(string text)
    {
        string[] words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var wire = new Wire();
        for (int i = 0; i < words.Length; i++)
        {
            string word = words[i];
            if (word == "spare") wire = wire with { Role = WireRole.Spare };
            else if (word == "braid") wire = wire with { IsBraid = true };
            else if (word == "brittle") wire = wire with { Condition = WireCondition.Brittle };
            else if (WireColour.TryParse(word, out var colour)) wire = wire with { Colour = colour };
            else if (i + 1 < words.Length && words[i + 1] == "m") wire = wire with { LengthInMetres = Number(words[i++]) };
            else if (i + 1 < words.Length && words[i + 1] == "ohm") wire = wire with { ResistanceInOhms = Number(words[i++]) };
            else wire = wire with { Size = WireSize.Awg(word == "1/0" ? 0 : (int)Number(word)) };
        }
        return wire;
    }

    /// <summary>Ratings such as <c>12 V, 5 A, coil 0.15 A</c>.</summary>
    public static PartSpec Spec(PartKind kind, string ratings, string? name = null, string joints = "", string? on = null) => new(kind)
    {
        Name = name,
        Ratings = [.. ratings.Split(", ", StringSplitOptions.RemoveEmptyEntries).Select(RatingOf)],
        Joints = [.. joints.Split(", ", StringSplitOptions.RemoveEmptyEntries).Select(j => j.Split(" on ")).Select(j => new Joint(j[0], End.Parse(j[1])))],
        Case = on is null ? null : on == "insulated" ? CaseMount.Insulated : new(End.Parse(on)),
    };

    private static Rating RatingOf(string text)
    {
        string[] words = text.Split(' ');
        var unit = words[^1] switch
        {
            "V" => Unit.Volt, "A" => Unit.Ampere, "W" => Unit.Watt, "Ah" => Unit.AmpereHour, "ohm" => Unit.Ohm,
            _ => throw new ArgumentException(text, nameof(text)),
        };
        string name = words.Length == 2 ? words[1] : string.Join(' ', words[..^2]) + " " + words[^1];
        return new(name, new([.. words[^2].Split('/').Select(Number)], unit));
    }

    private static double Number(string text) => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);

    private static ImmutableArray<string> Ids(string ids) => [.. ids.Split(", ")];

    private static ImmutableArray<(string, string)> Pairs(string map) =>
        [.. map.Split(", ", StringSplitOptions.RemoveEmptyEntries).Select(p => p.Split(" = ")).Select(p => (p[0], p[1]))];
}
