using Hotside.Circuits;

namespace Hotside.Alterations;

/// <summary>What a list's edits come to, once its ends are known.</summary>
internal static class Acts
{
    /// <summary>The act of an edit.</summary>
    public static Act Of(Edit edit, Circuit before, WiresAfter wires) => edit switch
    {
        TakeOutEdit takeOut => new TakeOut(takeOut.Ids),
        FitEdit fit => new Fit(fit.Ids),
        ReplaceEdit replace => new Replace(replace.Ids, replace.Reversed),
        ReverseEdit reverse => new Reverse([reverse.Id]),
        RemountEdit remount => new Remount([remount.Id]),
        RunEdit run => new Run([run.Conductor.Id]),
        MoveEdit move => new Move([move.Id], wires.Moved[move.Id], IsRenewed(before.FindConductor(move.Id)!, wires)),
        RenewEdit renew => new Renew(renew.Ids),
        CutEdit cut => new Cut([cut.Id, cut.NewId], wires.CutEnds[cut.Id].First, wires.CutEnds[cut.Id].Second),
        DoEdit work => new Work([work.Id], work.Sentence),
        _ => throw new ArgumentOutOfRangeException(nameof(edit), edit.GetType().Name, "There is no such edit."),
    };

    private static bool IsRenewed(Conductor old, WiresAfter wires) =>
        WireMaterial.LooksDifferent(old.Wire, wires.All.First(c => c.Id == old.Id).Wire);
}
