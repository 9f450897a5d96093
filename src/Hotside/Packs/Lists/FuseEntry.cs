using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnoses;
using Hotside.Sizing;
using Hotside.Studies;
using Hotside.Wording;

namespace Hotside.Packs.Lists;

/// <summary>A fuse, breaker or link as the fuse chart has it.</summary>
/// <param name="Part">The part.</param>
/// <param name="Name">Its id, with the way where it has several.</param>
internal sealed record FuseEntry(Part Part, string Name)
{
    // Of more a chart becomes a text (own choice).
    private const int MostNamed = 8;

    /// <summary>Whether it is replaced once it has opened.</summary>
    public bool IsFuse { get; private init; }

    /// <summary>Its rating in amperes; <see langword="null"/> when not known.</summary>
    public double? Amperes { get; private init; }

    /// <summary>What a list calls its rating.</summary>
    public string Rating { get; private init; } = "";

    /// <summary>The colour that a blade of that rating has, for a file does not say whether it is one; empty for what is no fuse, and for ratings that are not made as blades.</summary>
    public string Colour { get; private init; } = "";

    /// <summary>Where it is: its assembly, its place.</summary>
    public string Position { get; private init; } = "";

    /// <summary>What it is called; empty when it has no name.</summary>
    public string Title { get; private init; } = "";

    /// <summary>The loads that are dead without it, as names with what they are.</summary>
    public ImmutableArray<string> Dead { get; private init; } = [];

    /// <summary>The machines that it joins with a battery, and nothing else does: without it they charge nothing; ids.</summary>
    public ImmutableArray<string> Charged { get; private init; } = [];

    /// <summary>Whether it is one of several in a part, and more hangs on them than can be told apart.</summary>
    public bool IsUntold { get; private init; }

    /// <summary>What dies without it, as a text.</summary>
    public string DeadText => Dead.IsEmpty && IsUntold ? "not told by the circuit: see which wires leave it" : Dead.IsEmpty ? Charged.IsEmpty ? "no load" : $"no load; {PartWords.And([.. Charged])} no longer charges" : string.Join(", ", Dead);

    /// <summary>The thinnest wire that it guards, with its size; empty when there is none of known size.</summary>
    public string Guards { get; private init; } = "";

    /// <summary>The numbers of the changes that concern it.</summary>
    public ImmutableArray<int> Numbers { get; private init; } = [];

    /// <summary>All of the after circuit, by where they are, then by name.</summary>
    public static ImmutableArray<FuseEntry> All(PackSource source)
    {
        var fuses = source.Job.Sizes.After.Fuses;
        return [.. fuses.Select(f => Of(f, fuses.Count(o => o.Part.Id == f.Part.Id) > 1, source)).OrderBy(f => f.Position, NaturalOrder.Instance).ThenBy(f => f.Name, NaturalOrder.Instance)];
    }

