namespace Hotside.CheckSheets;

/// <summary>How much a check sheet covers.</summary>
public enum SheetExtent
{
    /// <summary>The few readings that show most faults; a note of the sheet says what part of them.</summary>
    Short,

    /// <summary>All that any reading can show.</summary>
    Full,

    /// <summary>The readings by which to tell on which side each load is switched, before anything is moved.</summary>
    Intake,
}
