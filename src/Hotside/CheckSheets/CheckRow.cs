namespace Hotside.CheckSheets;

/// <summary>A row of a check sheet: one reading, with room for what the meter says.</summary>
/// <param name="Number">Its number on the sheet, from 1.</param>
/// <param name="Stage">When it is measured.</param>
/// <param name="Setting">Where switches stand: a setting of the job by its name, or positions such as <c>S1 pressed</c>; <c>all at rest</c>.</param>
/// <param name="RedOn">Where the red lead goes, or what is looked at.</param>
/// <param name="BlackOn">Where the black lead goes; empty where nothing is measured.</param>
/// <param name="Expected">What a sound circuit shows, with its unit; volts with their true sign.</param>
/// <param name="Band">Within which it is right.</param>
/// <param name="IfNot">What a deviation means, likeliest first.</param>
public sealed record CheckRow(int Number, CheckStage Stage, string Setting, string RedOn, string BlackOn, string Expected, string Band, string IfNot)
{
    /// <summary>Where switches and senders stand in a setting that has a name: <c>S1 run, B1 45 ohm</c>; empty where the setting says it itself.</summary>
    public string Stands { get; init; } = "";

    /// <summary>Volts as a part of the battery's volts now, such as <c>97 %</c>; empty for rows that do not go with the battery.</summary>
    public string OfBattery { get; init; } = "";

    /// <summary>Whether something is looked at or listened to, and nothing is measured.</summary>
    public bool IsLook { get; init; }

    /// <summary>Where the red lead goes, or what is looked at and how that is said.</summary>
    internal string Where => IsLook ? "look: " + RedOn : RedOn;

    /// <summary>What to mind while it is measured; mostly empty.</summary>
    public string Caution { get; init; } = "";
}
