using System.Text;
using Hotside.Circuits;
using Hotside.Sizing;
using Hotside.Sizing.Drops;
using Hotside.Sizing.Heating;
using Hotside.Sizing.Tables;
using Hotside.Solving.Laws;

namespace Hotside.Outputs;

/// <summary>Writes the work behind a conductor's size as a person would do it by hand.</summary>
internal sealed class SizingWork
{
    private const string Caution = "\nAn aid: the workshop manual, local codes and licensed practice take precedence.\n";

    private readonly StringBuilder text = new();
    private readonly CircuitSizes sizes;
    private readonly ConductorSizing sizing;

    private SizingWork(CircuitSizes sizes, ConductorSizing sizing) => (this.sizes, this.sizing) = (sizes, sizing);

    /// <summary>The work of a conductor, before and after.</summary>
    /// <exception cref="ArgumentException">There is no such conductor; the message names the nearest.</exception>
    public static string Write(SizeStudy study, string id)
    {
        bool isAltered = study.IsAltered;
        (string Head, CircuitSizes Sizes)[] sides = isAltered ? [("Before, ", study.Before), ("After, ", study.After)] : [("", study.After)];
        var found = sides.Where(s => s.Sizes.Circuit.FindConductor(id) is not null).ToArray();
        if (found.Length == 0) study.After.Conductor(id);
        return string.Join('\n', found.Select(s => s.Head + s.Sizes.Circuit.System + "\n\n" + new SizingWork(s.Sizes, s.Sizes.Conductor(id)).Written())) + Caution;
    }

    private string Written()
    {
        var (conductor, wire) = (sizing.Conductor, sizing.Conductor.Wire);
        string[] said =
        [
            $"{sizes.Circuit.TextOf(conductor.From)} to {sizes.Circuit.TextOf(conductor.To)}", wire.Size?.ToString() ?? "size not stated", wire.LengthInMetres is { } m ? Figure(m) + " m" : "length not stated",
            sizing.Insulation.Name.Length > 0 ? sizing.Insulation.Name : "insulation not stated", .. wire.Loom is { } loom ? new[] { "loom " + loom } : [], .. wire.Place is { } place ? new[] { place } : [],
        ];
        text.Append(conductor.Id).Append("  ").AppendJoin(", ", said).Append('\n');
        if (sizing.IsOld && wire.Condition != WireCondition.Good)
            text.Append("  it stays; ").Append(wire.Condition is { } seen ? seen.ToString().ToLowerInvariant() : "nobody has said in what condition it is").Append(": look at it before trusting any figure\n");
        Section("Current");
        SizingWorkCurrents.Write(sizes, sizing, Line);
        if (sizing.Refusal is { } refusal) Line($"nothing is said of its size: {Said(refusal)}");
        else Judged();
        return text.ToString();
    }

    private void Judged()
    {
        Section("Ampacity");
        Ampacity();
        Section("Fuse");
        Fuse();
        Section("Drop");
        Drop();
        Section("Strength");
        Strength();
        text.Append('\n').Append(sizing.SizeNeeded is { } needed ? $"Size needed: {needed}, by {Said(sizing.Binding!.Value)}" : "Size needed: no size that is made keeps all rules").Append('\n');
    }

    private void Ampacity()
    {
        if (sizing.Allowed is not { } allowed)
        {
            Line("the size is not stated");
            Least(SizingRule.Ampacity);
            return;
        }
        Line($"{allowed.Row}, column {Figure(allowed.Column)} °C: {Figure(allowed.InTable)} A", allowed.Source);
        if (allowed.IsAmbientStated)
            Line($"at {Figure(allowed.Ambient)} °C as stated: × √(({Figure(sizing.Insulation.Celsius)} − {Figure(allowed.Ambient)}) / ({Figure(sizing.Insulation.Celsius)} − {Figure(Sizing.Tables.Ampacity.Air)})) = {Figure(allowed.SpaceFactor)}", "NFPA 70, 310.15(B), from memory");
        else if (allowed.SpaceFactor < 1) Line($"engine space, {Figure(allowed.Ambient)} °C: × {Figure(allowed.SpaceFactor)}", DataTable.Named("engine-space").Source);
        if (sizing.Bundled > 1) Line($"loom, {Numbers.Whole(sizing.Bundled)} conductors that carry current: × {Figure(allowed.BundleFactor)}", DataTable.Named("bundles").Source);
        string factors = (allowed.SpaceFactor != 1 ? $" × {Figure(allowed.SpaceFactor)}" : "") + (allowed.BundleFactor < 1 ? $" × {Figure(allowed.BundleFactor)}" : "");
        Line($"allowed {(factors.Length == 0 ? "" : $"{Figure(allowed.InTable)}{factors} = ")}{Figure(allowed.Amperes)} A; {Figure(sizing.Worst.Amperes)} A is {Percent(sizing.By(SizingRule.Ampacity))}: {Outcome(SizingRule.Ampacity)}");
        double share = sizing.Worst.Amperes / allowed.Amperes;
        Line($"gets {Figure(allowed.Ambient)} + ({Figure(sizing.Insulation.Celsius)} − {Figure(allowed.Ambient)}) × ({Figure(sizing.Worst.Amperes)} / {Figure(allowed.Amperes)})² = {Figure(SteadyHeat.Celsius(allowed.Ambient, sizing.Insulation.Celsius, share), 3)} °C in the long run", "heat goes with the square of the current");
        Least(SizingRule.Ampacity);
    }

