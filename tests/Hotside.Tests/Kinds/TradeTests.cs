using Hotside.Kinds;
using Hotside.Tests.Support;

namespace Hotside.Tests.Kinds;

/// <summary>The table of what the trade has, against the kinds: nothing is forgotten on either side, and both say the same of voltage and polarity.</summary>
public class TradeTests
{
    private static readonly Row[] Rows = [.. File.ReadLines(Repository.Path("tests", "Hotside.Tests", "Kinds", "trade.txt")).Where(l => l.Length > 0 && l[0] != '#').Select(Row.Of)];

    public static TheoryData<string> Parts => [.. Rows.Select(r => r.Part)];

    [Theory]
    [MemberData(nameof(Parts))]
    public void Each_part_of_the_trade_has_a_kind_or_a_reason_why_not(string part)
    {
        var row = Rows.Single(r => r.Part == part);
        Assert.True(row.Kinds.Length > 0 || row.Reason.Length > 10, part);
        foreach (string id in row.Kinds)
        {
            var kind = Catalogue.Standard.Find(id);
            Assert.True(kind is not null, $"{part}: there is no kind {id}");
            if (row.Voltage.Length > 0) Assert.Equal((id, row.Voltage), (id, kind.Voltage));
            if (row.Polarity.Length > 0) Assert.Equal((id, row.Polarity), (id, kind.Polarity));
        }
    }

    [Fact]
    public void Each_kind_serves_a_part_of_the_trade() =>
        Assert.Equal("", string.Join(", ", Catalogue.Standard.Kinds.Select(k => k.Id).Except(Rows.SelectMany(r => r.Kinds))));

    private sealed record Row(string Part, string[] Kinds, string Reason, string Voltage, string Polarity)
    {
        public static Row Of(string line)
        {
            string[] cells = [.. line.Split('|').Select(c => c.Trim())];
            bool none = cells[1].StartsWith('-');
            return new(cells[0], none ? [] : cells[1].Split(", "), none ? cells[1][1..].Trim() : "", cells[2], cells[3]);
        }
    }
}
