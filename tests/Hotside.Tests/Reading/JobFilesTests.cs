using Hotside.Diagnostics;
using Hotside.Tests.Support;

namespace Hotside.Tests.Reading;

/// <summary>Whole job files of invented vehicles, boats and tractors.</summary>
public class JobFilesTests
{
    public static TheoryData<string> Files => [.. JobFiles.All];

    [Theory]
    [MemberData(nameof(Files))]
    public void A_job_file_is_read_without_error(string file)
    {
        var reading = JobFiles.Read(file);
        Assert.Empty(reading.Diagnostics.Where(d => d.Severity >= Severity.Error).Select(d => d.ToString()));
        Assert.NotNull(reading.Alteration);
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void A_job_file_says_nothing_doubtful(string file) =>
        Assert.Empty(JobFiles.Read(file).Diagnostics.Where(d => d.Severity > Severity.Note).Select(d => d.ToString()));
}
