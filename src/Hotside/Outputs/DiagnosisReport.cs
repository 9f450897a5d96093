using System.Text;
using System.Text.Json;
using Hotside.Circuits;
using Hotside.Diagnoses;
using Hotside.Outputs;
using UnitsNet;

namespace Hotside;

/// <summary>A diagnosis as text and as JSON.</summary>
public static class DiagnosisReport
{
    private const string Schema = "hotside-diagnosis/1";

    /// <summary>What may be wrong, what to read next and why, in plain text; lines end with a line feed.</summary>
    /// <param name="diagnosis">The diagnosis.</param>
    /// <param name="top">How many suspects are listed, 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="top"/> is below 1.</exception>
    public static string ToText(this Diagnosis diagnosis, int top = 5)
    {
        ArgumentNullException.ThrowIfNull(diagnosis);
        ArgumentOutOfRangeException.ThrowIfLessThan(top, 1);
        StringBuilder text = new();
        if (!diagnosis.Readings.IsEmpty) text.Append("Known: ").AppendJoin("; ", diagnosis.Readings).Append('\n');
        foreach (string note in diagnosis.Notes) text.Append("! ").Append(note).Append('\n');
        text.Append(diagnosis.IsFound ? "Found, as far as readings tell:\n" : "Suspects:\n");
        for (int i = 0; i < Math.Min(top, diagnosis.Suspects.Length); i++) Tell(text, i + 1, diagnosis.Suspects[i]);
        if (diagnosis.Suspects.Length > top) text.Append("  and ").Append(Numbers.Whole(diagnosis.Suspects.Length - top)).Append(" less likely\n");
        if (diagnosis.IsFound && diagnosis.Suspects[0].Repair.Length > 0) text.Append("Repair: ").Append(diagnosis.Suspects[0].Repair).Append('\n');
        if (diagnosis.Next is { } next) Tell(text, next);
        else if (!diagnosis.IsFound) text.Append("No reading within reach tells more. Mend what leads, or swap it for a known good one; then look again.\n");
        text.Append("Weights: ").Append(diagnosis.Lists.FaultSource).Append(".\n");
        if (diagnosis.Lists.EffortSource != DiagnosisLists.Standard.EffortSource) text.Append("Trouble of readings: ").Append(diagnosis.Lists.EffortSource).Append(".\n");
        return text.Append("An aid: the workshop manual, local codes and licensed practice take precedence. Rings and watch off, eyes protected, no flame near the battery.\n").ToString();
    }

    /// <summary>What to read next, in plain text.</summary>
    /// <param name="next">The reading.</param>
    /// <exception cref="ArgumentNullException"><paramref name="next"/> is <see langword="null"/>.</exception>
    public static string ToText(this NextReading next)
    {
        ArgumentNullException.ThrowIfNull(next);
        StringBuilder text = new();
        Tell(text, next);
        return text.ToString();
    }

    /// <summary>A diagnosis as JSON of the contract <c>hotside-diagnosis/1</c>.</summary>
    /// <param name="diagnosis">The diagnosis.</param>
    /// <exception cref="ArgumentNullException"><paramref name="diagnosis"/> is <see langword="null"/>.</exception>
    public static string ToJson(this Diagnosis diagnosis)
    {
        ArgumentNullException.ThrowIfNull(diagnosis);
        return JsonText.Of(Schema, json => Write(json, diagnosis));
    }

    private static void Tell(StringBuilder text, int number, Suspect suspect)
    {
        text.Append("  ").Append(Numbers.Whole(number)).Append(". ").Append(Percent(suspect.Share).PadLeft(5)).Append("  ").Append(suspect.Text).Append('\n');
        if (suspect.Others.IsEmpty) return;
        text.Append("            or, no reading tells them apart: ").AppendJoin("; ", suspect.Others.Take(4)).Append(suspect.Others.Length > 4 ? $"; and {Numbers.Whole(suspect.Others.Length - 4)} more" : "").Append('\n');
    }

    private static void Tell(StringBuilder text, NextReading next)
    {
        foreach (string caution in next.Cautions) text.Append("CAUTION: ").Append(caution).Append('\n');
        text.Append("Next, ").Append(next.Setting).Append(": ");
        text.Append(next.BlackOn.Length == 0 ? $"look at {next.RedOn}: {next.Asks}" : $"red on {next.RedOn}, black on {next.BlackOn}: {next.Asks}");
        text.Append(". It ").Append(next.Why).Append(".\n");
        foreach (string expected in next.Expected) text.Append("    ").Append(expected).Append('\n');
        text.Append("  as a reading: \"").Append(next.Entry).Append("\"\n");
    }

    private static string Percent(Ratio share) => share.Percent < 1 ? "< 1 %" : Numbers.Plain(share.Percent, 0) + " %";

    private static void Write(Utf8JsonWriter json, Diagnosis diagnosis)
    {
        json.Texts("readings", diagnosis.Readings);
        json.Texts("notes", diagnosis.Notes);
        json.WriteBoolean("found", diagnosis.IsFound);
        json.List("suspects", diagnosis.Suspects, suspect =>
        {
            json.WriteString("text", suspect.Text);
            json.WriteNumber("share", Math.Round(suspect.Share.DecimalFractions, 4));
            json.Texts("items", suspect.Items);
            json.Texts("others", suspect.Others);
            json.Text("repair", suspect.Repair);
        });
        if (diagnosis.Next is { } next)
        {
            json.WriteStartObject("next");
            json.WriteString("setting", next.Setting);
            json.WriteString("red", next.RedOn);
            json.WriteString("black", next.BlackOn);
            json.WriteString("asks", next.Asks);
            json.WriteString("why", next.Why);
            json.WriteString("entry", next.Entry);
            json.Texts("expected", next.Expected);
            json.Texts("cautions", next.Cautions);
            json.WriteEndObject();
        }
        json.WriteString("weights", diagnosis.Lists.FaultSource);
        json.WriteString("trouble", diagnosis.Lists.EffortSource);
    }
}
