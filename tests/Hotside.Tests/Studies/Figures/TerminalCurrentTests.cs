using Hotside.Circuits;
using Hotside.Studies;
using Hotside.Tests.Outputs;

namespace Hotside.Tests.Studies.Figures;

/// <summary>What enters a part at a terminal is what its wires bring there (Kirchhoff's current law).</summary>
public sealed class TerminalCurrentTests
{
    public static TheoryData<string> Jobs => [.. GalleryJobs.Names];

    [Theory]
    [MemberData(nameof(Jobs))]
    public void What_enters_at_a_terminal_is_what_its_wires_bring_and_leaves_at_the_others(string job)
    {
        var alteration = GalleryJobs.Read(job).Alteration;
        foreach (var circuit in new[] { alteration.Before, alteration.After })
        {
            var bolted = circuit.Parts.SelectMany(p => p.Joints.SelectMany(j => new[] { End.At(p.Id, j.Terminal), j.On }).Append(End.At(p.Id, "case"))).ToHashSet();
            var study = CircuitStudy.Of(circuit);
            foreach (var figures in study.Settings.Where(s => !s.IsShort).Select(s => s.Figures).Concat(study.ProposedSettings.Contains("everything on") ? [study.Setting("everything on").Figures] : []))
            {
                double largest = figures.Conductors.Select(c => Math.Abs(c.Current.Amperes)).DefaultIfEmpty(0).Max(), near = 1e-6 + (1e-6 * largest);
                foreach (var terminal in figures.Terminals.Where(t => t.End.Part is not null && !bolted.Contains(t.End) && circuit.FindPart(t.End.Part!) is { } p && p.Kind.Elements.Any(e => e.From == t.End.Terminal || e.To == t.End.Terminal)))
                {
                    double brought = figures.Conductors.Sum(c => (c.Conductor.To == terminal.End ? c.Current.Amperes : 0) - (c.Conductor.From == terminal.End ? c.Current.Amperes : 0));
                    Assert.True(Math.Abs(brought - terminal.Current.Amperes) <= near, $"{job}, {figures.Setting.Name}: {terminal.End} gets {brought} A by its wires, {terminal.Current.Amperes} A enter");
                }
            }
        }
    }
}
