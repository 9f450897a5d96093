using Hotside.Circuits;

namespace Hotside.Alterations;

/// <summary>Two circuits that were written apart, by one mark for each terminal of a part that both have: that of the before circuit where something is on it there, else the other.</summary>
internal static class SharedMarks
{
    /// <summary>The two circuits, each itself where it has these marks already. A part that is another one after keeps its own.</summary>
    public static (Circuit Before, Circuit After) Of(Circuit before, Circuit after)
    {
        TerminalMarks sooner = new(), later = new();
        foreach (var part in before.Parts)
        {
            if (after.FindPart(part.Id) is not { } now || PartPairing.IsAnother(part, now)) continue;
            foreach (var (was, will) in part.Kind.Terminals.Zip(now.Kind.Terminals).Where(p => p.First.Name != p.Second.Name))
            {
                bool isWritten = before.IsUsed(part, was.Name) || part.Spec.FreeTerminals.Contains(was.Name);
                if (isWritten) later.Set(End.At(part.Id, will.Name), was.Name);
                else sooner.Set(End.At(part.Id, was.Name), will.Name);
            }
        }
        return (sooner.On(before), later.On(after));
    }
}
