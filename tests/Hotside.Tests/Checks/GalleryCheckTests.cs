using System.Globalization;
using System.Text;
using Hotside.Diagnostics;
using Hotside.Tests.Gallery;
using Hotside.Tests.Support;

namespace Hotside.Tests.Checks;

/// <summary>What the checks say of sound work: nothing grave, and no more than is true and of use.</summary>
public class GalleryCheckTests
{
    public static TheoryData<string> Cases => GalleryTests.Cases;

    [Theory]
    [MemberData(nameof(Cases))]
    public void Sound_work_gets_no_stop_and_no_error(string name) =>
        Assert.Empty(Read(name).Findings.Where(d => d.Severity >= Severity.Error).Select(d => d.ToString()));

    [Fact]
    public void What_the_gallery_is_told_is_approved()
    {
        var text = new StringBuilder();
        foreach (string name in Directory.GetDirectories(Repository.Path("gallery")).Where(d => File.Exists(Path.Combine(d, "job.yaml"))).Select(d => Path.GetFileName(d)).Order(StringComparer.Ordinal))
        {
            text.Append(name).Append('\n');
            foreach (var told in Read(name).Findings.Where(d => d.Code.StartsWith("HS33", StringComparison.Ordinal)))
                text.Append(CultureInfo.InvariantCulture, $"  {told.Severity.ToString().ToLowerInvariant()} {told.Code} [{string.Join(' ', told.Items)}]: {told.Message}\n     hint: {told.Hint}\n");
        }
        Approve.Text(text.ToString(), "tests", "Hotside.Tests", "Checks", "gallery.approved.txt");
    }

    private static Job Read(string name) => Job.ReadFile(Repository.Path("gallery", name, "job.yaml")).OrThrow();
}
