using Hotside.Circuits;

namespace Hotside.Tests;

public class NumbersTests
{
    [Theory]
    [InlineData(0.15, "0.15")]
    [InlineData(12, "12")]
    [InlineData(-0.0000001, "0")]
    public void A_number_is_written_without_trailing_zeros(double value, string expected) =>
        Assert.Equal(expected, Numbers.Plain(value));
}
