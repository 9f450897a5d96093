using Hotside.Packs.Lists;
using Hotside.Packs.Papers;

namespace Hotside.Packs.Pages;

/// <summary>The cautions whose condition holds for this job.</summary>
internal static class CautionPage
{
    public const string Key = "cautions";

    public static Section Of(PackSource source) => new(Key, "Cautions",
    [
        Table.Of([new("") { IsBold = true, Least = 108 }, new("") { Share = 1 }], Caution.All(source).Select(c => TableRow.Of(c.Head, c.Text)), source.Width, source.Lettering),
        Blanks.Of(["Read by", "Date", "Initials"], 3, source.Width, source.Lettering),
    ]) { Note = "Those that concern this job. Read them before the first tool comes out." };
}
