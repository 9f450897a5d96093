using Hotside.Circuits;
using Hotside.Proposals;

namespace Hotside.Tests.Proposals;

/// <summary>Fuses, wires, relays and colours as somebody has to buy them.</summary>
public class ProposedSizesTests
{
    public static TheoryData<string> Cases => [.. ProposalCases.All.Where(n => !ProposalCases.Of(n).Proposal.IsEmpty)];

    // SAE J1284, SAE J1888 and ISO 8820-3: the ratings in which blade fuses are made.
    private static readonly double[] Made = [1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40, 50, 60, 70, 80, 100];

    // 33 CFR 183.425, table 5, columns 60 °C and 80 °C, by gauge.
    private static readonly Dictionary<int, (double At60, double At80)> Coast = new()
    {
        [18] = (10, 15), [16] = (15, 20), [14] = (20, 25), [12] = (25, 35), [10] = (40, 50), [8] = (55, 70), [6] = (80, 100), [4] = (105, 130), [2] = (140, 175),
    };

    private static IEnumerable<Part> Touched(Proposal proposal) =>
        proposal.Alteration.After.Parts.Where(p => proposal.Alteration.NumbersOf(p.Id).Length > 0);

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_fuse_is_one_that_is_made_and_guards_the_wires_behind_it(string name)
    {
        var proposal = ProposalCases.Of(name).Proposal;
        var sizes = ProposalCases.Read(name).OrThrow().Sizes.After;
        foreach (var fuse in Touched(proposal).Where(p => p.Kind.Id == "fuse"))
        {
            double rating = fuse.Ratings.Single(r => r.Name == "A").Quantity.Value;
            Assert.Contains(rating, Made);
            foreach (var wire in sizes.Conductors.Where(c => c.ProtectedBy.SequenceEqual([fuse.Id]) && c.Conductor.Wire is { Size.Gauge: { } gauge, Loom: null } && Coast.ContainsKey(gauge)))
            {
                var (at60, at80) = Coast[wire.Conductor.Wire.Size!.Value.Gauge!.Value];
                double allowed = proposal.Alteration.After.System.Insulation == "GPT" && !wire.Conductor.Wire.IsBraid ? at80 : at60;
                Assert.True(rating <= allowed, $"{fuse.Id} of {rating} A before {wire.Conductor.Id} that may carry {allowed} A");
            }
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_new_wire_is_sized_coloured_and_to_be_measured(string name)
    {
        var proposal = ProposalCases.Of(name).Proposal;
        foreach (var wire in proposal.Alteration.After.Conductors.Where(c => proposal.Alteration.Before.FindConductor(c.Id) is null))
        {
            // 33 CFR 183.425: 16 AWG at least for a wire that runs by itself.
            Assert.True(wire.Wire.Size is { Area: >= 1.3 or 1 }, $"{wire.Id} {wire.Wire.Label}");
            Assert.NotNull(wire.Wire.Colour);
            Assert.NotNull(wire.Wire.LengthInMetres);
            Assert.True(proposal.Lines.Single(l => l.Text.StartsWith($"run {wire.Id}:", StringComparison.Ordinal)).IsToMeasure);
            // Black is the return's where minus is grounded.
            bool lands = wire.Ends.Any(e => e == proposal.Alteration.After.System.ReturnNode);
            Assert.True(wire.Wire.Colour!.Value.Base == "BK" == lands, $"{wire.Id} is {wire.Wire.Colour}, {(lands ? "and lands" : "but does not land")} on the return");
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_relay_has_a_load_worth_it_and_each_contact_gets_one_at_most(string name)
    {
        var proposal = ProposalCases.Of(name).Proposal;
        var relays = proposal.Alteration.After.Parts.Where(p => p.Kind.Id == "relay" && proposal.Alteration.Before.FindPart(p.Id) is null).ToArray();
        var sizes = ProposalCases.Read(name).OrThrow().Sizes.After;
        Assert.All(relays, r => Assert.InRange(sizes.InLine.First(i => i.Part.Id == r.Id).Current.Amperes, 1, r.Ratings.First(q => q.Name == "A").Quantity.Value));
        var study = ProposalCases.Read(name).OrThrow().Study.After;
        Assert.All(study.Loads, l => Assert.True(l.Chain.Count(c => relays.Any(r => r.Id == c)) <= 1, $"{l.Name} is fed through {string.Join(", ", l.Chain)}"));
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_kept_load_never_gets_a_thinner_wire_and_removed_ids_are_not_used_again(string name)
    {
        var (_, proposal) = ProposalCases.Of(name);
        var (before, after) = (proposal.Alteration.Before, proposal.Alteration.After);
        Assert.All(before.Conductors, w => Assert.True(after.FindConductor(w.Id) is not { Wire.Size: { } now } || w.Wire.Size is not { } was || now.Area >= was.Area * 0.999, w.Id));
        // Another part by the id of one that goes would be of another class.
        Assert.All(after.Parts, p => Assert.True(before.FindPart(p.Id) is not { } old || old.Kind.Letter == p.Kind.Letter, p.Id));
    }
}
