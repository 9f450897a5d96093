using Hotside.Tests.Support;
using PublicApiGenerator;

namespace Hotside.Tests.Architecture;

public class PublicApiTests
{
    [Fact]
    public void The_public_surface_is_the_approved_one() =>
        Approve.Text(
            typeof(Job).Assembly.GeneratePublicApi(new() { IncludeAssemblyAttributes = false }).Replace("\r\n", "\n", StringComparison.Ordinal) + "\n",
            "tests", "Hotside.Tests", "Architecture", "public-api.approved.txt");
}
