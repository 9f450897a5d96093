using Hotside.Studies.Figures.Budgets;
using Hotside.Tests.Support;

namespace Hotside.Tests.Studies.Figures;

public class ChargingBudgetTests
{
    // Invented: an alternator of 40 A, a battery of 60 Ah, two running lamps, a horn, a wiper and a fuel pump.
    private const string Text = """
        hotside: 1
        title: Small budget
        system: 12 V, negative ground, sizes in AWG
        parts:
          G1: battery, 12 V, 60 Ah
          G2: alternator-one-wire, 12 V, 40 A
          X1: feed-rail
          S1: ignition-switch
          S2: switch, Lights
          S3: switch, Wiper
          S4: push-button, Horn button
          E1: lamp, 12 V, 24 W, 2 on chassis
          E2: lamp, 12 V, 24 W, 2 on chassis
          M1: wiper, 12 V, 4 A, 53e free
          M2: fuel-pump, 12 V, 3 A, 2 on chassis
          H1: horn, 12 V, 5 A
        wires:
          w1: G1.pos to X1, 2 RD, 0.5 m
          w2: G1.neg to chassis, 2 BK, 0.3 m
          w3: G2.B+ to X1, 8 RD, 0.5 m
          w4: X1 to S1.30, 10 RD, 0.5 m
          w5: S1.15 to M2.1, 14 GN, 0.5 m
          w6: X1 to S2.1, 14 RD, 0.5 m
          w7: S2.2 to E1.1, 14 BU, 0.5 m
          w8: E1.1 to E2.1, 14 BU, 0.5 m
          w9: X1 to S3.1, 14 RD, 0.5 m
          w10: S3.2 to M1.53, 14 GN, 0.5 m
          w11: X1 to H1.1, 14 RD, 0.5 m
          w12: H1.2 to S4.1, 16 BK, 0.5 m
          w13: S4.2 to chassis, 16 BK, 0.5 m
          w14: X1 to M1.53a, 14 RD, 0.5 m
        """;

    private static ChargingBudget Of(string text) => Job.Read(text).OrThrow().Study.After.Budget;

    [Fact]
    public void Batteries_in_series_give_one_current_and_have_the_hours_of_one()
    {
        const string lamp = "  E9: lamp, 12 V, 1 W, 2 on chassis\n";
        string one = Text.Replace("wires:\n", lamp + "wires:\n  w90: X1 to E9.1, 16 RD, 1 m\n", StringComparison.Ordinal);
        string two = one.Replace("  G1: battery, 12 V, 60 Ah\n", "  G1: battery, 6 V, 60 Ah\n  G9: battery, 6 V, 60 Ah\n", StringComparison.Ordinal)
            .Replace("w1: G1.pos to X1", "w91: G1.pos to G9.neg, 2 RD, 0.1 m\n  w1: G9.pos to X1", StringComparison.Ordinal);
        string beside = one.Replace("  G1: battery, 12 V, 60 Ah\n", "  G1: battery, 12 V, 60 Ah\n  G9: battery, 12 V, 60 Ah\n", StringComparison.Ordinal)
            .Replace("wires:\n", "wires:\n  w91: G1.pos to G9.pos, 2 RD, 0.1 m\n  w92: G9.neg to chassis, 2 BK, 0.1 m\n", StringComparison.Ordinal);
        ChargingBudget single = Of(one), series = Of(two), parallel = Of(beside);
        Assert.Equal([60.0, 60, 120], new[] { single, series, parallel }.Select(b => b.Charge!.Value.AmpereHours));
        Assert.Equal(single.Drain.Amperes, series.Drain.Amperes, 0.01 * single.Drain.Amperes);
        Assert.Equal(single.StandsFor!.Value.Hours, series.StandsFor!.Value.Hours, 0.01 * single.StandsFor.Value.Hours);
        Assert.Equal(2 * single.StandsFor!.Value.Hours, parallel.StandsFor!.Value.Hours, 0.02 * single.StandsFor.Value.Hours);
    }

    [Fact]
    public void What_a_job_calls_charging_itself_is_not_taken_for_it()
    {
        string named = Text + "\nsettings:\n  charging: S4 pressed\n  all off: S2 on\n  everything on: S3 on\n";
        ChargingBudget with = Of(named), without = Of(Text);
        Assert.Equal(without.Loads.Select(l => (l.Load.Name, Math.Round(l.Current.Amperes, 6))), with.Loads.Select(l => (l.Load.Name, Math.Round(l.Current.Amperes, 6))));
        Assert.Equal(without.Drain.Amperes, with.Drain.Amperes, 1e-9);
        // By that name stands the job's own.
        Assert.Contains("H1", Job.Read(named).OrThrow().Study.After.Setting("charging").On);
    }

    [Fact]
    public void An_alternator_that_states_its_lower_mark_gives_that_at_idle() =>
        Assert.Equal([18.0, 34, 18, 34], Of(Text.Replace("12 V, 40 A", "12 V, 40 A, low 18 A", StringComparison.Ordinal)).Cases.Select(c => c.Given.Amperes));

