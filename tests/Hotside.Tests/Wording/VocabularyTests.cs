using Hotside.Tests.Alterations;
using Hotside.Wording;

namespace Hotside.Tests.Wording;

public class VocabularyTests
{
    [Theory]
    [InlineData("ground", "earth")]
    [InlineData("generator", "dynamo")]
    [InlineData("splice", "joint")]
    [InlineData("gray", "grey")]
    [InlineData("wrench", "spanner")]
    [InlineData("horn", "horn")]
    public void British_words_stand_in_for_american_ones(string american, string british)
    {
        Assert.Equal(british, Words.British.Say(american));
        Assert.Equal(american, Words.American.Say(american));
    }

    [Fact]
    public void Words_never_touch_ids_terminals_or_the_users_own_text()
    {
        var before = Samples.Horn();
        var made = Lines.Made(before, Lines.Do("G1", "keep the ground clean"), Lines.Fit("F9", Hotside.Tests.Alterations.TestKinds.Fuse, name: "Ground generator"));
        Assert.Equal(["G1: keep the ground clean", "fit fuse F9, Ground generator"], made.Changes.Select(c => ChangeText.Of(c, made, Words.British).Full));
    }

    [Theory]
    [InlineData("fuse", "fuses")]
    [InlineData("battery", "batteries")]
    [InlineData("switch", "switches")]
    [InlineData("feed rail", "feed rails")]
    public void Nouns_have_plurals(string one, string many) => Assert.Equal(many, Listing.Plural(one));
}
