using Hotside.Symbols;

namespace Hotside.Layouts.Passes;

/// <summary>Room that the text block of a stand takes in each view, in whole modules: what only one view shows is in the way there alone.</summary>
internal readonly record struct TextRoom(int Before, int After)
{
    /// <summary>The larger of the views asked for.</summary>
    public int In(SeenIn seen) => Math.Max((seen & SeenIn.Before) != 0 ? Before : 0, (seen & SeenIn.After) != 0 ? After : 0);
}
