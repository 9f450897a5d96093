using Hotside.Circuits;
using Hotside.Proposals.Rules;
using Hotside.Studies;

namespace Hotside.Proposals.Steps;

/// <summary>A pilot lamp between two ways returns through the lamps of the other: before these become LED lamps, it gets a diode from each way and a return of its own.</summary>
internal static class PilotStep
{
    /// <summary>Rewires the pilots of a draft, and says which they are.</summary>
    public static void Run(Workbench work)
    {
        foreach (var load in work.Before.Study.Loads.Where(l => IsPilot(work, l)).ToArray()) Part(work, load);
    }

    private static bool IsPilot(Workbench work, LoadStudy load) =>
        load is { Part.Kind: { Id: var kind, Terminals.Length: 2 }, Part.Joints.IsEmpty: true, InSeriesWith.Length: > 1 } && LedStep.Replaces(kind) && work.Draft.Circuit.FindPart(load.Part.Id) is not null
        && load.Part.Kind.Terminals.All(t => work.Draft.WiresAt(End.At(load.Part.Id, t.Name)).Count == 1) && load.InSeriesWith.All(o => IsBrighter(work, load, o));

    // Through the filament of a lamp of many times its watts, a pilot lights and the lamp does not.
    private static bool IsBrighter(Workbench work, LoadStudy pilot, string other) =>
        work.Before.Study.Loads.FirstOrDefault(l => l.Name == other) is { Element.Type: ElementType.Lamp } lamp && lamp.Part.Rated(lamp.Element.Name, Unit.Watt) >= 3 * (pilot.Part.Rated(pilot.Element.Name, Unit.Watt) ?? double.MaxValue);

    private static void Part(Workbench work, LoadStudy load)
    {
        var draft = work.Draft;
        End[] ends = [.. load.Part.Kind.Terminals.Select(t => End.At(load.Part.Id, t.Name))];
        string[] wires = [.. ends.Select(e => draft.WiresAt(e)[0].Id)];
        string reason = Workbench.Said(DecisionTable.Standard["pilot"].Reason, ("items", string.Join(" and ", wires)));
        bool isPlus = work.Thought.Circuit.Sources.Where(s => s.Element.When is null).All(s => s.PlusIsFeed);
        var kind = draft.KindOf("diode");
        foreach (var (wire, end) in wires.Zip(ends))
        {
            string diode = draft.Fit(new(kind) { Name = "Pilot diode", Ratings = [new("A", new(1, Unit.Ampere))] }, "each side lights the pilot and not the other side");
            draft.Move(wire, end, End.At(diode, isPlus ? "A" : "K"), "each side lights the pilot and not the other side");
            work.Run(End.At(diode, isPlus ? "K" : "A"), ends[0], draft.Wire(wire).Wire with { LengthInMetres = 0.1, Name = null });
            work.Decide(diode, DecisionKind.Fit, "each side lights the pilot and not the other side");
        }
        work.Run(ends[1], work.Return, Workbench.NewWire("BK", 0.3));
        work.DecideBy("pilot", load.Part.Id, ("items", string.Join(" and ", wires)));
        draft.Note(load.Part.Id).Reason = reason;
    }
}
