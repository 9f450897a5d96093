using Hotside.Alterations;
using Hotside.CheckSheets;
using Hotside.Diagnoses;
using Hotside.Orders;
using Hotside.Outputs;
using Hotside.Packs;
using Hotside.Proposals;
using Hotside.Reading;
using Hotside.Wording;
namespace Hotside;

/// <content>What is worked from a job: the order of work, the vehicle between steps, sheets, the fault finder, proposals, the pack.</content>
public sealed partial class Job
{
    /// <summary>
    /// Makes the work pack: everything that is printed for the work, from the cautions to the owner's page, as one document and its pieces. It is an aid; the workshop manual,
    /// local codes and licensed practice take precedence.
    /// </summary>
    /// <param name="options">Paper, letters, words, colours, which pages.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="ArgumentException">The paper that <see cref="PackOptions.Schematics"/> asks for is too small for parts of the drawing.</exception>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was called for.</exception>
    public WorkPack Pack(PackOptions? options = null, CancellationToken cancel = default) => Binder.Bind(this, options ?? new(), cancel);

    /// <summary>The same as <see cref="WorkOrder"/>, in somebody's words.</summary>
    /// <param name="words">Whose words.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="words"/> is none of the two.</exception>
    public WorkOrder OrderWork(Words words = Words.American) => OrderWriting.Of(plan.Value, verdicts.Value, Study, Title, Vocabulary.Of(words));

    /// <summary>
    /// The vehicle as it stands once the first steps of <see cref="WorkOrder"/> are done: a job that alters nothing, whose circuit has wires with free ends. What nothing holds at
    /// either end is left out. Fuses that are out for the dead tests, and what is unplugged, count as in.
    /// </summary>
    /// <param name="step">The number of the last step that is done; 0 for the vehicle before the work.</param>
    /// <param name="battery">Which battery is connected. Whether one may be, say <see cref="WorkStep.SafeWithOld"/> and <see cref="WorkStep.SafeWithNew"/> of the step.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such step, or <paramref name="battery"/> is none of the four.</exception>
    public Job AsOf(int step, StandingBattery battery = StandingBattery.AsOrdered) =>
        Standing(plan.Value.DoneAfter(Known(step)), $"{Title}, as of step {step} of order {OrderWriting.MarkOf(plan.Value)}", battery);

    /// <summary>The vehicle as it stands by what the job says is done; as before where it says nothing.</summary>
    /// <param name="battery">Which battery is connected; as ordered it is out from the first change that is done until all are.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="battery"/> is none of the four.</exception>
    public Job AsItStands(StandingBattery battery = StandingBattery.AsOrdered) => Standing(plan.Value.DoneSoFar(), $"{Title}, as it stands", battery);

    /// <summary>
    /// The same job with the first steps of <see cref="WorkOrder"/> told as done, in the place of what it says is done: its <see cref="ToYaml"/> can be edited and gone on with, and numbers
    /// of changes stay as they are printed.
    /// </summary>
    /// <param name="step">The number of the last step that is done; 0 for none.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such step.</exception>
    public Job DoneUntil(int step)
    {
        var acts = plan.Value.Acts.Take(plan.Value.Count).ToArray();
        return new(Title, Alteration, read, source, Progress.Written(plan.Value.DoneAfter(Known(step)), acts)) { TitleBlock = TitleBlock };
    }

    /// <summary>Whether a battery is connected: both posts of each bear a cable or a bolt. In the vehicle as of a step there may be none.</summary>
    public bool IsPowered => StandingVehicle.IsPowered(Alteration.After);

    /// <summary>The order of work without its verdicts.</summary>
    internal WorkPlan Plan => plan.Value;

    private bool IsStanding { get; init; }

    private int Known(int step)
    {
        int last = plan.Value.Steps.Length;
        return step >= 0 && step <= last ? step : throw new ArgumentOutOfRangeException(nameof(step), step, $"There is no such step; the order has {last} steps.");
    }

    private Job Standing(bool[] done, string title, StandingBattery battery)
    {
        if (!Enum.IsDefined(battery)) throw new ArgumentOutOfRangeException(nameof(battery), battery, "There is no such battery.");
        var state = new StandingVehicle(plan.Value).Of(done, battery);
        string which = battery switch
        {
            StandingBattery.Old => ", old battery connected",
            StandingBattery.New => ", new battery connected",
            _ => state.Parts.Any(p => p.IsStandingSource) && !StandingVehicle.IsPowered(state) ? ", battery disconnected" : "",
        };
        return new(title + which, new("", state, state, []), null) { TitleBlock = TitleBlock, IsStanding = true };
    }

