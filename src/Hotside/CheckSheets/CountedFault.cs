namespace Hotside.CheckSheets;

/// <summary>A fault that a sheet should show.</summary>
/// <param name="Text">What is said of it.</param>
/// <param name="Weight">How likely it is, beside others; above 0.</param>
/// <param name="Shown">How much of that the sheet's rows show.</param>
internal sealed record CountedFault(string Text, double Weight, double Shown)
{
    /// <summary>Whether eyes and ears find it in some setting.</summary>
    public bool IsSeen { get; init; }

    /// <summary>The row that finds what nobody sees or hears; <see langword="null"/> where none does, or it is seen.</summary>
    public CheckRow? FoundBy { get; init; }

    /// <summary>The same fault in several pieces: where one piece cannot show it, another may.</summary>
    public static CountedFault Of(IEnumerable<CountedFault> same)
    {
        CountedFault[] all = [.. same];
        return all.MaxBy(f => f.Shown / f.Weight)! with { IsSeen = Array.Exists(all, f => f.IsSeen), FoundBy = Array.Find(all, f => f.FoundBy is not null)?.FoundBy };
    }
}
