namespace Hotside.Circuits;

/// <summary>What may be the id of a part or a conductor; the one place that knows.</summary>
internal static class ItemId
{
    /// <summary>Letters, digits, <c>-</c> and <c>_</c>, 60 at most.</summary>
    public static bool IsWellFormed(string text) => text.Length is > 0 and <= 60 && text.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '_');

    /// <summary>Words that mean an end and so cannot be an id.</summary>
    public static bool IsReserved(string text) => text is "chassis" or "free";

    /// <summary>Refuses what cannot be an id.</summary>
    /// <exception cref="ArgumentException">It is malformed or reserved.</exception>
    public static void Check(string id, string argument)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(id, argument);
        if (IsReserved(id)) throw new ArgumentException($"\"{id}\" means an end of a wire and cannot be an id.", argument);
        if (!IsWellFormed(id)) throw new ArgumentException($"\"{id}\" is no id: ids are letters, digits, - and _.", argument);
    }
}
