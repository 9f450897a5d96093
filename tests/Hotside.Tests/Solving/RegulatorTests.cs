using Hotside.Solving;
using Hotside.Tests.Studies;

namespace Hotside.Tests.Solving;

/// <summary>Regulators within circuits.</summary>
public class RegulatorTests
{
    [Fact]
    public void A_regulator_with_no_way_back_behind_it_passes_nothing_and_its_output_floats()
    {
        var solution = new CircuitSolver(TestCircuit.Read("""
            12 V, negative
            G1 battery 12V
            N1 limiter
            E1 lamp 12V 5W
            - G1.neg to chassis
            - G1.pos to N1.in
            - N1.out to E1.1
            """)).Solve();
        Assert.True(solution.IsExact);
        Assert.Equal(0, solution.Element("E1", "lamp").Amperes, 1e-6);
        Assert.Equal(0, solution.Element("N1", "drop").Amperes, 1e-6);
        Assert.Null(solution.VoltsAt("E1.2"));
    }
}
