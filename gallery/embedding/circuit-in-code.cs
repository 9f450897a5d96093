// A circuit built in code, altered in code, drawn as a pair.
//   dotnet run circuit-in-code.cs
#:project ../../src/Hotside/Hotside.csproj

using Hotside;
using Hotside.Alterations;
using Hotside.Circuits;
using Hotside.Kinds;
using UnitsNet;
using static Hotside.Circuits.WireSize;

Circuit before = new CircuitBuilder(ElectricPotential.FromVolts(6), Ground.Positive)
    .Part("G1", Kind.Battery, new() { Voltage = ElectricPotential.FromVolts(6) })
    .Part("H1", Kind.Horn, new() { Voltage = ElectricPotential.FromVolts(6), Current = ElectricCurrent.FromAmperes(8) })
    .Part("S1", Kind.PushButton, new() { Name = "Horn button" })
    .Wire("w1", "G1.neg", "H1.1", new(Awg(12), "black"))
    .Wire("w2", "H1.2", "S1.1", new(Awg(12), "yellow"))
    .Wire("w3", "S1.2", "chassis", new(Awg(12), "black"))
    .Wire("w4", "G1.pos", "chassis", new(Awg(2), "black"))
    .Build();

Alteration alteration = before.Alter("12 V negative ground, with a fuse")
    .System(ElectricPotential.FromVolts(12), Ground.Negative)
    .Fit("F1", Kind.Fuse, new() { Current = ElectricCurrent.FromAmperes(10) }, because: "the horn had none")
    .Move("w1", "G1.neg", "F1.1")
    .Run("w5", "F1.2", "H1.1", new(Awg(12), "red"))
    .Run("w6", "G1.pos", "F1.1", new(Awg(12), "red"))
    .ReplaceReversed("G1", Kind.Battery, new() { Voltage = ElectricPotential.FromVolts(12) })
    .Build();

Job job = Job.From(alteration, "Horn");
job.Draw(View.Pair).SaveSvg("horn-pair.svg");
foreach (Change change in alteration.Changes)
    Console.WriteLine($"{change.Number}: {string.Join(", ", change.Acts.SelectMany(a => a.Items))}");
