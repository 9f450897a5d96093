using System.Text;
using Hotside.Circuits;
using Hotside.Studies;
using Hotside.Studies.Figures;
using Hotside.Wording;

namespace Hotside.Outputs;

/// <summary>The figures of one circuit in one setting as text: what the sources do, the loads, what is in line, the wires, and what is odd.</summary>
/// <param name="Circuit">The circuit.</param>
/// <param name="Figures">Its figures.</param>
/// <param name="Study">What is on by paths; <see langword="null"/> where it is a step.</param>
/// <param name="IsWhole">Whether wires and parts in line are told too.</param>
internal sealed record FigureSection(Circuit Circuit, SettingFigures Figures, SettingStudy? Study, bool IsWhole)
{
    // What a table shows as nothing carries nothing.
    private const double LeastAmperes = 0.0005;

    /// <summary>The section.</summary>
    /// <param name="words">Whose words.</param>
    /// <param name="step">Which step it is, for one of several.</param>
    public string ToText(Vocabulary words, string step)
    {
        StringBuilder text = new();
        text.Append(step.Length > 0 ? $"\n  {step}: " : ": ").Append(FigureText.Standing(Figures, Circuit)).Append('\n');
        foreach (string line in Figures.Sources.Select(s => FigureText.Source(s, Figures.Shorted, words)).OfType<string>().Concat(FigureText.Relays(Figures, Study, Circuit)))
            text.Append("  ").Append(line).Append('\n');
        if (Figures.Shorted.Length > 0) text.Append("  feed and return are one point: what is in the way below carries the current of a short circuit, fuses taken as whole\n");
        Loads(text);
        if (!IsWhole) return text.ToString();
        InLine(text);
        Wires(text);
        string[] floating = [.. Figures.Terminals.Where(t => t.Voltage is null).Select(t => Circuit.TextOf(t.End)).Distinct(StringComparer.Ordinal)];
        if (floating.Length > 0) text.Append("\n  floats, so that a meter shows nothing that means anything: ").Append(FigureText.Some(floating)).Append('\n');
        return text.ToString();
    }

    private void Loads(StringBuilder text)
    {
        var live = Figures.Loads.Where(l => l.IsLive).ToArray();
        if (live.Length > 0)
            text.Append('\n').Append(TextColumns.Of("  ",
            [
                ["load", "volts", "of rated", "amperes", "watts", "lost in feed", "in return", "volts at its ends", ""],
                .. live.Select(l => new[]
                {
                    l.Name, Numbers.Fixed(Math.Abs(l.Voltage.Volts), 2), Numbers.Fixed(l.OfRated.Percent, 0) + " %", Numbers.ThreeFigures(Math.Abs(l.Current.Amperes)),
                    Numbers.ThreeFigures(Math.Abs((double)l.Power.Watts)), Lost(l, isFeed: true), Lost(l, isFeed: false), Ends(l), FigureText.Remark(l, Study),
                }),
            ], 1, 2, 3, 4, 5, 6));
        string[] between = [.. Figures.Loads.Where(l => !l.IsLive && l.IsBetweenFeeds).Select(l => $"{l.Name} ({Ends(l)})")];
        if (between.Length > 0) text.Append("  off, both ends on feeds: ").Append(FigureText.Some(between)).Append('\n');
        string[] off = [.. Figures.Loads.Where(l => !l.IsLive && !l.IsBetweenFeeds).Select(l => l.Name)];
        if (off.Length > 0) text.Append("  off: ").Append(FigureText.Some(off)).Append('\n');
        string[] against = Study is null || Study.IsShort ? [] : [.. Study.On.Where(n => Figures.Loads.Any(l => l.Name == n && !l.IsLive))];
        if (against.Length > 0) text.Append("  fed, yet without current: ").Append(FigureText.Some(against)).Append('\n');
    }

    private string Lost(ElementFigure load, bool isFeed) => LoadLoss.Of(load, Circuit, Figures) is { } lost ? Numbers.Fixed(isFeed ? lost.Feed : lost.Return, 3) : "";

    private double? At(End end) => end == Circuit.System.ReturnNode ? 0 : Figures.Terminals.FirstOrDefault(f => f.End == end)?.Voltage?.Volts;

    private string Ends(ElementFigure load) => string.Join(", ", new[] { load.Element.From, load.Element.To }
        .Select(t => Nodes.NodeOf(load.Part, t)).Select(e => Figures.Terminals.FirstOrDefault(f => f.End == e) is { } at ? $"{Circuit.TextOf(e)} {Meter(at)}" : "").Where(t => t.Length > 0));

