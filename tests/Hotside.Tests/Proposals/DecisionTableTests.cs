using Hotside.Circuits;
using Hotside.Kinds;
using Hotside.Proposals;
using Hotside.Proposals.Rules;
using Hotside.Tests.Support;

namespace Hotside.Tests.Proposals;

/// <summary>The table by which parts are decided, and what it decides for the gallery, read with a mechanic's eye.</summary>
public class DecisionTableTests
{
    private static DecisionTable Table => DecisionTable.Standard;

    [Fact]
    public void Rules_speak_the_words_of_the_catalogue()
    {
        Assert.All(Table.Rules.Select(r => r.Voltage).OfType<string>(), w => Assert.Contains(w, Sensitivity.VoltageWords));
        Assert.All(Table.Rules.Select(r => r.Polarity).OfType<string>(), w => Assert.Contains(w, Sensitivity.PolarityWords));
        Assert.All(Table.Rules.Select(r => r.Current).OfType<string>(), w => Assert.Contains(w, Sensitivity.CurrentWords));
        Assert.All(Table.Rules.SelectMany(r => r.On), t => Assert.True(Enum.TryParse<ElementType>(t, ignoreCase: true, out _), t));
        Assert.All(Table.Rules.SelectMany(r => r.Kinds), k => Assert.NotNull(Catalogue.Standard.Find(k)));
    }

    [Fact]
    public void Every_rule_says_why_and_where_it_is_from_and_every_option_has_a_choice() => Assert.Multiple(
        () => Assert.All(Table.Rules, r => Assert.False(string.IsNullOrWhiteSpace(r.Reason) || string.IsNullOrWhiteSpace(r.Source), r.Id)),
        () => Assert.All(Table.Rules.Select(r => r.Option).OfType<string>(), o => Assert.Contains(o, Table.Options.Select(t => t.Name))),
        () => Assert.All(Table.Options, o => Assert.True(o.Choices.Length > 1 && o.Meaning.Length > 0, o.Name)),
        // A reason with a colon or a number sign would need quotes in a job file.
        () => Assert.All(Table.Rules, r => Assert.DoesNotContain(": ", r.Reason, StringComparison.Ordinal)));

    [Fact]
    public void Every_part_of_the_catalogue_that_minds_volts_is_met_by_a_rule_or_is_no_load()
    {
        var met = Catalogue.Standard.Kinds.Where(k => k.Voltage is "match" or "misreads" or "brief")
            .Where(k => k.Elements.Any(e => e.IsConsumer && !e.IsInternal) && !k.Elements.Any(e => e.IsSource))
            .Where(k => !Table.Rules.Any(r => r.VoltsAbove is not null && k.Elements.Any(e => e.IsConsumer && r.IsAbout(k, e)))).Select(k => k.Id);
        Assert.Empty(met);
    }

    [Fact]
    public void What_each_part_of_the_gallery_gets_is_approved() => Approve.Text(
        string.Concat(ProposalCases.Gallery.Select(name => $"{name}\n{string.Concat(ProposalCases.Of(name).Proposal.Decisions.Select(Line))}\n")),
        "tests", "Hotside.Tests", "Proposals", "gallery-decisions.approved.txt");

    [Fact]
    public void What_is_proposed_for_the_gallery_is_approved() => Approve.Text(
        string.Concat(ProposalCases.Gallery.Select(name => $"=== {name}\n{string.Concat(ProposalCases.Of(name).Proposal.Lines.Select(l => string.Concat(l.Questions.Select(q => $"# {q}\n")) + l.Text + (l.IsToMeasure ? "  # measure" : "") + "\n"))}\n")),
        "tests", "Hotside.Tests", "Proposals", "gallery-proposals.approved.txt");

    private static string Line(Decision d) => $"  {d.Item,-8}{d.Word,-10}{(d.Rule.Length > 0 ? d.Rule : "-"),-20}{(d.Figures is { } f && d.Kind != DecisionKind.Keep ? $"x{Numbers.Brief(f.Share)}{(f.Turns ? " turns" : "")}" : ""),-14}{d.Reason}\n";
}
