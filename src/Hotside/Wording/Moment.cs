namespace Hotside.Wording;

/// <summary>Which of the two circuits a text is about.</summary>
internal enum Moment
{
    /// <summary>The circuit as it was.</summary>
    Before,

    /// <summary>The circuit as it will be.</summary>
    After,
}
