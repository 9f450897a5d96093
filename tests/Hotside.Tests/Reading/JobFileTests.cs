namespace Hotside.Tests.Reading;

/// <summary>What is told of a path that is wrong: which file was probably meant.</summary>
public sealed class JobFileTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("hotside").FullName;

    public JobFileTests() => File.WriteAllText(In("van-horn.yaml"), "hotside: 1\n");

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Theory]
    [InlineData("van-hron.yaml")]
    [InlineData("van-horn.yml")]
    public void A_file_that_is_not_there_is_told_with_the_nearest_in_its_folder(string name)
    {
        var told = Assert.Throws<FileNotFoundException>(() => Job.ReadFile(In(name)));
        Assert.Equal($"There is no file \"{In(name)}\"; did you mean \"van-horn.yaml\"?", told.Message);
        Assert.Equal(In(name), told.FileName);
    }

    [Fact]
    public void A_file_without_a_neighbour_of_nearly_its_name_is_told_without_a_guess() =>
        Assert.Equal($"There is no file \"{In("tractor.yaml")}\".", Assert.Throws<FileNotFoundException>(() => Job.ReadFile(In("tractor.yaml"))).Message);

    [Fact]
    public void A_folder_is_told_with_a_job_file_in_it() =>
        Assert.Equal($"\"{folder}\" is a folder; name the job file in it, such as \"{In("van-horn.yaml")}\".", Assert.Throws<IOException>(() => Job.ReadFile(folder)).Message);

    [Fact]
    public void A_folder_without_a_job_file_is_told_without_one()
    {
        string empty = Directory.CreateDirectory(In("empty")).FullName;
        Assert.Equal($"\"{empty}\" is a folder; name the job file in it.", Assert.Throws<IOException>(() => Job.ReadFile(empty)).Message);
    }

    [Fact]
    public void A_folder_that_is_not_there_is_told() =>
        Assert.Equal(
            $"There is no folder \"{In("vans")}\", and so no file \"{Path.Combine(In("vans"), "a.yaml")}\" in it.",
            Assert.Throws<DirectoryNotFoundException>(() => Job.ReadFile(Path.Combine(In("vans"), "a.yaml"))).Message);

    private string In(string name) => Path.Combine(folder, name);
}
