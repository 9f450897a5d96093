using System.Collections.Immutable;

namespace Hotside.Orders;

/// <summary>A rule by which one class of acts comes before another.</summary>
/// <param name="Id">Its name, by which a job may override it.</param>
/// <param name="Before">The acts that come first.</param>
/// <param name="After">The acts that wait.</param>
/// <param name="Same">What both must have in common.</param>
/// <param name="IsHard">Whether it is never bent.</param>
/// <param name="IsTold">Whether its reason is printed.</param>
/// <param name="Reason">Why, as a clause behind "because".</param>
/// <param name="Source">Where it is from.</param>
internal sealed record OrderRule(string Id, ActClass Before, ActClass After, Common Same, bool IsHard, bool IsTold, string Reason, string Source);

/// <summary>What two acts of a rule have in common.</summary>
internal enum Common
{
    /// <summary>Nothing: the rule holds for all of both classes.</summary>
    None,

    /// <summary>The part.</summary>
    Part,

    /// <summary>The wire.</summary>
    Wire,

    /// <summary>The fuse.</summary>
    Way,

    /// <summary>The first act's part lies between the feed and the second act's end.</summary>
    Behind,

    /// <summary>The first act's wire ends on the second act's part.</summary>
    Joined,

    /// <summary>The second act's part is bolted to the first act's.</summary>
    Holder,

    /// <summary>The first act's part is bolted to the second act's.</summary>
    Held,

    /// <summary>The terminal, as it is named after, of two wires.</summary>
    Terminal,

    /// <summary>The first act's end has no terminal on the part that the second act brings.</summary>
    Lost,
}

/// <summary>A class of acts: sets of words, of any of which all must be borne; one behind a minus must not.</summary>
/// <param name="Any">The sets.</param>
internal sealed record ActClass(ImmutableArray<ImmutableArray<string>> Any)
{
    /// <summary>Reads <c>swap lamp | fit fuse</c>.</summary>
    public static ActClass Parse(string text) =>
        new([.. text.Split('|').Select(t => t.Split(' ', StringSplitOptions.RemoveEmptyEntries).ToImmutableArray())]);

    /// <summary>Whether an act is of the class.</summary>
    public bool Has(HandAct act)
    {
        foreach (var words in Any)
            if (words.All(w => w[0] == '-' ? !act.Words.Contains(w[1..]) : act.Words.Contains(w)))
                return true;
        return false;
    }
}
