using Hotside.Alterations;
using Hotside.Circuits;
using UnitsNet;
using static Hotside.Tests.Alterations.Lines;

namespace Hotside.Tests.Alterations;

/// <summary>Circuits and change lists in the order in which a comparison writes them, from a seed.</summary>
internal sealed class GeneratedAlterations
{
    private static readonly string[] Colours = ["BK", "RD", "GN", "YE", "BU", "WH/RD"];

    private readonly Dice dice;
    private readonly List<string> ends = [];
    private readonly Dictionary<string, PartKind> kinds = new(StringComparer.Ordinal);

    private GeneratedAlterations(int seed)
    {
        dice = new(seed);
        Before = Generate();
        Groups = Lines();
    }

    public Circuit Before { get; }

    public EditGroup[] Groups { get; }

    public static (Circuit Before, EditGroup[] Groups) Of(int seed)
    {
        var made = new GeneratedAlterations(seed);
        return (made.Before, made.Groups);
    }

    private Circuit Generate()
    {
        var builder = new CircuitBuilder(ElectricPotential.FromVolts(6), Ground.Positive);
        Put(builder, "G1", TestKinds.Battery, "V 6");
        Put(builder, "X1", TestKinds.FeedRail);
        for (int i = 1; i <= 1 + dice.Next(3); i++) Put(builder, $"F{i}", TestKinds.Fuse, $"A {5 * i}", dice.Next(2) == 0 ? "X1" : null);
        for (int i = 1; i <= 1 + dice.Next(3); i++) Put(builder, $"E{i}", TestKinds.Lamp, "V 6");
        for (int i = 1; i <= 1 + dice.Next(2); i++) Put(builder, $"S{i}", TestKinds.PushButton);
        if (dice.Next(2) == 0) Put(builder, "K1", TestKinds.HornRelay, "V 6");
        if (dice.Next(2) == 0) Put(builder, "P1", TestKinds.Ammeter, "A 30");
        builder.Wire("w1", "G1.neg", "X1", Any(2)).Wire("w2", "G1.pos", "chassis", Any(2));
        int wires = 5 + dice.Next(10);
        for (int i = 3; i < wires; i++)
        {
            var (from, to) = TwoEnds();
            builder.Wire($"w{i}", from, to, Any(12));
        }
        return builder.Build();
    }

    private void Put(CircuitBuilder builder, string id, PartKind kind, string rating = "", string? on = null)
    {
        var details = new PartDetails();
        if (rating.Split(' ') is [var name, var value])
            details = details with { Ratings = details.Ratings.Add(name, new(dice.Next(5) + Number(" " + value), kind.Ratings[0].Unit)) };
        if (on is not null) details = details with { Joints = details.Joints.Add("1", on) };
        builder.Part(id, kind, details);
        Enter(id, kind);
    }

    private void Enter(string id, PartKind kind)
    {
        kinds[id] = kind;
        if (id != "G1") ends.AddRange(kind.Terminals.Select(t => $"{id}.{t.Name}"));
    }

    private (string, string) TwoEnds()
    {
        string from = ends[dice.Next(ends.Count)], to;
        do to = dice.Next(6) == 0 ? "chassis" : ends[dice.Next(ends.Count)];
        while (to.Split('.')[0] == from.Split('.')[0]);
        return (from, to);
    }

    private Wire Any(int gauge) => WireOf($"{gauge + (2 * dice.Next(3))} {Colours[dice.Next(Colours.Length)]} {1 + dice.Next(9)} m");

