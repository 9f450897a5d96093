using Hotside.Circuits;
using Hotside.Kinds;

namespace Hotside.Tests.Kinds;

public class KindWriterTests
{
    public static TheoryData<string> Kinds => [.. Catalogue.Standard.Kinds.Select(k => k.Id)];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_kind_that_is_written_and_read_again_is_the_same(string id)
    {
        string Text(PartKind kind) => $"kind: {kind.Id}\n" + string.Join('\n', KindWriter.Lines(kind)) + "\n";
        var kind = Catalogue.Standard.Find(id)!;
        var again = Catalogue.Standard.WithKind(Text(kind)).Find(id)!;
        Assert.Equal(Text(kind), Text(again));
        Assert.Equal((kind.Noun, kind.BritishNoun, kind.Source, kind.Current), (again.Noun, again.BritishNoun, again.Source, again.Current));
        Assert.Equal(kind.Ratings.Select(r => (r.Name, r.Default)), again.Ratings.Select(r => (r.Name, r.Default)));
        // What a winding moves by itself is not written but made again.
        Assert.Equal(kind.Actuators.Select(a => a.Name), again.Actuators.Select(a => a.Name));
        Assert.Equal(kind.Elements, again.Elements, (a, b) => a.ToString() == b.ToString());
    }
}
