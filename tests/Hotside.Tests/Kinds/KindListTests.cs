using System.Reflection;
using System.Text;
using Hotside.Circuits;
using Hotside.Kinds;
using Hotside.Tests.Support;

namespace Hotside.Tests.Kinds;

/// <summary>The list of the library's kinds by name is written from the data.</summary>
public class KindListTests
{
    [Fact]
    public void The_list_of_kinds_agrees_with_the_data() => Approve.Text(List(), "src", "Hotside", "Kinds", "Kind.cs");

    [Fact]
    public void Every_property_gives_the_kind_it_is_named_after()
    {
        foreach (var property in typeof(Kind).GetProperties(BindingFlags.Public | BindingFlags.Static))
            Assert.Equal(property.Name, NameOf(((PartKind)property.GetValue(null)!).Id));
        Assert.Equal(Catalogue.Standard.Kinds.Length, typeof(Kind).GetProperties(BindingFlags.Public | BindingFlags.Static).Length);
    }

    private static string List()
    {
        var text = new StringBuilder("""
            using Hotside.Circuits;

            namespace Hotside.Kinds;

            // Written from Kinds/data by the test KindListTests with HOTSIDE_ACCEPT=1; change the data, not this file.

            /// <summary>The part kinds that come with the library, by name.</summary>
            public static class Kind
            {

            """.ReplaceLineEndings("\n"));
        string between = "";
        foreach (var kind in Catalogue.Standard.Kinds)
        {
            text.Append(between);
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"    /// <summary>{Escaped(char.ToUpperInvariant(kind.Summary[0]) + kind.Summary[1..])}.</summary>\n");
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"    public static PartKind {NameOf(kind.Id)} => Catalogue.Standard.Find(\"{kind.Id}\")!;\n");
            between = "\n";
        }
        return text.Append("}\n").ToString();
    }

    private static string NameOf(string id) => string.Concat(id.Split('-').Select(w => char.ToUpperInvariant(w[0]) + w[1..]));

    private static string Escaped(string text) =>
        text.Replace("&", "&amp;", StringComparison.Ordinal).Replace("<", "&lt;", StringComparison.Ordinal).Replace(">", "&gt;", StringComparison.Ordinal);
}
