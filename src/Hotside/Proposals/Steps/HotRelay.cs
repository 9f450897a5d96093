using Hotside.Checks;
using Hotside.Circuits;
using Hotside.Studies;

namespace Hotside.Proposals.Steps;

/// <summary>A relay for loads that are switched on the hot side: its contact on the rail that feeds the switch, a fuse behind it, the old switch wire on its coil.</summary>
internal static class HotRelay
{
    /// <summary>Inserts the relay behind a switch's terminal.</summary>
    /// <returns>Its id; <see langword="null"/> where the wiring is another.</returns>
    public static string? Insert(Workbench work, Part control, LoadStudy[] fed, string reason, double amperes)
    {
        var draft = work.Draft;
        var path = fed[0].Paths[0];
        string? first = path.HotWay.Skip(path.HotWay.IndexOf(control.Id) + 1).FirstOrDefault();
        if (first is null || !draft.HasWire(first)) return null;
        End terminal = draft.Wire(first).Ends.First(e => e.Part == control.Id);
        Conductor[] wires = [.. draft.WiresAt(terminal)];
        if (draft.Circuit.Parts.Any(p => p.Joints.Any(j => j.On == terminal)) || Tap(work, fed[0], control) is not { } rail) return null;
        // Only what all loads in question pass is cut off; another load on the terminal would be left behind.
        if (wires.Any(w => work.Now.Study.Loads.Any(l => l.Paths.Any(p => p.HotWay.Contains(w.Id) && p.HotWay.Contains(control.Id)) && fed.All(f => f.Name != l.Name)))) return null;
        string relay = draft.Fit(RelayParts.Spec(work, NameOf(fed), amperes) with { Joints = [new("30", rail)] }, reason);
        if (wires is [var only]) AtTheLoad(work, relay, only, terminal, fed);
        else AtTheSwitch(work, relay, wires, terminal, fed[0].Part.Title);
        work.Run(End.At(relay, "85"), work.Return, Workbench.NewWire("BK", 0.3));
        return relay;
    }

    // The switch's wire goes to the coil; from the relay's fuses new wires run to where it ended.
    private static void AtTheLoad(Workbench work, string relay, Conductor wire, End terminal, LoadStudy[] fed)
    {
        var draft = work.Draft;
        End end = wire.From == terminal ? wire.To : wire.From;
        draft.Move(wire.Id, end, End.At(relay, "86"), "it then carries the coil's current alone");
        work.Comment(relay, "place it where the old wires reach; where one does not, run a new one of its size");
        Conductor[] onward = [.. draft.WiresAt(end)];
        if (IsFork(work, end, onward, fed))
        {
            foreach (var branch in onward) draft.Move(branch.Id, end, End.At(Fuse(work, relay, $"{Beam(fed)}, {SideOf(draft.Part(Other(branch, end).Part!))}", "one fault then leaves one lamp"), "2"), "each lamp has a fuse of its own");
            draft.TakeOut([end.Part!], "its wires meet at the relay now");
            work.Decide(end.Part!, DecisionKind.TakeOut, "its wires meet at the relay now");
            return;
        }
        bool isEach = fed.Any(l => Trade.IsHeadlamp(l.Part)) && onward.Length == 1 && fed.Select(l => l.Part.Id).Distinct().Count() == 2
            && end.Part is { } one && fed.Any(l => l.Part.Id == one) && Other(onward[0], end).Part is { } two && fed.Any(l => l.Part.Id == two);
        string name = Beam(fed);
        string fuse = Fuse(work, relay, isEach ? $"{name}, {SideOf(draft.Part(end.Part!))}" : name, isEach ? "one fault then leaves one lamp" : "the new wire is born protected");
        var copper = wire.Wire with { Condition = null, Name = null, Insulation = null };
        string run = work.Run(End.At(fuse, "2"), end, copper with { Colour = RelayParts.Traced(work, copper.Colour, relay) });
        if (draft.Wire(run).Wire.Colour?.Base == "BK") draft.Remake(run, draft.Wire(run).Wire with { Colour = Workbench.NewWire(RelayParts.Colour(work, relay, end.Part ?? ""), 1).Colour }, null);
        if (!isEach) return;
        string second = Fuse(work, relay, $"{name}, {SideOf(draft.Part(Other(onward[0], end).Part!))}", "one fault then leaves one lamp");
        draft.Move(onward[0].Id, end, End.At(second, "2"), "each lamp has a fuse of its own");
    }