    [Fact]
    public void Loads_count_by_their_duties_at_the_volts_of_a_running_machine()
    {
        var budget = Of(Text);
        Assert.Equal(["E1", "E2", "M1", "M2", "H1"], budget.Loads.Select(l => l.Load.Name));
        // By hand: filaments draw I · (U / U0)^0.55 (Fink and Beaty, page 22-8), motors under a steady load their rated current, the horn as a resistance. The machine holds
        // 14.3 V behind 0.05 Ω (own choice), and charges the full battery with 2 % of its hours.
        double volts = 14.3;
        for (int i = 0; i < 20; i++) volts = 14.3 - (0.05 * ((2 * 2 * Math.Pow(volts / 12, 0.55)) + 4 + 3 + (5 * volts / 12) + 1.2));
        double lamp = 2 * Math.Pow(volts / 12, 0.55), horn = 5 * volts / 12;
        Assert.Equal(lamp, budget.Loads[0].Current.Amperes, 0.01 * lamp);
        Assert.Equal(0, budget.Loads[0].ByDay.Amperes);
        Assert.Equal(4, budget.Loads[2].ByNight.Amperes, 1e-3);
        Assert.Equal(3, budget.Loads[3].ByDay.Amperes, 1e-3);
        Assert.Equal(0.02 * horn, budget.Loads[4].ByDay.Amperes, 0.005);
        double day = 3 + (0.02 * horn), night = day + (2 * lamp) + 4;
        Assert.Equal(["idle, dry day", "cruise, dry day", "idle, night and rain", "cruise, night and rain"], budget.Cases.Select(c => c.Name));
        Assert.All(budget.Cases.Zip([day, day, night, night]), c => Assert.Equal(c.Second, c.First.Needed.Amperes, 0.1));
        // 40 % at idle, 85 % warm at cruise.
        Assert.Equal([16.0, 34, 16, 34], budget.Cases.Select(c => c.Given.Amperes));
        // A battery of 60 Ah takes a fifth of its hours in amperes at most.
        Assert.All(budget.Cases.Take(2), c => Assert.Equal(-12, c.Battery.Amperes, 0.1));
        Assert.All(budget.Cases, c => Assert.Null(c.HalfEmptyAfter));
        Assert.True(budget.MachinesSuffice);
    }

    [Fact]
    public void A_generator_gives_nothing_at_idle_and_the_battery_makes_it_up()
    {
        var before = Job.ReadFile(Repository.Path("gallery", "van", "job.yaml")).OrThrow().Study.Before.Budget;
        var idle = before.Cases[0];
        Assert.Equal(0, idle.Given.Amperes);
        Assert.Equal(idle.Needed.Amperes, idle.Battery.Amperes, 1e-9);
        // Half of 100 Ah.
        Assert.Equal(50 / idle.Needed.Amperes, idle.HalfEmptyAfter!.Value.Hours, 1e-9);
        Assert.Equal(30, before.Cases[1].Given.Amperes);
    }

    [Fact]
    public void A_drain_empties_half_of_the_battery_in_the_time_it_takes()
    {
        var clean = Of(Text);
        Assert.Equal(0, clean.Drain.Amperes, 1e-4);
        Assert.Null(clean.StandsFor);
        // 12.6 V over 126 Ω is 0.1 A; half of 60 Ah last 300 h. There is no starter.
        var drained = Of(Text.Replace("wires:", "  R1: resistor, 126 ohm\nwires:\n  w20: X1 to R1.1\n  w21: R1.2 to chassis", StringComparison.Ordinal));
        Assert.Equal(0.1, drained.Drain.Amperes, 1e-4);
        Assert.Equal(300, drained.StandsFor!.Value.Hours, 0.5);
    }

    [Fact]
    public void Cranking_volts_are_what_cells_and_cables_leave()
    {
        // Full battery 12.6 V behind 10 mΩ and 1/0 cables; the motor draws 150 A whatever its volts.
        const string starter = """
            hotside: 1
            title: Starter
            system: 12 V, negative ground, sizes in AWG
            parts:
              G1: battery, 12 V, 60 Ah
              K1: starter-relay-case, 12 V, 300 A, coil 4 A, I free
              M1: starter, 12 V, 150 A
              S1: push-button
            wires:
              w1: G1.pos to K1.BAT, 2 mohm
              w2: G1.neg to chassis, 2 mohm
              w3: K1.MOT to M1.1, 2 mohm
              w4: K1.BAT to S1.1, 16 RD, 1 m
              w5: S1.2 to K1.S, 16 RD, 1 m
            """;
        var cranking = Of(starter).Cranking!;
        Assert.Equal(150, cranking.Current.Amperes, 1e-3);
        double coil = (12.6 - (150 * 0.014)) / (3 + 0.014);
        Assert.Equal(12.6 - (150 * 0.016) - (coil * 0.014), cranking.AtStarter.Volts, 0.02);
        Assert.Equal(9.6, cranking.Least.Volts, 1e-9);
        Assert.True(cranking.Suffices);
        Assert.False(Of(starter.Replace("w3: K1.MOT to M1.1, 2 mohm", "w3: K1.MOT to M1.1, 10 mohm", StringComparison.Ordinal)).Cranking!.Suffices);
    }

    [Fact]
    public void An_ammeter_shows_a_charge_as_a_charge_in_both_polarities_and_misses_what_is_on_the_battery_side()
    {
        var van = Job.ReadFile(Repository.Path("gallery", "van", "job.yaml")).OrThrow().Study;
        foreach (var budget in new[] { van.Before.Budget, van.After.Budget })
        {
            var ammeter = Assert.Single(budget.Ammeters);
            Assert.True(ammeter.Reading.Amperes > 1);
            Assert.True(ammeter.ShowsTheBattery);
        }
    }

    [Fact]
    public void The_budget_of_the_van_is_the_approved_one() =>
        Approve.Text(BudgetTable.Of(Job.ReadFile(Repository.Path("gallery", "van", "job.yaml")).OrThrow()).ToText(), "tests", "Hotside.Tests", "Studies", "Figures", "van-budget.approved.txt");
}
