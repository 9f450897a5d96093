using System.Globalization;
using Hotside.Drawings.Plans;
using Hotside.Drawings.Sets;
using Hotside.Drawings.Sheets;
using Hotside.Studies;
using Hotside.Symbols;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;
using Hotside.Wording;

namespace Hotside.Tests.Drawings.Sets;

/// <summary>A sheet is found by what its title block calls it, so no two of a set are called alike.</summary>
public sealed class SheetSubjectTests
{
    [Fact]
    public void Sheets_of_parts_that_are_called_alike_are_told_apart_by_their_references()
    {
        string[] subjects = Subjects("Lamps of a booth", "One voltage", 24);
        Assert.True(subjects.Length > 3, $"{subjects.Length} sheets");
        Assert.Equal(subjects.Length, subjects.Distinct().Count());
        Assert.All(subjects.Skip(2), s => Assert.Matches(@"^Lamps E\d+, E\d+", s));
    }

    // The job's own words stand on the first sheet alone.
    [Fact]
    public void A_sheet_is_not_called_what_the_job_is_called()
    {
        string plain = Subjects("Lamps of a booth", "One voltage", 24)[1];
        string[] subjects = Subjects("Lamps of a booth", plain, 24);
        Assert.Equal(plain, subjects[0]);
        Assert.Equal(subjects.Length, subjects.Distinct().Count());
    }

    // A list that goes on has its first line in its title block; the first sheet has the job's own words.
    [Fact]
    public void Lists_on_several_sheets_are_told_apart()
    {
        var job = Read("Lamps of a booth", "One voltage", 250);
        var words = Vocabulary.Of(Words.American);
        var plan = DrawingPlan.Of(job.Alteration, Study.Of(job.Alteration), Lettering.Normal, words);
        string?[] subjects = [.. TextSheets.Of(plan, new([SeenIn.After], new Dictionary<string, string>(), words), SheetSize.A4, new([], _ => "2.A1", _ => "sheet 2")).Select(s => s.Subject)];
        Assert.True(subjects.Length > 2, $"{subjects.Length} sheets");
        Assert.Null(subjects[0]);
        Assert.Equal(subjects.Length, subjects.Distinct().Count());
        Assert.All(subjects.Skip(1), s => Assert.Matches("^Who switches what, from E[0-9]+$", s));
    }

    private static string[] Subjects(string title, string supplement, int lamps) =>
        [.. Read(title, supplement, lamps).DrawSheets(View.After, new() { Page = Page.A4 }).Select(s => s.Scene.Groups.Single(g => g.Id == "title-block").Shapes.OfType<TextShape>().Select(t => t.Text).ToArray()).Select(block => block[Array.IndexOf(block, title) + 1])];

    private static Job Read(string title, string supplement, int lamps)
    {
        var numbers = Enumerable.Range(1, lamps).Select(i => i.ToString(CultureInfo.InvariantCulture)).ToArray();
        string job = $"""
            hotside: 1
            title: {title}
            title block:
              supplementary title: '{supplement}'
            system: 6 V, negative ground, sizes in AWG
            parts:
              G1: battery, 6 V, 60 Ah
              F1: fuse, 30 A
              X1: feed-rail
              {string.Join("\n  ", numbers.Select(n => $"S{n}: switch, 'Switch {n}'\n  E{n}: lamp, 6 V, 5 W"))}
            wires:
              w1: G1.pos to F1.1, 8 BK
              w2: F1.2 to X1, 8 BK
              w3: G1.neg to chassis, 8 BK
              {string.Join("\n  ", numbers.Select(n => $"a{n}: X1 to S{n}.1, 16 BK\n  b{n}: S{n}.2 to E{n}.1, 16 BK\n  c{n}: E{n}.2 to chassis, 16 BK"))}
            """;
        return Job.Read(job).OrThrow();
    }
}