    // A splice from which each headlamp has its own wire.
    private static bool IsFork(Workbench work, End end, Conductor[] onward, LoadStudy[] fed) =>
        end.Part is { } id && work.Draft.Part(id).Kind.IsSplice && onward.Length > 1 && onward.All(w => Other(w, end).Part is { } lamp && fed.Any(l => l.Part.Id == lamp && Trade.IsHeadlamp(l.Part)))
        && work.Draft.Circuit.Parts.All(p => p.Joints.All(j => j.On != end));

    private static string Beam(LoadStudy[] fed) => NameOf(fed).Replace("-beam relay", " beam", StringComparison.Ordinal).Replace(" relay", "", StringComparison.Ordinal);

    // Several wires leave the switch: they go to the relay's fuse, and one new wire leads from the switch to the coil.
    private static void AtTheSwitch(Workbench work, string relay, Conductor[] wires, End terminal, string name)
    {
        string fuse = Fuse(work, relay, name, "its wires need no longer be guarded through the switch");
        foreach (var wire in wires) work.Draft.Move(wire.Id, terminal, End.At(fuse, "2"), "the relay feeds it now");
        work.Run(terminal, End.At(relay, "86"), Workbench.NewWire(RelayParts.Colour(work, relay, terminal.Part!), 0.5));
    }

    private static string Fuse(Workbench work, string relay, string name, string reason)
    {
        string id = work.Draft.Fit(new(work.Draft.KindOf("fuse")) { Name = name, Joints = [new("1", End.At(relay, "87"))] }, reason);
        work.Decide(id, DecisionKind.Fit, reason);
        return id;
    }

    // The last rail or stud before any contact of the way, else the feed side of its first fuse.
    private static End? Tap(Workbench work, LoadStudy load, Part control)
    {
        End? found = null;
        string? before = null;
        foreach (string id in load.Paths[0].HotWay.TakeWhile(i => i != control.Id))
        {
            if (work.Draft.Circuit.FindPart(id) is { } part)
            {
                if (load.SwitchedBy.Contains(id) || load.Chain.Contains(id)) break;
                if (part.Kind.OnlyTerminal is { } only && part.Kind.Elements.IsEmpty) found = End.At(id, only);
                else if (found is null && part.Kind.Elements is [{ Type: ElementType.Fuse or ElementType.Breaker }])
                    found = part.Joints.Select(j => (End?)j.On).FirstOrDefault() ?? (before is not null && work.Draft.HasWire(before) ? work.Draft.Wire(before).Ends.FirstOrDefault(e => e.Part == id) : null);
            }
            before = id;
        }
        return found;
    }

    private static string NameOf(LoadStudy[] fed)
    {
        var element = fed[0].Element;
        bool isOne = fed.All(l => l.Element.Name == element.Name);
        return Trade.IsHeadlamp(fed[0].Part) && isOne ? $"{char.ToUpperInvariant(element.Name[0])}{element.Name[1..]}-beam relay" : $"{fed[0].Part.Title} relay";
    }

    // "Headlamp, left" says which side.
    private static string SideOf(Part lamp) => lamp.Title[(lamp.Title.LastIndexOf(", ", StringComparison.Ordinal) is >= 0 and var at ? at + 2 : 0)..];

    private static End Other(Conductor wire, End end) => wire.From == end ? wire.To : wire.From;
}
