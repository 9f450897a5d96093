using Hotside.Kinds;
using Hotside.Symbols;

namespace Hotside.Tests.Kinds;

public class KindSymbolTests
{
    // A kind without a symbol is drawn as a box; one that names a symbol means one that there is.
    [Fact]
    public void Every_symbol_that_a_kind_names_is_drawn() =>
        Assert.Equal("", string.Join(", ", Catalogue.Standard.Kinds.Where(k => k.Symbol is { } symbol && !SymbolBook.Names.Contains(symbol)).Select(k => $"{k.Id}: {k.Symbol}")));
}