    /// <summary>Says what may be wrong with the vehicle after a complaint and some readings, and which reading to take next.</summary>
    /// <param name="complaint">What is wrong.</param>
    /// <param name="view">Which circuit the vehicle has now: <see cref="View.Before"/> or <see cref="View.After"/>.</param>
    /// <param name="words">Whose words.</param>
    /// <exception cref="ArgumentException">Something named is not there, or a reading is none; the message names the nearest. Or the view is of no single circuit.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="words"/> is none of the two.</exception>
    public Diagnosis Diagnose(Complaint complaint, View view = View.After, Words words = Words.American)
    {
        ArgumentNullException.ThrowIfNull(complaint);
        return Diagnosis.Of(StudyOf(view), view == View.After ? Alteration : null, complaint, Vocabulary.Of(words));
    }

    /// <summary>Draws the circuit of a diagnosis: suspected wires with a band, wires and parts with their share, the next point at the wires that end there or at its part, suspects and next reading in the headline.</summary>
    /// <param name="diagnosis">The diagnosis.</param>
    /// <param name="view">Which circuit it was made of: <see cref="View.Before"/> or <see cref="View.After"/>.</param>
    /// <param name="options">As for <see cref="Draw"/>; the figure is that of the loads complained of where none is asked for, and figures of a setting are not shown.</param>
    /// <exception cref="ArgumentException">The view is of no single circuit; the drawing does not fit on the paper, or the figure names a load that is not there.</exception>
    public Drawing DrawDiagnosis(Diagnosis diagnosis, View view = View.After, DrawingOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(diagnosis);
        StudyOf(view);
        options ??= new();
        if (options.Figure.IsEmpty) options = options with { Figure = diagnosis.Loads };
        return Drawn(view, options with { Show = ShownFigures.None }, new(SuspectMarks.Of(diagnosis, StudyOf(view).Circuit, view == View.Before)), CancellationToken.None);
    }

    /// <summary>A sheet of readings to take on the vehicle, with what is expected and what a deviation means.</summary>
    /// <param name="extent">How much it covers.</param>
    /// <param name="view">Of which circuit: <see cref="View.Before"/> or <see cref="View.After"/>.</param>
    /// <param name="only">A part's id or one of its loads, to which and to whose fuse way the sheet is restricted; <see langword="null"/>: all.</param>
    /// <param name="words">Whose words.</param>
    /// <exception cref="ArgumentException">There is no such load, and the message names the nearest; or the view is of no single circuit.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="words"/> is none of the two.</exception>
    public CheckSheet CheckSheet(SheetExtent extent = SheetExtent.Short, View view = View.After, string? only = null, Words words = Words.American)
    {
        var study = StudyOf(view);
        var loads = only is null ? [] : DiagnosisBench.LoadsAt(study, only);
        if (only is not null && loads.IsEmpty) loads = [study.Load(only)];
        SheetMaker maker = new(study, view == View.After ? Alteration : null, Title, Vocabulary.Of(words));
        return extent == SheetExtent.Intake ? maker.Intake(loads.IsEmpty ? study.Loads.Where(l => !l.Element.IsInternal) : loads) : maker.Check(extent, loads);
    }

    /// <summary>
    /// Proposes an alteration of the circuit to another supply, or a single job: what becomes of each part and why, lines of an ordinary job file to be edited by hand, and what
    /// is asked. Whatever alteration the job has is left out, unless the proposal is to begin with the circuit after it.
    /// </summary>
    /// <param name="request">The supply to come, single jobs, choices.</param>
    /// <param name="cancel">Stops the work.</param>
    /// <exception cref="ArgumentException">The supply, an option, or a part or job is none; the message names the nearest.</exception>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was called for.</exception>
    public Proposal Proposal(ProposalRequest request, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(request);
        bool isAfter = request.From == ProposalBase.After;
        var circuit = isAfter ? Alteration.After : Alteration.Before;
        return Proposer.Of(circuit, isAfter ? null : source, () => JobWriter.Write(Title, TitleBlock, new("", circuit, circuit, [])), request, cancel);
    }
}
