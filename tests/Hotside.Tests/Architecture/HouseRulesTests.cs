using System.Text.RegularExpressions;
using Hotside.Tests.Support;
using NetArchTest.Rules;

namespace Hotside.Tests.Architecture;

/// <summary>The house: folders of the library are rooms, and a room knows only the rooms before it in the flow of the data.</summary>
public partial class HouseRulesTests
{
    // What each room may know. The root (Job) knows all.
    private static readonly Dictionary<string, string[]> Knows = new()
    {
        ["Circuits"] = [],
        ["Diagnostics"] = ["Circuits"],
        ["Notation"] = ["Circuits", "Diagnostics"],
        ["Kinds"] = ["Circuits", "Diagnostics", "Notation"],
        ["Alterations"] = ["Circuits", "Diagnostics"],
        ["Reading"] = ["Circuits", "Diagnostics", "Notation", "Kinds", "Alterations"],
        ["Solving"] = ["Circuits", "Diagnostics"],
        ["Studies"] = ["Circuits", "Alterations", "Diagnostics", "Solving"],
        ["Sizing"] = ["Circuits", "Alterations", "Diagnostics", "Solving", "Studies"],
        ["Faults"] = ["Circuits", "Diagnostics", "Solving", "Sizing", "Studies"],
        ["Checks"] = ["Circuits", "Alterations", "Diagnostics", "Solving", "Sizing", "Studies"],
        ["Proposals"] = ["Circuits", "Diagnostics", "Notation", "Kinds", "Alterations", "Reading", "Solving", "Studies", "Sizing", "Checks"],
        ["Wording"] = ["Circuits", "Alterations", "Studies"],
        ["Orders"] = ["Circuits", "Alterations", "Diagnostics", "Notation", "Solving", "Studies", "Sizing", "Wording"],
        ["Diagnoses"] = ["Circuits", "Alterations", "Diagnostics", "Notation", "Kinds", "Solving", "Studies", "Sizing", "Wording"],
        ["CheckSheets"] = ["Circuits", "Alterations", "Diagnostics", "Solving", "Studies", "Wording", "Diagnoses"],
        ["Symbols"] = [],
        ["Layouts"] = ["Symbols"],
        ["Drawings"] = ["Circuits", "Alterations", "Studies", "Symbols", "Layouts", "Wording"],
        ["Outputs"] = ["Circuits", "Alterations", "Diagnostics", "Solving", "Studies", "Sizing", "Faults", "Wording", "Orders", "Diagnoses", "CheckSheets", "Proposals", "Symbols", "Drawings"],
        ["Packs"] = ["Circuits", "Alterations", "Diagnostics", "Solving", "Studies", "Sizing", "Wording", "Symbols", "Drawings", "Outputs", "Orders", "CheckSheets", "Diagnoses"],
    };

    public static TheoryData<string> Rooms => [.. Knows.Keys];

    [Theory]
    [MemberData(nameof(Rooms))]
    public void A_room_knows_only_the_rooms_below(string room)
    {
        string[] strangers = [.. Knows.Keys.Where(r => r != room && !Knows[room].Contains(r)).Select(r => "Hotside." + r)];
        var result = Types.InAssembly(typeof(Job).Assembly)
            .That().ResideInNamespaceMatching(@"^Hotside\." + room + @"(\.|$)")
            .ShouldNot().HaveDependencyOnAny(strangers).GetResult();
        Assert.True(result.IsSuccessful, $"{room} knows a room it should not: {string.Join(", ", result.FailingTypeNames ?? [])}");
    }

    [Fact]
    public void Every_folder_is_a_room_of_the_house() =>
        Assert.Equal(
            Knows.Keys.Order(StringComparer.Ordinal),
            Directory.GetDirectories(Repository.Path("src", "Hotside")).Select(d => Path.GetFileName(d)).Where(d => d is not ("bin" or "obj")).Order(StringComparer.Ordinal));

    [Fact]
    public void A_namespace_is_its_folder()
    {
        foreach (string file in Sources())
        {
            string folder = Path.GetDirectoryName(Path.GetRelativePath(Repository.Path("src"), file))!.Replace(Path.DirectorySeparatorChar, '.');
            string space = NamespaceLine().Match(File.ReadAllText(file)).Groups[1].Value;
            // What the door hands out stands in the root, so that everyday use needs one using.
            Assert.True(space == folder || (space == "Hotside" && DoorFiles.Contains(Path.GetFileName(file))), $"{file} is in {space}");
        }
    }

    [Fact]
    public void Only_circuits_ask_which_pole_is_grounded()
    {
        string[] others = [.. Sources().Where(f => !Path.GetRelativePath(Repository.Path("src", "Hotside"), f).StartsWith("Circuits", StringComparison.Ordinal) && PolarityAsked().IsMatch(File.ReadAllText(f)))];
        Assert.Empty(others);
    }

    [Fact]
    public void No_file_has_outgrown_its_noun()
    {
        // Kind.cs is a list that a test writes from the data.
        var lengths = Sources().Where(f => Path.GetFileName(f) != "Kind.cs").Select(f => (File: f, Lines: File.ReadLines(f).Count())).OrderBy(f => f.Lines).ToArray();
        Assert.True(lengths[^1].Lines <= 400, $"{lengths[^1].File} has {lengths[^1].Lines} lines");
        Assert.True(lengths[lengths.Length / 2].Lines <= 100, "the median file is over 100 lines");
    }

    // Public outputs and views live in the root namespace though their files stand in their rooms.
    private static readonly string[] DoorFiles = ["DrawingSvg.cs", "DrawingPng.cs", "DrawingPdf.cs", "WireList.cs", "WireRow.cs", "DrawnBox.cs", "Drawing.cs", "DrawingOptions.cs", "LoadText.cs", "KindSheet.cs", "Explanation.cs", "SettingTable.cs", "BudgetTable.cs", "SizeTable.cs", "FaultTable.cs", "OrderTable.cs", "CheckSheetTable.cs", "DiagnosisReport.cs", "ProposalFile.cs", "PackOptions.cs", "PackSheet.cs", "WorkPack.cs"];

    private static IEnumerable<string> Sources() =>
        Directory.EnumerateFiles(Repository.Path("src", "Hotside"), "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}")).Order(StringComparer.Ordinal);

    [GeneratedRegex(@"^namespace ([\w.]+);", RegexOptions.Multiline)]
    private static partial Regex NamespaceLine();

    [GeneratedRegex(@"Ground\.(Positive|Negative)\b")]
    private static partial Regex PolarityAsked();
}
