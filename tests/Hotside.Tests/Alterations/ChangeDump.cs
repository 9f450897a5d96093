using Hotside.Alterations;

namespace Hotside.Tests.Alterations;

/// <summary>Changes as text, so that two lists can be compared; terse and independent of the wording.</summary>
internal static class ChangeDump
{
    public static string Of(Alteration alteration) => string.Join('\n', alteration.Changes.Select(Of));

    public static string Of(Change change) => $"{change.Number} " + string.Join("; ", change.Acts.Select(Of)) + (change.Reason is { } why ? $" because {why}" : "");

    private static string Of(Act act)
    {
        string items = act.GetType().Name + " " + string.Join(",", act.Items);
        return act switch
        {
            Replace { Reversed: true } => items + " reversed",
            Move move => items + " " + string.Join(", ", move.Ends.Select(e => $"{e.From}>{e.To}")) + (move.IsRenewed ? " renewed" : ""),
            Cut cut => items + $" {cut.First}|{cut.Second}",
            Work work => items + ": " + work.Sentence,
            _ => items,
        };
    }
}
