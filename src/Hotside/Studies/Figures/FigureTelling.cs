using Hotside.Circuits;
using Hotside.Solving;
using Hotside.Solving.Laws;
using Hotside.Solving.Relays;
using UnitsNet;

namespace Hotside.Studies.Figures;

/// <summary>Turns the solver's answer into figures with units, counted from the feed.</summary>
internal static class FigureTelling
{
    public static SettingFigures Of(Circuit circuit, Solution solution)
    {
        // The sign of the feed against the return: the hot pole of the battery, else of the first source.
        var main = circuit.Sources.FirstOrDefault(s => s.Part.IsStandingSource) ?? circuit.Sources.FirstOrDefault();
        double sense = main is { PlusIsFeed: false } ? -1 : 1;
        var standing = solution.Positions.ToDictionary(p => (p.Part, p.Actuator), p => p.Position);
        Nodes joined = Nodes.Of(circuit, (part, element) => element.IsLink && IsClosed(part, element)), tied = Nodes.Of(circuit, (part, element) => element.IsInLine && IsClosed(part, element));
        var giving = circuit.Sources.Where(s => IsClosed(s.Part, s.Element)).ToArray();
        var feeds = giving.Where(s => s.Feed != circuit.System.ReturnNode).Select(s => s.Feed).ToArray();
        var ground = circuit.System.ReturnNode;
        Dictionary<End, double> entering = [];
        foreach (var element in solution.Elements)
        {
            End from = End.At(element.Part.Id, element.Element.From), to = End.At(element.Part.Id, element.Element.To);
            // A source's counts from its plus pole to its minus pole, which may be the other way.
            bool isTurned = circuit.Sources.FirstOrDefault(s => s.Part == element.Part && s.Element == element.Element) is { } source && source.Feed == from != source.PlusIsFeed;
            double amperes = isTurned ? -element.Amperes : element.Amperes;
            entering[from] = entering.GetValueOrDefault(from) + amperes;
            entering[to] = entering.GetValueOrDefault(to) - amperes;
        }
        return new(solution.Setting)
        {
            Positions = solution.Positions,
            Terminals = [.. solution.Terminals.Where(t => IsTerminal(circuit, t.End)).Select(t => new TerminalFigure(t.End, t.Volts is { } volts ? ElectricPotential.FromVolts(volts) : null)
            {
                Current = ElectricCurrent.FromAmperes(sense * entering.GetValueOrDefault(t.End)),
            })],
            Conductors =
            [
                .. solution.Conductors.Select(c => new ConductorFigure(c.Conductor, ElectricCurrent.FromAmperes(sense * c.Amperes), ElectricPotential.FromVolts(sense * c.Volts))
                {
                    IsAssumed = c.IsAssumed, IsShared = c.IsShared,
                }),
            ],
            Elements = [.. solution.Elements.Select(e => FigureOf(e, sense) with { IsBetweenFeeds = e.Element.IsConsumer && IsBetween(e) })],
            Relays = solution.Rest switch
            {
                RestKind.Settled => RelayOutcome.Settled,
                RestKind.Race => RelayOutcome.Race,
                RestKind.NeverSettles => RelayOutcome.NeverSettles,
                _ => RelayOutcome.NotSearchedOut,
            },
            Others = [.. solution.Others.Select(o => Of(circuit, o))],
            IfPulledBefore = solution.IfPulledBefore is { } back ? Of(circuit, back) : null,
            Assumptions = [.. solution.Assumptions.Select(a => new AssumedValue(a.Of, new(a.Value, UnitOf(a.What)), a.Source)).Distinct()],
            Shorted = [.. giving.Where(s => joined.AreOne(s.Feed, s.Return)).Select(s => s.Part.Id).Distinct()],
            IsExact = solution.IsExact,
        };

        bool IsClosed(Part part, Element element) => element.When is not { } when || when.Tests.All(t =>
            circuit.VariableOf(part, t.Actuator) is var variable && t.Positions.Contains(standing.GetValueOrDefault((variable.Part, variable.Actuator.Name), variable.Actuator.Rest)));

        bool IsBetween(ElementPoint element)
        {
            End from = Nodes.NodeOf(element.Part, element.Element.From), to = Nodes.NodeOf(element.Part, element.Element.To);
            return !joined.AreOne(from, to) && IsHot(from) && IsHot(to);
        }

        bool IsHot(End end) => !tied.AreOne(end, ground) && feeds.Any(f => tied.AreOne(f, end));
    }

    // What a source gives flows out of its feed pole, whichever that is.
    private static ElementFigure FigureOf(ElementPoint point, double sense)
    {
        double volts = point.Element.IsSource ? point.Volts : sense * point.Volts, amperes = point.Element.IsSource ? -point.Amperes : sense * point.Amperes;
        return new(point.Part, point.Element, ElectricPotential.FromVolts(volts), ElectricCurrent.FromAmperes(amperes), ElectricPotential.FromVolts(point.RatedVolts),
            ElectricCurrent.FromAmperes(point.Element.IsConsumer ? point.RatedAmperes : 0));
    }

    private static bool IsTerminal(Circuit circuit, End end) => end.Part is null || circuit.FindPart(end.Part) is not { } part
        || part.Kind.TakesAnyTerminal || part.Kind.Terminals.Any(t => t.Name == end.Terminal) || circuit.Conductors.Any(c => c.From == end || c.To == end);

    private static Unit UnitOf(AssumedFigure what) => what switch
    {
        AssumedFigure.Current => Unit.Ampere,
        AssumedFigure.Power => Unit.Watt,
        AssumedFigure.Voltage => Unit.Volt,
        _ => Unit.Ohm,
    };
}
