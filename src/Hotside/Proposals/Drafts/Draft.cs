using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Hotside.Circuits;
using Hotside.Kinds;

namespace Hotside.Proposals.Drafts;

/// <summary>The after circuit in the making: parts and wires that steps alter, with what is to be said of each. Used by one thread, and by one proposal.</summary>
internal sealed partial class Draft
{
    private readonly List<Part> parts;
    private readonly List<Conductor> wires;
    private readonly Dictionary<string, DraftNote> notes = new(StringComparer.Ordinal);
    private readonly List<string> order = [];
    private readonly HashSet<string> taken;
    private Circuit? built;

    /// <summary>A draft of a circuit under another supply.</summary>
    public Draft(Circuit before, ElectricalSystem system)
    {
        Before = before;
        System = system;
        parts = [.. before.Parts];
        wires = [.. before.Conductors];
        taken = [.. before.Parts.Select(p => p.Id), .. before.Conductors.Select(c => c.Id)];
    }

    /// <summary>The circuit as it was.</summary>
    public Circuit Before { get; }

    /// <summary>The supply after.</summary>
    public ElectricalSystem System { get; }

    /// <summary>The items that have notes, in the order in which steps came to them.</summary>
    public IReadOnlyList<string> Order => order;

    /// <summary>Parts that are replaced though the new one states the same.</summary>
    public HashSet<string> Renewed { get; } = new(StringComparer.Ordinal);

    /// <summary>The circuit as drafted so far.</summary>
    public Circuit Circuit => built ??= new(System, [.. parts], [.. wires], Before.Settings);

    /// <summary>A part as drafted.</summary>
    public Part Part(string id) => parts.First(p => p.Id == id);

    /// <summary>A wire as drafted.</summary>
    public Conductor Wire(string id) => wires.First(w => w.Id == id);

    /// <summary>Whether the draft has a wire.</summary>
    public bool HasWire(string id) => wires.Any(w => w.Id == id);

    /// <summary>Whether a part or wire is new.</summary>
    public bool IsNew(string id) => Before.FindPart(id) is null && Before.FindConductor(id) is null;

    /// <summary>The wires that end on a terminal, as drafted.</summary>
    public IReadOnlyList<Conductor> WiresAt(End end) => [.. wires.Where(w => w.From == end || w.To == end)];

    /// <summary>What is said of a part or wire.</summary>
    public DraftNote Note(string id)
    {
        if (notes.TryGetValue(id, out var note)) return note;
        order.Add(id);
        return notes[id] = new();
    }

    /// <summary>What is said of a part or wire; <see langword="null"/>: nothing.</summary>
    public DraftNote? NoteOf(string id) => notes.GetValueOrDefault(id);

    /// <summary>A kind by its id: as the job has it, else the library's.</summary>
    public PartKind KindOf(string id) => Before.Parts.Select(p => p.Kind).FirstOrDefault(k => k.Id == id) ?? Catalogue.Standard.Find(id)!;

    /// <summary>Puts another specification in the place of a part's; joints and mount are what the specification says.</summary>
    public void Replace(string id, PartSpec spec, string reason)
    {
        int at = parts.FindIndex(p => p.Id == id);
        parts[at] = spec.As(id);
        Note(id).Reason ??= reason;
        built = null;
    }

    /// <summary>Fits a part under the lowest free number of its kind's letter.</summary>
    /// <returns>Its id.</returns>
    public string Fit(PartSpec spec, string reason)
    {
        string id = Free(spec.Kind.Letter.Length > 0 ? spec.Kind.Letter : "X", 1);
        parts.Add(spec.As(id));
        Note(id).Reason = reason;
        built = null;
        return id;
    }

    /// <summary>Takes parts and wires out.</summary>
    public void TakeOut(IEnumerable<string> ids, string reason)
    {
        foreach (string id in ids)
        {
            parts.RemoveAll(p => p.Id == id);
            wires.RemoveAll(w => w.Id == id);
            Note(id).Reason ??= reason;
        }
        built = null;
    }

    /// <summary>Runs a wire under the number after the highest.</summary>
    /// <returns>Its id.</returns>
    public string Run(End from, End to, Wire wire, string? reason)
    {
        int highest = taken.Select(i => WireNumber().Match(i)).Where(m => m.Success).Select(m => int.Parse(m.Groups[1].ValueSpan, global::System.Globalization.CultureInfo.InvariantCulture)).DefaultIfEmpty(0).Max();
        string id = Free("w", highest + 1);
        wires.Add(new(id, from, to, wire));
        Note(id).Reason = reason;
        built = null;
        return id;
    }

    /// <summary>Moves the end of a wire.</summary>
    public void Move(string id, End from, End to, string? reason)
    {
        int at = wires.FindIndex(w => w.Id == id);
        wires[at] = wires[at] with { From = wires[at].From == from ? to : wires[at].From, To = wires[at].From == from ? wires[at].To : wires[at].To == from ? to : wires[at].To };
        Note(id).Reason ??= reason;
        built = null;
    }

    /// <summary>Gives a wire other copper.</summary>
    public void Remake(string id, Wire wire, string? reason)
    {
        int at = wires.FindIndex(w => w.Id == id);
        wires[at] = wires[at] with { Wire = wire };
        Note(id).Reason ??= reason;
        built = null;
    }

    /// <summary>Parts of two terminals that are turned round, whatever is left at them.</summary>
    public HashSet<string> Turned { get; } = new(StringComparer.Ordinal);

    /// <summary>Swaps what stands on two terminals of a part: wires and joints.</summary>
    public void Swap(string id, string first, string second)
    {
        End a = End.At(id, first), b = End.At(id, second);
        if (Part(id).Kind.Terminals.Length == 2) Turned.Add(id);
        End Swapped(End end) => end == a ? b : end == b ? a : end;
        for (int i = 0; i < wires.Count; i++) wires[i] = wires[i] with { From = Swapped(wires[i].From), To = Swapped(wires[i].To) };
        for (int i = 0; i < parts.Count; i++)
        {
            var spec = parts[i].Spec;
            string Own(string terminal) => parts[i].Id != id ? terminal : terminal == first ? second : terminal == second ? first : terminal;
            parts[i] = parts[i] with
            {
                Spec = spec with
                {
                    Joints = [.. spec.Joints.Select(j => new Joint(Own(j.Terminal), Swapped(j.On)))],
                    FreeTerminals = [.. spec.FreeTerminals.Select(Own)],
                    Case = spec.Case?.On is { } on ? new(Swapped(on)) : spec.Case,
                },
            };
        }
        built = null;
    }

    private string Free(string letter, int from)
    {
        for (int n = from; ; n++)
            if (taken.Add(letter + Numbers.Whole(n)))
                return letter + Numbers.Whole(n);
    }

    [GeneratedRegex(@"^w(\d{1,6})$")]
    private static partial Regex WireNumber();
}
