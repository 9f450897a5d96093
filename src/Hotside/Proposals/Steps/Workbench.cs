using Hotside.Circuits;
using Hotside.Proposals.Drafts;
using Hotside.Proposals.Exposures;
using Hotside.Proposals.Rules;

namespace Hotside.Proposals.Steps;

/// <summary>What the steps of one proposal share: the circuit as it was, the same with the new sources in thought, the draft, and what was decided. Used by one thread.</summary>
internal sealed class Workbench
{
    private readonly CancellationToken cancel;
    private Bench? now;

    /// <summary>A workbench for a circuit and what is asked of it.</summary>
    public Workbench(Circuit before, TargetSupply target, Choices choices, Scope scope, CancellationToken cancel)
    {
        this.cancel = cancel;
        (Target, Choices, Scope) = (target, choices, scope);
        Draft = new(before, target.System);
        Bench found = new(before, cancel);
        var strapped = target.IsSame ? before : StrapStep.Strapped(found);
        Before = ReferenceEquals(strapped, before) ? found : new(strapped, cancel);
        // All else counts as before: what states no volts is made for the old ones.
        Draft thought = new(strapped, before.System with { Ground = target.System.Ground });
        SourceStep.Apply(thought, target);
        Thought = new(thought.Circuit, cancel);
        Exposures = new(Before, Thought);
    }

    public TargetSupply Target { get; }

    public Choices Choices { get; }

    public Scope Scope { get; }

    public Draft Draft { get; }

    /// <summary>The circuit as it was.</summary>
    public Bench Before { get; }

    /// <summary>The same with the new sources.</summary>
    public Bench Thought { get; }

    /// <summary>What each part would get with the new sources.</summary>
    public ExposureTable Exposures { get; }

    /// <summary>What was decided, in the order of the steps.</summary>
    public List<Decision> Decisions { get; } = [];

    /// <summary>The draft as it stands, studied.</summary>
    public Bench Now
    {
        get
        {
            cancel.ThrowIfCancellationRequested();
            return now is { } made && ReferenceEquals(made.Circuit, Draft.Circuit) ? made : now = new(Draft.Circuit, cancel);
        }
    }

    /// <summary>Whether something is decided for a part.</summary>
    public bool IsDecided(string part) => Decisions.Any(d => d.Item == part);

    /// <summary>Where currents go back to.</summary>
    public End Return => Draft.System.ReturnNode;

    /// <summary>The nominal volts to come nearest to some.</summary>
    public double Nominal(double volts) => Draft.System.Nearest(volts);

    /// <summary>Writes a decision down, with the caution above its line.</summary>
    public Decision Decide(string item, DecisionKind kind, string reason, DecisionRule? rule = null, Exposure? exposure = null)
    {
        string title = Draft.Circuit.FindPart(item)?.Title ?? Draft.Before.FindPart(item)?.Title ?? "wire";
        Decision decision = new(item, title, kind, reason) { Rule = rule?.Id ?? "", Source = rule?.Source, Caution = kind == rule?.Decision ? rule.Caution : null, Figures = exposure?.Told };
        Decisions.Add(decision);
        // What is to be minded goes with what the rule decides, not with another choice.
        if (rule?.Caution is { } caution && kind == rule.Decision && kind != DecisionKind.Keep) Comment(item, caution);
        return decision;
    }

    /// <summary>Asks what the file does not say.</summary>
    public void Ask(string item, string question)
    {
        if (!Draft.Note(item).Questions.Contains(question)) Draft.Note(item).Questions.Add(question);
    }

    /// <summary>Puts a comment above the line of an item.</summary>
    public void Comment(string item, string text)
    {
        if (!Draft.Note(item).Comments.Contains(text)) Draft.Note(item).Comments.Add(text);
    }

    /// <summary>A rule's reason with its figures.</summary>
    public string ReasonOf(DecisionRule rule, Exposure? exposure) => rule.Reason
        .Replace("{to}", Draft.System.ToString(), StringComparison.Ordinal)
        .Replace("{volts}", Volts(exposure?.Volts ?? 0), StringComparison.Ordinal).Replace("{before}", Volts(exposure?.VoltsBefore ?? 0), StringComparison.Ordinal).Replace("{rated}", Numbers.Brief(exposure?.Rated ?? 0), StringComparison.Ordinal)
        .Replace("{was}", Numbers.Brief(Math.Abs(exposure?.AmperesBefore ?? 0)), StringComparison.Ordinal).Replace("{now}", Numbers.Brief(Math.Abs(exposure?.Amperes ?? 0)), StringComparison.Ordinal);

    /// <summary>A sentence of the table with what a step puts in its places.</summary>
    public static string Said(string sentence, params (string Place, string Text)[] texts) => texts.Aggregate(sentence, (said, text) => said.Replace("{" + text.Place + "}", text.Text, StringComparison.Ordinal));

    /// <summary>Decides by a rule that a step asks for by its id: reason, caution, work and question, with what stands in their places.</summary>
    public void DecideBy(string id, string item, params (string Place, string Text)[] texts)
    {
        var rule = DecisionTable.Standard[id];
        texts = [.. texts, ("to", Draft.System.ToString())];
        Decide(item, rule.Decision, Said(rule.Reason, texts), rule);
        if (rule.Work is { } work) Draft.Note(item).Works.Add(Said(work, texts));
        if (rule.Question is { } question) Ask(item, Said(question, texts));
    }

    // Tenths of a volt about the nominal ones would only make alike reasons differ.
    private string Volts(double volts) =>
        Nominal(volts) is var nominal && Math.Abs(Math.Abs(volts) - nominal) < NearNominal * nominal ? Numbers.Plain(nominal) : Numbers.Plain(Math.Abs(volts), 1);

    private const double NearNominal = 0.07;

    /// <summary>A wire of a colour whose length has to be measured; its size is sought when all currents are known.</summary>
    public static Wire NewWire(string colour, double metres, WireSize? atLeast = null)
    {
        return new() { Colour = WireColour.TryParse(colour, out var hue) ? hue : null, LengthInMetres = Math.Round(metres, 2), Size = atLeast };
    }

    /// <summary>Runs a wire whose length is a guess.</summary>
    public string Run(End from, End to, Wire wire, string? reason = null)
    {
        string id = Draft.Run(from, to, wire, reason);
        Draft.Note(id).IsToMeasure = true;
        return id;
    }
}