    private static string Meter(TerminalFigure at) => at.Voltage is { } volts ? QuantityWords.MeterVolts(volts.Volts) : "floats";

    // Fuses, switches, contacts, resistors: by part, since that is what has a rating.
    private void InLine(StringBuilder text)
    {
        var rows = Circuit.Parts.Where(p => p.Kind.Elements.Any(e => e.IsInLine)).Select(p => (Part: p, Amperes: Figures.Through(p.Id).Amperes)).Where(r => r.Amperes > LeastAmperes).ToArray();
        if (rows.Length == 0) return;
        text.Append('\n').Append(TextColumns.Of("  ",
        [
            ["in line", "", "amperes", "made for", "drop, V", "heat, W", ""],
            .. rows.Select(r => (r.Part, r.Amperes, Rated: RatingOf(r.Part))).Select(r => new[]
            {
                r.Part.Id, r.Part.Title, Numbers.ThreeFigures(r.Amperes), r.Rated is { } rated ? Numbers.Plain(rated, 2) + " A" : "", DropOf(r.Part), HeatOf(r.Part), Remark(r.Part, r.Amperes > r.Rated),
            }),
        ], 2, 3, 4, 5));
    }

    private string Remark(Part part, bool isOver) => string.Join(", ", new[] { isOver ? "over its rating" : "", Reading(part) }.Where(t => t.Length > 0));

    // An ammeter shows a discharge where current leaves it on the side that is not the battery's.
    private string Reading(Part part)
    {
        if (Figures.Elements.FirstOrDefault(e => e.Part == part && e.Element.Type == ElementType.Shunt) is not { } shunt || Circuit.Sources.FirstOrDefault(s => s.Part.IsStandingSource) is not { } battery) return "";
        var nodes = Nodes.Of(Circuit, (other, element) => other != part && element.IsLink);
        bool from = nodes.AreOne(battery.Feed, Nodes.NodeOf(part, shunt.Element.From)), to = nodes.AreOne(battery.Feed, Nodes.NodeOf(part, shunt.Element.To));
        return from == to ? "" : from == shunt.Current.Amperes > 0 ? "shows a discharge" : "shows a charge";
    }

    private string HeatOf(Part part) => Numbers.Fixed(Figures.Elements.Where(e => e.Part == part && e.Element.IsInLine).Sum(e => Math.Abs(e.Voltage.Volts * e.Current.Amperes)), 2);

    private static double? RatingOf(Part part) => part.Kind.Elements.Where(e => e.IsInLine).Select(e => part.Rated(e.Name, Unit.Ampere)).FirstOrDefault(a => a is not null);

    private string DropOf(Part part) =>
        Numbers.Fixed(Figures.Elements.Where(e => e.Part == part && e.Element.IsInLine && Math.Abs(e.Current.Amperes) > LeastAmperes).Select(e => Math.Abs(e.Voltage.Volts)).DefaultIfEmpty(0).Max(), 3);

    private void Wires(StringBuilder text)
    {
        var live = Figures.Conductors.Where(c => Math.Abs(c.Current.Amperes) > LeastAmperes).ToArray();
        if (live.Length > 0)
            text.Append('\n').Append(TextColumns.Of("  ",
            [
                ["wire", "from", "to", "", "amperes", "drop, V", "heat, W", ""],
                .. live.Select(c => new[]
                {
                    c.Conductor.Id, Circuit.TextOf(c.Current.Amperes < 0 ? c.Conductor.To : c.Conductor.From), Circuit.TextOf(c.Current.Amperes < 0 ? c.Conductor.From : c.Conductor.To),
                    c.Conductor.Wire.Label, Numbers.ThreeFigures(Math.Abs(c.Current.Amperes)), c.IsAssumed ? "?" : Numbers.Fixed(Math.Abs(c.Drop.Volts), 3),
                    c.IsAssumed ? "?" : Numbers.Fixed((double)c.Heat.Watts, 2), c.IsShared ? "shares with others, not known how" : "",
                }),
            ], 4, 5, 6));
        int idle = Figures.Conductors.Length - live.Length;
        if (idle > 0) text.Append(idle == Figures.Conductors.Length ? "\n  no wire carries anything\n" : $"  {Numbers.Whole(idle)} of {Numbers.Whole(Figures.Conductors.Length)} wires {(idle == 1 ? "carries" : "carry")} nothing\n");
    }
}