    private static FuseEntry Of(FuseSizing fuse, bool isOneOfSeveral, PackSource source)
    {
        var part = fuse.Part;
        var after = source.Alteration.After;
        string assembly = part.Assembly is { } id ? after.FindPart(id) is { } box ? source.Words.Title(box) : id : "";
        var loads = source.Job.Study.After.Loads.Where(l => !l.Element.IsInternal && !l.Paths.IsEmpty).ToArray();
        // Of several ways in one block a path does not tell which it passes: what pulling the one parts from the battery does.
        LoadStudy[] behind = [.. loads.Where(l => l.Paths.All(p => p.HotWay.Contains(part.Id) || p.GroundWay.Contains(part.Id)))];
        var (all, pulled) = Joined(fuse, after);
        var feeds = Batteries(after);
        bool IsParted(LoadStudy load) => new[] { Nodes.NodeOf(load.Part, load.Element.From), Nodes.NodeOf(load.Part, load.Element.To) }
            .Any(end => feeds.Any(f => all.AreOne(f, end)) && !feeds.Any(f => pulled.AreOne(f, end)));
        LoadStudy[] dead = isOneOfSeveral ? [.. behind.Where(IsParted)] : behind;
        bool isUntold = isOneOfSeveral && dead.Length == 0 && behind.Length > 0;
        // A relay may feed the coil of another.
        for (int before = -1; before < dead.Length;)
        {
            before = dead.Length;
            dead = [.. loads.Where(l => dead.Contains(l) || DiesWithRelay(l, dead, loads, after))];
        }
        double? amperes = fuse.Rating?.Amperes;
        return new(part, FuseWay.NameOf(part, fuse.Element))
        {
            Amperes = amperes,
            Rating = amperes is { } known ? Circuits.Numbers.Plain(known) + " A" : string.Join(", ", QuantityWords.Of(part.Ratings)),
            Colour = fuse.Element.Type == ElementType.Fuse && amperes is { } blade ? FuseColour.Of(blade) : "",
            Position = string.Join("; ", new[] { assembly, part.Place ?? "" }.Where(t => t.Length > 0)),
            Title = part.Name ?? "",
            Dead = Named(dead, loads, source.Words),
            IsUntold = isUntold,
            Charged = ChargedThrough(fuse, after),
            Guards = fuse.Thinnest is { } wire ? $"{wire.Id}, {wire.Wire.Size}" : "",
            Numbers = source.Alteration.NumbersOf(part.Id),
            IsFuse = fuse.Element.Type == ElementType.Fuse,
        };
    }

    // Pulling it parts machine and battery.
    private static ImmutableArray<string> ChargedThrough(FuseSizing fuse, Circuit circuit)
    {
        var (all, pulled) = Joined(fuse, circuit);
        var batteries = Batteries(circuit);
        return [.. circuit.Sources.Where(m => m.Element.IsMachine && batteries.Any(b => all.AreOne(m.Feed, b) && !pulled.AreOne(m.Feed, b))).Select(m => m.Part.Id).Distinct()];
    }

    // What is one when every switch is closed, with the fuse in and pulled.
    private static (Nodes All, Nodes Pulled) Joined(FuseSizing fuse, Circuit circuit)
    {
        Nodes Of(bool isIn) => Nodes.Of(circuit, (part, element) => element.IsInLine && (isIn || part.Id != fuse.Part.Id || element.Name != fuse.Element.Name));
        return (Of(true), Of(false));
    }

    private static End[] Batteries(Circuit circuit) => [.. circuit.Sources.Where(s => s.Part.IsStandingSource).Select(s => s.Feed)];

    // A relay that closes only while it is pulled takes with it what it feeds.
    private static bool DiesWithRelay(LoadStudy load, LoadStudy[] dead, LoadStudy[] all, Circuit circuit) => load.Chain.Any(id =>
        circuit.FindPart(id) is { } relay && load.Paths.All(p => p.HotWay.Contains(id) || p.GroundWay.Contains(id)) && all.Any(l => l.Part.Id == id) && all.Where(l => l.Part.Id == id).All(dead.Contains)
        && relay.Kind.Elements.Where(e => e.Type == ElementType.Contact).All(e => e.When is { } when && !when.Tests.All(t => relay.Kind.Actuators.FirstOrDefault(a => a.Name == t.Actuator) is { } actuator && t.Positions.Contains(actuator.Rest))));

    // Of a main fuse it is shorter to say what is still alive.
    private static ImmutableArray<string> Named(LoadStudy[] dead, LoadStudy[] all, Vocabulary words)
    {
        string[] Parts(IEnumerable<LoadStudy> loads) => [.. loads.GroupBy(l => l.Part.Id).Select(g => PartWords.Named(g.First().Part, words))];
        string[] named = Parts(dead), alive = Parts(all.Except(dead));
        return named.Length <= MostNamed || alive.Length * 3 > named.Length ? [.. named] : [alive.Length == 0 ? "everything" : "everything but " + PartWords.And(alive)];
    }
}
