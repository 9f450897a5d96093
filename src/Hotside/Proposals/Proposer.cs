using System.Collections.Immutable;
using Hotside.Alterations;
using Hotside.Checks;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Proposals.Drafts;
using Hotside.Proposals.Steps;
using Hotside.Proposals.Texts;
using Hotside.Reading;
using Hotside.Sizing;
using Hotside.Studies;

namespace Hotside.Proposals;

/// <summary>Makes a proposal: sources, what each part would get then, the table of decisions, relays, fuses and wires by the new currents, and the checks on what came of it.</summary>
internal static class Proposer
{
    /// <summary>Proposes an alteration.</summary>
    /// <param name="circuit">The circuit to be altered.</param>
    /// <param name="source">Its text; <see langword="null"/> where it is to be written anew.</param>
    /// <param name="written">Writes its text anew.</param>
    /// <param name="request">What is asked.</param>
    /// <param name="cancel">Stops the work.</param>
    public static Proposal Of(Circuit circuit, JobSource? source, Func<string> written, ProposalRequest request, CancellationToken cancel)
    {
        Scope scope = new(request.Only, circuit);
        bool isAsked = !string.IsNullOrWhiteSpace(request.To);
        if (!isAsked && scope.IsWhole) throw new ArgumentException("Say which supply is to come, as in \"12 V negative\", or name a single job.", nameof(request));
        if (!circuit.Parts.Any(p => p.IsStandingSource)) throw new ArgumentException("There is no battery in the file, so nothing can be computed of it; add the battery, or what stands for it.", nameof(request));
        var asked = isAsked ? TargetSupply.Parse(request.To!, circuit) : TargetSupply.Same(circuit);
        List<Diagnostic> notes = [];
        if (!scope.IsWhole && !asked.IsSame) notes.Add(ProposalProblems.SupplyStays.At(null, circuit.System.ToString(), asked.System.ToString()));
        Workbench work = new(circuit, scope.IsWhole ? asked : TargetSupply.Same(circuit), new(request.Options), scope, cancel);
        Steps(work);
        var text = source is null ? null : BeforeText.Of(source);
        notes.AddRange(text?.Told ?? []);
        return Told(work, text ?? new(written(), "\n", []), notes, cancel);
    }

    private static void Steps(Workbench work)
    {
        if (work.Target.IsSame && work.Scope.IsWhole)
        {
            KeepStep.Run(work);
            return;
        }
        // The battery's line comes last, as in every workshop.
        var place = ChargingStep.Run(work);
        if (work.Scope.HasLeds || (work.Scope.IsWhole && work.Target.Factor != 1 && work.Choices.IsStated("lamps") && work.Choices["lamps"] == "led")) PilotStep.Run(work);
        var gauges = LoadStep.Run(work);
        SourceStep.Run(work);
        if (work.Scope.HasLeds) LedStep.Run(work);
        else if (work.Draft.Circuit.Parts.Any(p => p.Kind.Elements.Any(Trade.IsLed) && work.IsDecided(p.Id))) LedStep.Flashers(work);
        GaugeStep.Run(work, gauges);
        SenderStep.Run(work);
        PolarityStep.Run(work);
        if (place is not null) AlternatorStep.Size(work, place);
        if (work.Scope.IsWhole || work.Draft.Before.Parts.Any(p => work.Scope.Names(p.Id))) RelayStep.Run(work);
        if (work.Scope.IsWhole || work.Scope.HasFuses) ProtectionStep.Run(work);
        if (work.Scope.IsWhole) StrapStep.Run(work);
        SizeStep.Run(work);
        if (work.Scope.IsWhole) FeedFuseStep.Run(work);
        if (work.Scope.IsWhole) DoubtStep.Run(work);
        KeepStep.Run(work);
    }

    private static Proposal Told(Workbench work, BeforeText before, List<Diagnostic> notes, CancellationToken cancel)
    {
        var alteration = DraftChanges.Of(work.Draft, Title(work));
        bool isEmpty = alteration.Changes.IsEmpty;
        var lines = isEmpty ? [] : Lines(work.Draft, alteration);
        if (isEmpty) notes.Add(ProposalProblems.NothingProposed.At(null, work.Target.IsSame && work.Scope.IsWhole ? $"the supply is {work.Draft.System} already" : "no part of this job asks for it"));
        // What is asked of an item without a line of its own stands in the head all the same.
        ImmutableArray<OpenQuestion> questions = [.. work.Draft.Order.SelectMany(id => work.Draft.NoteOf(id)!.Questions.Select(q => new OpenQuestion(id, q)))];
        Proposal proposal = new(work.Draft.Before.System.ToString(), work.Draft.System.ToString(), alteration)
        {
            Lines = lines,
            Questions = questions,
            Decisions = [.. work.Decisions.Select(d => d with { Questions = [.. work.Draft.NoteOf(d.Item)?.Questions ?? []] })],
            Options = work.Choices.Told,
            Findings = isEmpty ? [] : Findings(alteration, cancel),
            Notes = [.. notes, .. questions.Select(q => ProposalProblems.QuestionOpen.Of([q.Item], q.Item, q.Text))],
        };
        return proposal with { Text = ProposalText.Of(before.Text, before.LineEnd, proposal) };
    }

    private static string Title(Workbench work) => work.Scope.IsWhole ? work.Draft.System.ToString() : "A job at " + work.Draft.System;

    private static ImmutableArray<ProposedLine> Lines(Draft draft, Alteration alteration)
    {
        HashSet<string> told = new(StringComparer.Ordinal), changed = [.. alteration.Changes.SelectMany(c => c.Acts).Where(a => a is not Work).SelectMany(a => a.Items)];
        return [.. new ChangeWriter(alteration).Lines().Zip(alteration.Changes, (text, change) => Line(draft, text[2..], change, told, changed))];
    }

    // Comments and questions stand above the first line that changes the item; above what is done to it where nothing changes.
    private static ProposedLine Line(Draft draft, string text, Change change, HashSet<string> told, HashSet<string> changed)
    {
        var act = change.Acts[0];
        var notes = act.Items.Where(i => draft.NoteOf(i) is not null && !(act is Work && changed.Contains(i)) && told.Add(i)).Select(i => (Id: i, Note: draft.NoteOf(i)!)).ToArray();
        return new(text, change)
        {
            Comments = [.. notes.SelectMany(n => n.Note.Comments).Distinct()],
            Questions = [.. notes.SelectMany(n => n.Note.Questions.Select(q => new OpenQuestion(n.Id, q)))],
            IsToMeasure = act is Run && draft.NoteOf(act.Items[0]) is { IsToMeasure: true },
        };
    }

    private static ImmutableArray<Diagnostic> Findings(Alteration alteration, CancellationToken cancel)
    {
        var study = Study.Of(alteration, cancel);
        return [.. study.Findings.Concat(CheckList.Run(study, new(() => SizeStudy.Of(study)), cancel)).Where(d => d.Severity >= Severity.Warning).OrderByDescending(d => d.Severity).ThenBy(d => d.Code, StringComparer.Ordinal)];
    }
}
