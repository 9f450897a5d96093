namespace Hotside.Drawings.Sheets;

/// <summary>What only the finished layout tells of what legend and tables say.</summary>
/// <param name="ZoneOf">In which zone a load is.</param>
/// <param name="HasSlants">Whether some lines slant where they part.</param>
internal sealed record LaidOut(Func<string, string> ZoneOf, bool HasSlants);
