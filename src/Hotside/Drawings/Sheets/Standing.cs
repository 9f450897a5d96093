namespace Hotside.Drawings.Sheets;

/// <summary>How the two views of a pair stand on their sheet.</summary>
internal enum Standing
{
    /// <summary>Before at the left, after at the right.</summary>
    Beside,

    /// <summary>Before above, after below: for circuits much wider than high.</summary>
    Above,
}
