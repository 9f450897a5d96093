namespace Hotside.Symbols;

/// <summary>Which of the two circuits shows a thing. Two things conflict only if some view shows both.</summary>
[Flags]
internal enum SeenIn
{
    /// <summary>The before circuit only.</summary>
    Before = 1,

    /// <summary>The after circuit only.</summary>
    After = 2,

    /// <summary>Both circuits.</summary>
    Both = Before | After,
}
