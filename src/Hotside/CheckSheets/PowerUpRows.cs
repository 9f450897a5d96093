using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnoses;
using Hotside.Solving.Laws;
using Hotside.Studies;
using Hotside.Wording;

namespace Hotside.CheckSheets;

/// <summary>
/// First power by steps: through a lamp in the lead of the grounded post, fuses out, then in one by one, then each switch; volts across the lamp, by its own law, tell a
/// short from a load (steps: common practice, no source; volts: solved).
/// </summary>
internal sealed class PowerUpRows(DiagnosisBench bench, Vocabulary words)
{
    /// <summary>What stands behind the volts, for the leads may lie either way round.</summary>
    public const string EitherSign = ", either sign";

    // Below a volt the lamp does not glow; a quarter is what filaments and motors differ by (common practice, no source).
    private const double Dark = 1, Band = 0.25, LeastBand = 0.5;

    // A sheet is not all first power (own choice).
    private const int MostSettings = 6;

    private readonly Bench piece = bench.Dictionary.Bench;

    /// <summary>The rows, not yet numbered; none where the grounded lead of the battery is not one conductor.</summary>
    public IEnumerable<CheckRow> Rows()
    {
        if (Lead() is not { } lead) yield break;
        string red = $"a {Numbers.Plain(piece.Volts, 0)} V, {TestBulb.Text} lamp between {piece.Circuit.TextOf(lead.Post)} and {lead.Conductor.Id}";
        ImmutableArray<int> all = [.. bench.Dictionary.Pullable];
        if (!all.IsEmpty)
        {
            double volts = Across(lead.Index, 0, all);
            yield return Row("fuses out, all at rest", red, volts, $"lit: a short, or a load before the fuses; take the {words.Ground} lead off");
            double closed = Across(lead.Index, 0, []);
            yield return Row($"{string.Join(", ", FromTheFeed())} in one by one, all at rest", red, closed, "lit by one of them: the fault is behind that fuse");
        }
        // Where other pieces have fuses theirs are out, too.
        else if (bench.Study.Circuit.Parts.Any(p => p.Kind.Elements.Any(e => e.Type == ElementType.Fuse)))
            yield return Row("fuses out, all at rest", red, Across(lead.Index, 0, []), $"lit: a short, or a load before the fuses; take the {words.Ground} lead off");
        else yield return Row("all at rest", red, Across(lead.Index, 0, []), $"lit: a short; take the {words.Ground} lead off");
        for (int s = 1, told = 0; s < bench.Dictionary.Settings.Count && told < MostSettings; s++)
        {
            var setting = bench.Dictionary.Settings[s];
            if (setting.Cranks || setting.Runs || Watched(s).Length == 0) continue;
            double volts = Across(lead.Index, s, []);
            // Behind the lamp a relay may not hold what it feeds: then it tells nothing.
            if (Math.Abs(volts) < Dark) continue;
            told++;
            yield return Row(setting.Name, red, volts, $"about all of the battery's volts on the lamp: a short on the way of {Watched(s)}; far less: {Watched(s)} {(Watched(s).Contains(", ", StringComparison.Ordinal) ? "draw" : "draws")} nothing") with { Stands = setting.Stands };
        }
    }

    private IEnumerable<string> FromTheFeed()
    {
        var dictionary = bench.Dictionary;
        FuseOrder order = new(bench.Study);
        return dictionary.Pullable.OrderBy(f => order.Before(dictionary.Fuses[f].Part.Id)).Select(dictionary.FuseName);
    }

    private string Watched(int setting) => string.Join(", ", bench.Meter.Watched.Where(w => w.Variable < 0 && Looks.Sound(bench.Dictionary, setting, w) != LookState.Off).Select(w => w.Name));

    private CheckRow Row(string setting, string red, double volts, string ifNot)
    {
        bool isDark = Math.Abs(volts) < Dark;
        double half = Math.Max(Band * Math.Abs(volts), LeastBand);
        string band = isDark ? $"below {Numbers.Plain(Dark, 0)} V" : $"{Numbers.Fixed(Math.Max(0, Math.Abs(volts) - half), 1)} to {Numbers.Fixed(Math.Min(Math.Abs(volts) + half, piece.Volts * 1.06), 1)} V";
        return new(0, CheckStage.PowerUp, setting, red, "", isDark ? "lamp dark" : Numbers.Fixed(Math.Abs(volts), 1) + " V" + EitherSign, band, ifNot);
    }

    private double Across(int lead, int setting, ImmutableArray<int> open)
    {
        var dictionary = bench.Dictionary;
        LampLaw lamp = new(piece.Volts, TestBulb.Watts / piece.Volts);
        var at = piece.Solver.Solve(FaultDictionary.StateOf(piece.Solver, dictionary.Settings[setting]), dictionary.Settings[setting].Values, laws =>
        {
            Array.Resize(ref laws, piece.Solver.Network.Edges.Length);
            foreach (int fuse in open) laws[dictionary.Fuses[fuse].FirstEdge] = null;
            laws[lead] = lamp;
            return laws;
        });
        return at.Point.Across(piece.Model.Network.Edges[lead]);
    }

    private (Conductor Conductor, int Index, End Post)? Lead()
    {
        if (piece.Circuit.Sources.Count(s => s.Part.IsStandingSource) != 1) return null;
        var source = piece.Circuit.Sources.First(s => s.Part.IsStandingSource);
        var leads = piece.Circuit.Conductors.Select((c, i) => (Conductor: c, Index: i)).Where(c => c.Conductor.Ends.Contains(source.Return)).ToArray();
        return leads.Length == 1 ? (leads[0].Conductor, leads[0].Index, source.Return) : null;
    }
}
