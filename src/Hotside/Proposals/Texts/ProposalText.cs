using System.Text;
using Hotside.Diagnostics;
using Hotside.Notation;
using Hotside.Reading;

namespace Hotside.Proposals.Texts;

/// <summary>Writes a proposal as a job file: the owner's text, what was decided as comments, the alteration.</summary>
internal static class ProposalText
{
    private const int Width = 110;

    /// <summary>The whole file.</summary>
    public static string Of(string before, string lineEnd, Proposal proposal)
    {
        StringBuilder text = new();
        Head(text, proposal);
        if (!proposal.Lines.IsEmpty)
        {
            text.Append("alteration:\n");
            text.Append("  title: ").Append(YamlQuotes.Of(proposal.Title)).Append('\n');
            text.Append("  system: ").Append(YamlQuotes.Of(LineWriter.System(proposal.Alteration.After.System, proposal.Alteration.After))).Append('\n');
            text.Append("  changes:\n");
            foreach (var line in proposal.Lines) Line(text, line);
        }
        return before + (text.ToString() is var added && lineEnd != "\n" ? added.Replace("\n", lineEnd, StringComparison.Ordinal) : text.ToString());
    }

    private static void Line(StringBuilder text, ProposedLine line)
    {
        foreach (string comment in line.Comments) Comment(text, "    # ", comment);
        foreach (var question in line.Questions) Comment(text, "    # ", question.ToString());
        text.Append("    - ").Append(line.Text).Append(line.IsToMeasure ? "  # measure" : "").Append('\n');
    }

    private static void Head(StringBuilder text, Proposal proposal)
    {
        text.Append('\n');
        if (proposal.IsEmpty)
        {
            Comment(text, "# ", $"Nothing to alter: {proposal.From} to {proposal.To}.");
            return;
        }
        Comment(text, "# ", $"Proposed: {proposal.From} to {proposal.To}. Edit it by hand, then check it. It is an aid: the workshop manual, local codes and licensed practice take precedence.");
        Comment(text, "# ", "Battery out before a wire is moved; the cable of the grounded post comes off first and goes on last. Lengths marked \"measure\" are guesses; sizes allow for half as much again.");
        if (!proposal.Questions.IsEmpty)
        {
            text.Append("#\n# Open questions (each stands above its line, with what was taken meanwhile; take the comment out when it is answered):\n");
            foreach (var question in proposal.Questions) Comment(text, "#   ", question.ToString());
        }
        if (proposal.Options.Any(o => o.IsUsed))
        {
            text.Append("#\n# Choices, each with what else it may be:\n");
            foreach (var option in proposal.Options.Where(o => o.IsUsed))
            {
                text.Append("#   " + option.Name + "=" + option.Value + "\n");
                foreach (string other in option.Choices.Where(c => c != option.Value)) text.Append("#     # " + option.Name + "=" + other + "\n");
            }
        }
        Decisions(text, proposal);
        if (!proposal.Findings.IsEmpty)
        {
            text.Append("#\n# What is found of it:\n");
            foreach (var finding in proposal.Findings) Comment(text, "#   ", $"{finding.Code} {finding.Severity.ToString().ToLowerInvariant()}: {finding.Message}");
        }
    }

    private static void Decisions(StringBuilder text, Proposal proposal)
    {
        text.Append("#\n# Decisions:\n");
        var altered = proposal.Decisions.Where(d => d.Kind != DecisionKind.Keep).GroupBy(d => (d.Kind, d.Reason)).ToArray();
        foreach (var group in altered)
            Comment(text, "#   ", $"{string.Join(", ", group.Select(d => $"{d.Item} ({d.Title})").Distinct(StringComparer.Ordinal))}: {group.First().Word}, because {group.Key.Reason}");
        foreach (var group in proposal.Decisions.Where(d => d.Kind == DecisionKind.Keep).GroupBy(d => d.Reason))
            Comment(text, "#   ", $"{string.Join(", ", group.Select(d => d.Item))}: keep, because {group.Key}");
    }

    // Wrapped at words, so that it can be read beside the lines.
    private static void Comment(StringBuilder text, string begin, string comment)
    {
        string indent = begin + "  ";
        foreach (var (i, line) in WordWrap.Lines(comment, Width - begin.Length - 1, Width - indent.Length - 1).Index()) text.Append(i == 0 ? begin : indent).Append(line.TrimEnd()).Append('\n');
    }
}
