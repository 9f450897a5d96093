using Hotside.Symbols.Texts;

namespace Hotside.Packs.Papers;

/// <summary>The letters of a pack. Capitals are never lower than 1.8 mm.</summary>
/// <param name="Factor">Size against the normal one.</param>
internal sealed record PackLettering(double Factor)
{
    /// <summary>For a bench.</summary>
    public static readonly PackLettering Normal = new(1);

    /// <summary>For reading at arm's length.</summary>
    public static readonly PackLettering Large = new(1.3);

    /// <summary>Capitals of 1.8 mm: foot, notes, names of fields.</summary>
    public TextStyle Fine => Of("fine", 7.2, false, 12.6);

    /// <summary>The same in bold: heads of columns.</summary>
    public TextStyle FineBold => Of("fine-bold", 7.2, true, 12.6);

    /// <summary>2.1 mm: cells of tables.</summary>
    public TextStyle Cell => Of("cell", 8.4, false, 14);

    /// <summary>The same in bold.</summary>
    public TextStyle CellBold => Of("cell-bold", 8.4, true, 14);

    /// <summary>2.4 mm: sentences.</summary>
    public TextStyle Text => Of("text", 9.6, false, 17);

    /// <summary>The same in bold.</summary>
    public TextStyle TextBold => Of("text-bold", 9.6, true, 17);

    /// <summary>2.8 mm: headings within a page.</summary>
    public TextStyle Heading => Of("heading", 11.2, true, 20);

    /// <summary>4 mm: the name of a page.</summary>
    public TextStyle Title => Of("title", 16, true, 26);

    private TextStyle Of(string name, double capitals, bool bold, double pitch) => new("pack-" + name, capitals * Factor, bold, pitch * Factor);
}
