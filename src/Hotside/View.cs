namespace Hotside;

/// <summary>What a drawing shows.</summary>
public enum View
{
    /// <summary>Before and after side by side, the same thing in the same place, with the list of changes.</summary>
    Pair,

    /// <summary>The circuit as it was, with what will be taken out, moved or replaced marked.</summary>
    Before,

    /// <summary>The circuit as it will be, with what is new, moved or renewed marked.</summary>
    After,

    /// <summary>Both circuits over each other on one sheet: what stays once, what goes dashed, what comes double, a moved conductor where it will be and where it lay.</summary>
    Overlay,
}
