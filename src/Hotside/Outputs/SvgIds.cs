using System.Text;
using Hotside.Circuits;

namespace Hotside.Outputs;

/// <summary>Ids of one picture: valid, unique, begun by the picture's own name.</summary>
internal sealed class SvgIds(string prefix)
{
    private readonly HashSet<string> _used = [];

    /// <summary>An id for a name; a second one of the same name gets a number.</summary>
    public string Of(string name)
    {
        string id = Valid(prefix) + "-" + Valid(name), free = id;
        for (int i = 2; !_used.Add(free); i++)
            free = id + "-" + Numbers.Whole(i);
        return free;
    }

    /// <summary>A name with letters, digits, point and hyphen only; any other character is written as its number.</summary>
    public static string Valid(string name)
    {
        var valid = new StringBuilder(name.Length);
        foreach (char c in name.Length > 200 ? name[..200] : name)
        {
            if (char.IsAsciiLetterOrDigit(c) || c is '-' or '.')
                valid.Append(c);
            else if (c == ' ')
                valid.Append('-');
            else
                valid.Append('_').Append(((int)c).ToString("x", System.Globalization.CultureInfo.InvariantCulture)).Append('_');
        }

        return valid.Length == 0 ? "_" : valid.ToString();
    }
}
