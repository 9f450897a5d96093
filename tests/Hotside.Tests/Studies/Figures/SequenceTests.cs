using Hotside.Circuits;
using Hotside.Kinds;
using Hotside.Studies;
using UnitsNet;
using static UnitsNet.ElectricPotential;

namespace Hotside.Tests.Studies.Figures;

public class SequenceTests
{
    // A relay that feeds its own coil once pulled: the start button pulls it in, the stop button lets it go.
    private const string Text = """
        hotside: 1
        title: Holding relay
        system: 12 V, negative ground
        parts:
          G1: battery, 12 V, 60 Ah
          S1: push-button, Start
          S2: break-button, Stop
          K1: relay, 12 V, coil 0.15 A
          E1: lamp, 12 V, 10 W, 2 on chassis
          X1: splice
          X2: splice
        wires:
          w1: G1.pos to S2.1
          w2: S2.2 to X1
          w3: X1 to S1.1
          w4: S1.2 to X2
          w5: X2 to K1.86
          w6: K1.85 to chassis
          w7: X1 to K1.30
          w8: K1.87 to X2
          w9: X2 to E1.1
          w10: G1.neg to chassis
        settings:
          start: S1 pressed
          stop: S2 pressed
        sequences:
          on and off: start then all off then stop then all off
        """;

    [Fact]
    public void A_relay_that_holds_stays_in_until_the_stop_button_is_pressed()
    {
        var study = Job.Read(Text).OrThrow().Study.After;
        var steps = study.Sequence("on and off").Steps;
        Assert.Equal(["start", "all off", "stop", "all off"], steps.Select(s => s.Setting.Name));
        Assert.Equal([true, true, false, false], steps.Select(s => s.Element("E1").IsLive));
        // Alone, without what went before, the lamp is off with all off, and what was done before matters.
        Assert.False(study.Setting("all off").Figures.Element("E1").IsLive);
        Assert.True(study.Setting("all off").Figures.IfPulledBefore!.Element("E1").IsLive);
    }

    [Fact]
    public void Sequences_come_back_from_what_is_written()
    {
        var job = Job.Read(Text).OrThrow();
        string written = job.ToYaml();
        Assert.Contains("sequences:\n  on and off:\n    - start\n    - all off\n", written, StringComparison.Ordinal);
        Assert.Equal(job.Alteration.After.Sequences, Job.Read(written).OrThrow().Alteration.After.Sequences);
    }

    [Fact]
    public void Sequences_of_an_altered_job_are_those_of_both_circuits()
    {
        var job = Job.Read(Text + "\nalteration:\n  title: A weaker lamp\n  changes:\n    - replace E1: lamp, 12 V, 5 W, 2 on chassis\n").OrThrow();
        Assert.Equal(job.Study.Before.Sequences.Select(s => s.Sequence.Name), job.Study.After.Sequences.Select(s => s.Sequence.Name));
        Assert.True(job.Study.Before.Sequence("on and off").Steps[1].Element("E1").Current > job.Study.After.Sequence("on and off").Steps[1].Element("E1").Current);
    }

    [Fact]
    public void The_builder_takes_sequences_of_what_it_knows()
    {
        var builder = new CircuitBuilder(FromVolts(12), Ground.Negative).Part("G1", Kind.Battery).Part("S1", Kind.PushButton)
            .Part("H1", Kind.Horn, new() { Current = ElectricCurrent.FromAmperes(5) })
            .Wire("w1", "G1.pos", "H1.1").Wire("w2", "H1.2", "S1.1").Wire("w3", "S1.2", "chassis").Wire("w4", "G1.neg", "chassis")
            .Setting("pressed", ("S1", "pressed")).Sequence("twice", "pressed", "all off", "pressed");
        Assert.Equal([true, false, true], CircuitStudy.Of(builder.Build()).Sequence("twice").Steps.Select(s => s.Element("H1").IsLive));
        Assert.Contains("did you mean \"pressed\"", Assert.Throws<ArgumentException>(() => builder.Sequence("other", "presed")).Message, StringComparison.Ordinal);
    }
}
