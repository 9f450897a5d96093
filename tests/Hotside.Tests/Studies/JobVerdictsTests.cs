using Hotside.Studies;
using Hotside.Tests.Support;

namespace Hotside.Tests.Studies;

/// <summary>The verdicts that were written by hand beside each circuit, before it was computed (no published source: worked out by Kirchhoff's laws).</summary>
public class JobVerdictsTests
{
    public static TheoryData<string> Files => [.. JobFiles.All];

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_load_has_the_verdict_written_beside_the_circuit(string file)
    {
        var alteration = JobFiles.Read(file).Alteration!;
        CircuitStudy before = CircuitStudy.Of(alteration.Before), after = CircuitStudy.Of(alteration.After);
        var expected = ExpectedVerdict.In(JobFiles.Text(file)).ToArray();
        Assert.True(expected.Length > 0 || file.StartsWith("more/parts", StringComparison.Ordinal), "no verdict is written in " + file);
        string[] wrong = [.. expected.SelectMany(e => e.Against(e.After ? after : before).Select(d => (e.After ? "after: " : "before: ") + d))];
        Assert.True(wrong.Length == 0, string.Join('\n', wrong));
    }
}