    private EditGroup[] Lines()
    {
        var fates = Before.Conductors.Skip(2).ToDictionary(c => c.Id, _ => dice.Next(7));
        List<EditGroup> takenOut = [.. fates.Where(f => f.Value == 0).Select(f => TakeOut(f.Key))];
        string[] gone = [.. Before.Parts.Where(p => p.Id[0] is 'E' or 'S' && dice.Next(4) == 0).Select(p => p.Id)];
        foreach (var wire in Before.Conductors)
            if (wire.Ends.Any(e => gone.Contains(e.Part)) && fates[wire.Id] != 0)
            {
                fates[wire.Id] = 0;
                takenOut.Add(TakeOut(wire.Id));
            }
        takenOut = [.. takenOut.OrderBy(g => Number(((TakeOutEdit)g.Edits[0]).Ids[0]))];
        List<EditGroup> replaced = [], fitted = [], moved = [], renewed = [], run = [];
        ends.RemoveAll(e => gone.Contains(e.Split('.')[0]));
        foreach (var part in Before.Parts.Where(p => p.Id != "G1" && !gone.Contains(p.Id)))
            if (dice.Next(3) == 0 && Replaced(part, fates) is { } line) replaced.Add(line);
        for (int i = 10; i < 10 + dice.Next(4); i++)
        {
            var kind = dice.Next(2) == 0 ? TestKinds.Fuse : TestKinds.Relay;
            string id = (kind == TestKinds.Fuse ? "F" : "K") + i;
            fitted.Add(Fit(id, kind, "10 A", joints: dice.Next(3) == 0 ? (kind == TestKinds.Fuse ? "1" : "30") + " on X1" : ""));
            Enter(id, kind);
        }
        foreach (var wire in Before.Conductors.Skip(2)) MoveOrRenew(wire, fates[wire.Id], moved, renewed);
        for (int i = 50; i < 50 + dice.Next(4); i++)
        {
            var (from, to) = TwoEnds();
            run.Add(Run($"w{i}", from, to, "14 GY 1 m"));
        }
        EditGroup[] last = dice.Next(2) == 0 ? [ReplaceReversed("G1", TestKinds.Battery, "24 V")] : [];
        return [.. takenOut, .. gone.Select(id => TakeOut(id)), .. replaced, .. fitted, .. moved, .. renewed, .. run, .. last];
    }

    private EditGroup? Replaced(Part part, Dictionary<string, int> fates)
    {
        int staying = Before.Conductors.Where(c => fates.GetValueOrDefault(c.Id, 9) > 2).SelectMany(c => c.Ends).Count(e => e.Part == part.Id);
        if (part.Id == "K1")
        {
            ends.RemoveAll(e => e.StartsWith("K1.", StringComparison.Ordinal));
            Enter("K1", TestKinds.Relay);
            return Replace("K1", TestKinds.Relay, "24 V", "B = 30, H = 87, S = 85");
        }
        if (part.Id == "P1" && staying >= 2)
        {
            bool isAlone = Before.Conductors.All(c => fates.GetValueOrDefault(c.Id, 9) is 0 or > 2);
            return !isAlone ? null : dice.Next(2) == 0 ? Reverse("P1") : ReplaceReversed("P1", TestKinds.Ammeter, "60 A");
        }
        return part.Id[0] switch
        {
            'E' => Replace(part.Id, TestKinds.Lamp, "24 V"),
            'F' => Replace(part.Id, TestKinds.Fuse, "25 A"),
            _ => null,
        };
    }

    private void MoveOrRenew(Conductor wire, int fate, List<EditGroup> moved, List<EditGroup> renewed)
    {
        if (fate is not (1 or 2))
        {
            if (fate == 3) renewed.Add(Renew(wire.Id, "4 TQ"));
            return;
        }
        string[] others = [.. ends.Where(e => wire.Ends.All(own => own.Part != e.Split('.')[0]))];
        if (others.Length == 0) return;
        string to = others[dice.Next(others.Length)], also = others[dice.Next(others.Length)];
        bool isBoth = fate == 2 && to.Split('.')[0] != also.Split('.')[0] && !wire.To.IsChassis;
        moved.Add(Move(wire.Id, $"{wire.From} to {to}" + (isBoth ? $", {wire.To} to {also}" : ""), dice.Next(3) == 0 ? "4 PK" : ""));
    }

    private static int Number(string id) => int.Parse(id[1..], System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>Pseudo-random numbers that are the same everywhere (Numerical Recipes' linear congruential generator, from memory).</summary>
    private sealed class Dice(int seed)
    {
        private uint state = (uint)seed * 2654435761u;

        public int Next(int below)
        {
            state = (state * 1664525u) + 1013904223u;
            return (int)((state >> 8) % (uint)below);
        }
    }
}
