using System.Collections.Immutable;
using Hotside.Alterations;
using Hotside.Circuits;
using Hotside.Kinds;
using UnitsNet;

namespace Hotside.Tests.Reading;

/// <summary>A circuit of some of the library's kinds with all that can be said of parts and wires, built in code from a seed; nothing about it makes sense.</summary>
internal sealed class GeneratedJob
{
    private static readonly string[] Names = ["Horn", "30, feed", "Lamp #2", "it's", "in the dash", "6 V", "Lamp on dash", "wound", "Trompe é", "a: b", "- x", "14 BK", "on"];

    private static readonly string[] Places = ["left wing", "left wing, front", "'round the corner", "driver's side: low", "dash  board", "by the tank #2"];

    private readonly List<(string Id, PartKind Kind)> parts = [];
    private uint state;

    private GeneratedJob(int seed) => state = ((uint)seed * 2654435761u) + 1;

    public static Alteration Of(int seed)
    {
        var made = new GeneratedJob(seed).Build();
        return made.Alter("None: yet").Build();
    }

    // Numerical Recipes' linear congruential generator (from memory): the same everywhere.
    private int Next(int below)
    {
        state = (state * 1664525u) + 1013904223u;
        return (int)((state >> 8) % (uint)below);
    }

    private bool Chance(int of) => Next(of) == 0;

    private T Any<T>(IReadOnlyList<T> of) => of[Next(of.Count)];

    private Circuit Build()
    {
        bool isolated = Chance(4);
        var builder = new CircuitBuilder(ElectricPotential.FromVolts(Any([6.0, 12, 24, 6.3])), isolated ? Ground.Isolated : Any([Ground.Negative, Ground.Positive]), isolated ? "X1" : null);
        builder.Part("X1", Kind.FeedRail).Part("A1", Kind.Assembly, new() { Name = "Fuse block" });
        parts.Add(("X1", Kind.FeedRail));
        for (int i = 0; i < 4 + Next(8); i++) Add(builder, "P" + i);
        for (int i = 0; i < 4 + Next(10); i++) builder.Wire("w" + i, End(), Chance(6) ? "chassis" : "X1", AnyWire());
        if (Chance(2)) builder.Wire("spare", End(), "free", AnyWire() with { Role = WireRole.Spare });
        foreach (var (id, kind) in parts)
            if (kind.Actuators.FirstOrDefault(a => a.Drive != ActuatorDrive.Driven && !a.IsShared) is { } actuator && Chance(2))
                builder.Setting($"{id}, on", (id, $"{actuator.Name} {Any(actuator.Positions)}"));
        return builder.Build();
    }

    private string End()
    {
        var (id, kind) = Any(parts.Where(p => p.Id != "X1" && p.Kind.Terminals.Length > 0).ToArray());
        return $"{id}.{Any(kind.Terminals).Name}";
    }

    private void Add(CircuitBuilder builder, string id)
    {
        var kind = Any(Catalogue.Standard.Kinds);
        int? ways = kind.Ways is { } range ? range.Least + Next(Math.Min(9, range.Most - range.Least + 1)) : null;
        var whole = ways is { } count ? kind.WithWays(count) : kind;
        var details = new PartDetails
        {
            Ways = ways,
            Name = Chance(2) ? Any(Names) : null,
            Ratings = whole.Ratings.Concat(whole.CommonRatings).Where(r => r.Unit != Unit.Ways && Chance(2)).ToImmutableDictionary(r => r.Name, Stated),
            Options = Chance(2) ? [.. whole.Options.Keys.Order(StringComparer.Ordinal).Take(1)] : [],
            Joints = whole.Terminals.Where(_ => Chance(5)).ToImmutableDictionary(t => t.Name, _ => Any(["X1", "X1", Any(parts).Id is "X1" ? "X1" : Any(parts.Where(p => p.Kind.Terminals.Length > 0).Select(p => $"{p.Id}.{p.Kind.Terminals[0].Name}").ToArray())])),
            FreeTerminals = Chance(4) ? [.. whole.Terminals.Take(1).Select(t => t.Name)] : [],
            Case = whole.HasCaseTerminal && Chance(2) ? Any(["insulated", "chassis", "X1"]) : null,
            Assembly = Chance(4) ? "A1" : null,
            Place = Chance(4) ? Any(Places) : null,
        };
        builder.Part(id, kind, details);
        parts.Add((id, whole));
    }

    private StatedValue Stated(RatingRule rule)
    {
        double[] values = [.. Enumerable.Range(0, rule.IsOneEach && Chance(2) ? rule.Elements.Length : 1).Select(_ => (1 + Next(20000)) / Any([1.0, 10, 1000, 1_000_000]))];
        if (rule.Unit == Unit.Percent) return new([.. values.Select(v => v % 100)], rule.Unit);
        return rule.Unit == Unit.Awg ? new(Next(20), rule.Unit) : new([.. values], rule.Unit) { Count = values.Length == 1 && Chance(5) ? 2 : 1, UpTo = values.Length == 1 && Chance(6) ? 99_000 : null };
    }

    private Wire AnyWire()
    {
        Assert.True(WireColour.TryParse(Any(["BK", "RD/WH", "green-yellow", "violet"]), out var colour));
        bool braid = Chance(6);
        return new()
        {
            Size = Chance(4) ? null : Chance(2) ? WireSize.Awg(Next(24) - 3) : WireSize.SquareMillimetres(Any([0.5, 2.5, 95, 0.75])),
            Colour = braid || Chance(4) ? null : colour,
            IsBraid = braid,
            LengthInMetres = Chance(2) ? null : Any([0.6, 1.0 / 3, 4 * 0.3048, 0.001]),
            ResistanceInOhms = Chance(4) ? Any([0.0004, 12, 1e-6, 0]) : null,
            Insulation = Chance(5) ? Any(["GPT", "cloth, waxed"]) : null,
            Loom = Chance(5) ? Any(["rear", "rear, left"]) : null,
            Name = Chance(3) ? Any(Names) : null,
            Place = Chance(5) ? Any(Places) : null,
            Role = Any([WireRole.Wire, WireRole.Lead, WireRole.Shield]),
            Condition = Chance(4) ? Any([WireCondition.Good, WireCondition.Brittle, WireCondition.Burnt, WireCondition.Spliced]) : null,
            TemperatureInCelsius = Chance(5) ? Any([60, -40, 140 / 1.8]) : null,
            JointAtFromInOhms = Chance(5) ? Any([0.05, 1e-6, 0]) : null,
            JointAtToInOhms = Chance(5) ? Any([0.2, 1.0 / 3]) : null,
        };
    }
}