    private void Fuse()
    {
        if (!sizing.IsHot) Line("no source reaches it but through a load, which limits the current");
        else if (sizing.IsUnprotected) Line(sizing.FeedsStarter ? "nothing guards it; the feed of a cranking motor is customarily not fused" : "NOTHING GUARDS IT", "33 CFR 183.455(e), from memory");
        foreach (string part in sizing.ProtectedBy)
            foreach (var fuse in sizes.FusesOf(part).Where(f => sizing.Guard.Devices.Any(d => d.Element.Name == f.Element.Name)))
                Guarding(fuse);
        if (sizing.By(SizingRule.Fuse) is { Share: { } share } && sizing.GuardAmperes is { } guard)
        {
            Line($"{Figure(guard)} A before {Figure(sizing.Allowed!.Amperes)} A is {Percent(share)}: {Outcome(SizingRule.Fuse)}", "at most 100 %: AC 43.13-1B, 11-47; 150 %: 33 CFR 183.455(c)");
            Least(SizingRule.Fuse);
        }
    }

    private void Guarding(FuseSizing fuse)
    {
        double least = fuse.LeastRating.Amperes, current = fuse.Current.Amperes;
        string rating = fuse.Rating is { } stated ? Figure(stated.Amperes) + " A" : "rating not stated";
        Line($"{fuse.Part.Id}, {rating}, carries {Figure(current)} A: at least {(fuse.ShortAmperes > 0 ? $"{Figure(current - fuse.ShortAmperes)} / 0.8 + {Figure(fuse.ShortAmperes)} for a short time" : $"{Figure(current)} / 0.8")} = {Figure(least)} A", "80 % of the rating for good: NFPA 70, 210.20(A), from memory");
        double next = FuseLadder.Ratings.FirstOrDefault(r => r >= least);
        if (next > 0) Line($"the next rating made is {Figure(next)} A", DataTable.Named("fuse-ratings").Source);
        double of = fuse.Rating?.Amperes ?? next;
        if (of <= 0 || fuse.Inrush is null) return;
        Rush(fuse, "filaments cold", fuse.Rush.Lamps, of, "20 ms");
        if (fuse.Rush.Motors > fuse.Rush.Lamps || fuse.Rush.Motors > 1.1 * current) Rush(fuse, "motors standing", fuse.Rush.Motors, of, "0.5 s");
    }

    private void Rush(FuseSizing fuse, string what, double amperes, double rating, string lasts)
    {
        var time = OpeningTime.At(fuse.IsGlass ? FusePattern.Glass : OpeningTime.PatternOf(rating), amperes / rating);
        string opens = time is null ? "does not open" : time.Least <= 0 ? $"how soon it opens is not stated; the inrush is taken to last {lasts}" : $"opens after {Seconds(time.Least)} at the earliest; the inrush is taken to last {lasts}";
        Line($"inrush, {what}: {Figure(amperes)} A = {Figure(amperes / rating, 3)} × {Figure(rating)} A; {opens}", $"{(fuse.IsGlass ? "UL 248-14, SAE J554" : "ISO 8820-3")}; how long an inrush lasts: own choice, no source");
    }

    private void Drop()
    {
        var wire = sizing.Conductor.Wire;
        if (wire is { Size: { } size, LengthInMetres: { } metres })
        {
            double each = CopperResistance.OhmsPerMetre(size) * 1000;
            Line(size.Gauge is null ? $"{Figure(each)} mohm/m × {Figure(metres)} m = {Figure(each * metres)} mohm at 20 °C" : $"1/58 × 1.02 / {Figure(size.Area)} mm² = {Figure(each, 5)} mohm/m; × {Figure(metres)} m = {Figure(each * metres)} mohm at 20 °C",
                size.Gauge is null ? "IEC 60228, class 5" : "IEC 60028, ASTM B258; stranding 1.02: NFPA 70, chapter 9, table 8");
        }
        if (wire is { TemperatureInCelsius: { } celsius, ResistanceInOhms: null }) Line($"at {Figure(celsius)} °C as stated: × (1 + 0.00393 × ({Figure(celsius)} − 20)) = × {Figure(CopperResistance.FactorAt(celsius), 4)}", "NBS Handbook 100, from memory");
        foreach (var (end, ohms) in new[] { (sizing.Conductor.From, wire.JointAtFromInOhms), (sizing.Conductor.To, wire.JointAtToInOhms) })
            if (ohms is { } bad) Line($"bad joint at {sizes.Circuit.TextOf(end)}: + {Figure(bad * 1000)} mohm", "as stated");
        if (sizing.Tightest is not { } tightest)
        {
            Line("no load's circuit passes it");
            return;
        }
        Losses(tightest);
        Least(SizingRule.Drop);
    }

