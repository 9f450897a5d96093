using System.Collections.Immutable;
using Hotside.Drawings;
using Hotside.Packs;
using Hotside.Packs.Papers;

namespace Hotside;

/// <summary>How a work pack is made.</summary>
public sealed record PackOptions
{
    /// <summary>The paper of its written sheets, <see cref="Page.A4"/> or <see cref="Page.Letter"/>; A4 by default.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is neither.</exception>
    public Page Page
    {
        get;
        init => field = value is Page.A4 or Page.Letter ? value : throw new ArgumentOutOfRangeException(nameof(value), value, "A work pack is made for A4 or Letter.");
    } = Page.A4;

    /// <summary>
    /// The paper of its schematics; by default the smallest of A4 and A3, or of Letter and Tabloid, that holds both views on one sheet, and else as many of the larger as it takes.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">It is none of the papers, or one that depends on the drawing.</exception>
    public Page? Schematics
    {
        get;
        init => field = value is null || (Enum.IsDefined(value.Value) && value is not (Page.Smallest or Page.Fit or Page.Bare)) ? value : throw new ArgumentOutOfRangeException(nameof(value), value, "Schematics of a pack have a paper of a fixed size.");
    }

    /// <summary>How large it is lettered; normal by default.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is none of the sizes.</exception>
    public TextSize Text { get; init => field = Enum.IsDefined(value) ? value : throw new ArgumentOutOfRangeException(nameof(value), value, "There is no such size."); }

    /// <summary>Whose words the texts use; American by default.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is none of the two.</exception>
    public Words Words { get; init => field = Enum.IsDefined(value) ? value : throw new ArgumentOutOfRangeException(nameof(value), value, "There are no such words."); }

    /// <summary>The colours; black on white by default, for a printer and a copier without colours.</summary>
    public Theme Theme { get; init => field = value ?? throw new ArgumentNullException(nameof(value), "Leave Theme out for black on white."); } = Theme.Mono;

    /// <summary>
    /// The pages that are made, by their names in <see cref="WorkPack.AllPages"/>; all of them when there are none. A page of which there is nothing to say is left out anyway.
    /// </summary>
    /// <exception cref="ArgumentException">There is no such page; the message names the nearest.</exception>
    public ImmutableArray<string> Only
    {
        get;
        init => field = value.IsDefault ? [] : value.FirstOrDefault(k => !PageList.Keys.Contains(k)) is not { } wrong ? value
            : throw new ArgumentException($"There is no page \"{wrong}\"" + Circuits.NearestName.Suggestion(wrong, PageList.Keys), nameof(value));
    } = [];

    /// <summary>A sentence for the fault page that says how one goes on with a diagnosis, such as the line to type; none by default.</summary>
    /// <exception cref="ArgumentNullException">It is <see langword="null"/>.</exception>
    public string GoOn { get; init => field = value ?? throw new ArgumentNullException(nameof(value), "Leave GoOn out for none."); } = "";

    /// <summary>The letters of that size.</summary>
    internal PackLettering Lettering => Text == TextSize.Large ? PackLettering.Large : PackLettering.Normal;

    /// <summary>The written sheets.</summary>
    internal PackPaper Paper => Page == Page.Letter ? PackPaper.Letter : PackPaper.A4;

    /// <summary>Whether a page is wanted.</summary>
    internal bool Asks(string key) => Only.IsEmpty || Only.Contains(key);
}
