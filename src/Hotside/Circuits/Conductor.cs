namespace Hotside.Circuits;

/// <summary>A conductor with an identity of its own: it is never merged with another, for its id is what lets two circuits be compared.</summary>
/// <param name="Id">Its id, unique among parts and conductors.</param>
/// <param name="From">One end, as first written.</param>
/// <param name="To">The other end.</param>
/// <param name="Wire">What it is made of.</param>
public sealed record Conductor(string Id, End From, End To, Wire Wire)
{
    /// <summary>Both ends, in the order written.</summary>
    public IEnumerable<End> Ends
    {
        get
        {
            yield return From;
            yield return To;
        }
    }
}