    private void Losses(CircuitDrop drop)
    {
        Line($"tightest circuit: {drop.Load.Name}, when {drop.When}; {Figure(drop.LoadVolts, 5)} V and {Figure(drop.Amperes)} A at the load");
        foreach (var share in drop.Conductors.Where(s => !s.IsBeside))
            Line($"  {sizes.Circuit.Conductors[share.Index].Id,-5} {Figure(share.Amperes)} A: {Figure(share.Volts)} V");
        double wires = drop.Conductors.Where(s => !s.IsBeside).Sum(s => s.Volts);
        if (drop.Volts - wires > 1e-4) Line($"  fuses, contacts and cases: {Figure(drop.Volts - wires)} V");
        double warm = drop.Volts + drop.Conductors.Where(s => !s.IsBeside).Sum(s => s.Volts * (WarmFactor(s.Index) - 1));
        Line($"sum {Figure(drop.Volts)} V of {Figure(drop.Limit.Volts)} V ({drop.Limit.Circuit}) is {Percent(drop.Volts / drop.Limit.Volts)}: {(drop.Margin >= 0 ? "kept" : "NOT KEPT")}", drop.Limit.Source);
        Line($"with the wires as warm as their greatest currents make them: {Figure(warm)} V{(drop.Margin >= 0 && warm > drop.Limit.Volts ? ", over the limit" : "")}", "copper resists 0.393 % more for each kelvin: NBS Handbook 100, from memory");
    }

    private double WarmFactor(int conductor) => sizes.Conductors[conductor].Warmth is { } warmth
        // The figure above is of the temperature that the job states.
        ? CopperResistance.FactorAt(warmth.DegreesCelsius) / CopperResistance.FactorAt(sizes.Conductors[conductor].Conductor.Wire.TemperatureInCelsius ?? CopperResistance.TableCelsius) : 1;

    private void Strength()
    {
        if (sizing.By(SizingRule.Strength) is not { LeastSize: { } least })
        {
            Line("braids, leads and screens need no least size");
            return;
        }
        string where = sizing.Conductor.Wire.Loom is null ? "a single wire" : "a wire in a loom";
        Line($"{where} needs {least} at least{(sizing.Conductor.Wire.Size is null ? "" : $": {Outcome(SizingRule.Strength)}")}", DataTable.Named("minima").Source);
    }

    private void Least(SizingRule rule)
    {
        if (sizing.By(rule)?.LeastSize is { } least) Line($"smallest size that does: {least}");
    }

    private void Section(string head) => text.Append('\n').Append(head).Append('\n');

    private void Line(string line, string source = "") => text.Append("  ").Append(line).Append(source.Length == 0 ? "" : $"  [{source}]").Append('\n');

    private string Outcome(SizingRule rule) => sizing.By(rule)?.Outcome switch
    {
        SizingOutcome.Passed => "kept",
        SizingOutcome.Note => "kept, barely",
        SizingOutcome.Warning => "WARNING",
        SizingOutcome.Failed => "NOT KEPT",
        _ => "not judged",
    };

    private static string Percent(RuleVerdict? verdict) => verdict?.Share is { } share ? Percent(share) : "not judged";

    private static string Percent(double share) => Figure(share * 100, 3) + " %";

    private static string Seconds(double seconds) => seconds < 1 ? Figure(seconds * 1000, 3) + " ms" : Figure(seconds, 3) + " s";

    private static string Said(SizingRule rule) => rule switch { SizingRule.Ampacity => "ampacity", SizingRule.Fuse => "the fuse", SizingRule.Drop => "the drop", _ => "strength" };

    private static string Said(SizingRefusal refusal) => refusal switch
    {
        SizingRefusal.IgnitionSecondary => "it carries high voltage",
        SizingRefusal.ResistanceWire => "it is a resistance wire",
        SizingRefusal.SizeOutsideTables => "no table has it",
        SizingRefusal.HotterThanInsulation => "it is as hot where it runs as its insulation stands",
        _ => "its insulation stands less than the table's lowest column",
    };

    /// <summary>A figure with so many digits that count, without zeros at the end.</summary>
    internal static string Figure(double value, int digits = 4) =>
        Numbers.Plain(value, value == 0 ? 0 : Math.Clamp(digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 6));
}
