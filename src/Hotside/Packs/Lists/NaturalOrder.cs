namespace Hotside.Packs.Lists;

/// <summary>Orders ids as a person would look for them: w2 before w10.</summary>
internal sealed class NaturalOrder : IComparer<string>
{
    public static readonly NaturalOrder Instance = new();

    /// <inheritdoc/>
    public int Compare(string? x, string? y)
    {
        ReadOnlySpan<char> a = x, b = y;
        while (a.Length > 0 && b.Length > 0)
        {
            int digitsA = Digits(a), digitsB = Digits(b);
            if (digitsA > 0 && digitsB > 0)
            {
                ReadOnlySpan<char> numberA = a[..digitsA].TrimStart('0'), numberB = b[..digitsB].TrimStart('0');
                int order = numberA.Length != numberB.Length ? numberA.Length - numberB.Length : numberA.SequenceCompareTo(numberB);
                if (order != 0) return order;
                a = a[digitsA..];
                b = b[digitsB..];
            }
            else if (a[0] != b[0]) return a[0] - b[0];
            else
            {
                a = a[1..];
                b = b[1..];
            }
        }
        return a.Length != b.Length ? a.Length - b.Length : string.CompareOrdinal(x, y);
    }

    private static int Digits(ReadOnlySpan<char> text)
    {
        int digits = 0;
        while (digits < text.Length && char.IsAsciiDigit(text[digits])) digits++;
        return digits;
    }
}
