using System.Collections.Immutable;
using Hotside.Alterations;
using Hotside.Diagnostics;

namespace Hotside.Orders;

/// <summary>The acts of an alteration in their order, cut into steps; what is not a matter of words.</summary>
internal sealed class WorkPlan
{
    // More than fits under one tick box, and of one change (own choices).
    private const int MostActs = 8, MostOfOne = 12;

    private readonly ActList list;
    private readonly bool[] doneAll;
    private readonly int[] batteryActs;

    /// <summary>Plans an alteration.</summary>
    /// <param name="alteration">The alteration.</param>
    /// <param name="book">Phases and rules.</param>
    /// <param name="progress">What is done, as the job writes it: it comes first, for it is history; the rest is planned from there.</param>
    public WorkPlan(Alteration alteration, OrderBook? book = null, string progress = "")
    {
        Alteration = alteration;
        Book = book ?? OrderBook.Standard;
        list = new(alteration);
        States = new(alteration, list);
        // The vehicle with all that is new in and nothing new on yet: what is fed there is live before a wire lands on it.
        var bare = States.Of([.. list.All.Select(a => a.Type != WorkActType.WireOn)], alteration.After.System);
        ActFacts facts = new(alteration, Book, bare);
        Acts = Paired([.. list.All.Concat(StandingActs.Of(alteration)).Select((a, i) => facts.Told(a with { Index = i }))]);
        batteryActs = [.. Acts.Take(Count).Where(a => a.Words.Contains("battery") || a.Words.Contains("cable-on")).Select(a => a.Index)];
        Graph = new(Acts, Book.Rules, States.Counterpart);
        List<Diagnostic> problems = [.. Graph.Problems];
        Done = Progress.Read(progress, [.. Acts.Take(Count)], problems);
        problems.AddRange(Progress.Open(Done, Acts, Graph));
        Problems = [.. problems];
        doneAll = WithStanding();
        Order = ActOrder.Of(Acts, Graph, doneAll);
        Steps = [.. StepsOf()];
    }

    /// <summary>The alteration.</summary>
    public Alteration Alteration { get; }

    /// <summary>Phases and rules.</summary>
    public OrderBook Book { get; }

    /// <summary>All acts: those that change the circuit first, in the order of the changes.</summary>
    public ImmutableArray<HandAct> Acts { get; }

    /// <summary>The number of acts that belong to changes; their marks make a state.</summary>
    public int Count => list.All.Count;

    /// <summary>What waits for what.</summary>
    public ActGraph Graph { get; }

    /// <summary>The vehicle in between.</summary>
    public VehicleStates States { get; }

    /// <summary>The indices of the acts in their order.</summary>
    public ImmutableArray<int> Order { get; }

    /// <summary>The steps, each with the indices of its acts.</summary>
    public ImmutableArray<ImmutableArray<int>> Steps { get; }

    /// <summary>A mark for each act of the changes that is done.</summary>
    public bool[] Done { get; }

    /// <summary>Hard rules that no order meets, and progress that leaves something out.</summary>
    public ImmutableArray<Diagnostic> Problems { get; }

    /// <summary>Whether an act is done, of those that every order has what comes before something done.</summary>
    public bool IsDone(int act) => doneAll[act];

    /// <summary>The marks of all acts once the first so many steps are done.</summary>
    public bool[] DoneAfter(int steps)
    {
        bool[] done = new bool[Acts.Length];
        foreach (int i in Steps.Take(steps).SelectMany(s => s)) done[i] = true;
        return done;
    }

    /// <summary>The marks of all acts by what the job says is done; once all its changes are, the battery is taken as connected again.</summary>
    public bool[] DoneSoFar() => Done.All(d => d) ? [.. doneAll.Select(_ => true)] : [.. doneAll];

    /// <summary>The marks of the changes' acts with a battery connected in thought: the old one back in its tray, or the new one in, on it what is there to go on.</summary>
    public bool[] Connected(bool[] done, Battery battery)
    {
        bool[] thought = done[..Count];
        foreach (int act in batteryActs) thought[act] = battery == Battery.New && (thought[act] || IsLaid(act, thought));
        return thought;
    }

    private bool IsLaid(int act, bool[] done) =>
        Acts[act].Type != WorkActType.WireOn || Graph.WaitsOf(act).All(w => w.First >= Count || done[w.First] || batteryActs.Contains(w.First));

    // Nobody has done anything without what every order begins with.
    private bool[] WithStanding()
    {
        bool[] done = [.. Done, .. new bool[Acts.Length - Count]];
        if (Done.Any(d => d))
            foreach (var act in Acts.Skip(Count))
                done[act.Index] = act.Type is WorkActType.Record or WorkActType.Measure or WorkActType.CableOff or WorkActType.BatteryOut or WorkActType.Unplug or WorkActType.MarkPolarity;
        return done;
    }

    // What comes off to go on elsewhere waits until it can go on there.
    private static ImmutableArray<HandAct> Paired(HandAct[] acts)
    {
        foreach (var on in acts.Where(a => a.Partner >= 0)) acts[on.Partner] = acts[on.Partner] with { Phase = Math.Max(acts[on.Partner].Type == WorkActType.Cut ? acts[on.Partner].Phase : 0, on.Phase) };
        return [.. acts];
    }

    // One box for what is done at one place, to one circuit, in one phase.
    private IEnumerable<ImmutableArray<int>> StepsOf()
    {
        var step = ImmutableArray.CreateBuilder<int>();
        foreach (int i in Order)
        {
            bool isFull = step.Count >= MostActs && Acts[i].Partner < 0 && (Acts[i].Change != Acts[step[^1]].Change || step.Count >= MostOfOne);
            if (step.Count > 0 && (isFull || !GoesWith(step, Acts[i])))
            {
                yield return step.ToImmutable();
                step.Clear();
            }
            step.Add(i);
        }
        if (step.Count > 0) yield return step.ToImmutable();
    }

    private bool GoesWith(IReadOnlyList<int> step, HandAct next)
    {
        var last = Acts[step[^1]];
        if (last.Type is WorkActType.CableOff or WorkActType.CableOn or WorkActType.DeadTest or WorkActType.PowerUp || next.Type is WorkActType.PowerUp or WorkActType.CableOn
            || next.Words.Contains("battery") || next.Words.Contains("cable-on") || last.Words.Contains("cable-on")) return false;
        // Both ends of a move are one thing, wherever they are.
        if (next.Partner == last.Index || (next.Partner >= 0 && next.Partner == last.Partner)) return true;
        // So are both ends of a wire where the place of one is not stated, and nothing else goes with them.
        bool isOneWire = last.ChangesCircuit && step.All(i => Acts[i].Item == last.Item), isAcross = step.Any(i => Acts[i].Place is null != last.Place is null);
        if (isOneWire && next.Item == last.Item && next.ChangesCircuit && (last.Place is null || next.Place is null)) return true;
        if (last.Place != next.Place || (isOneWire && isAcross)) return false;
        // A part and what lands on it are one thing, too.
        if (last.ChangesCircuit && next.ChangesCircuit && last.Parts.Any(next.Parts.Contains)) return true;
        if (last.Phase != next.Phase) return false;
        // Dead copper asks for no look in between, and at a named place one stays.
        return next.Place is not null || (next.Type == last.Type && next.Type is WorkActType.Lay or WorkActType.Fit) || last.Way == next.Way || last.Change == next.Change;
    }
}
