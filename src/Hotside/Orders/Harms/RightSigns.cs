using Hotside.Circuits;
using Hotside.Solving;

namespace Hotside.Orders.Harms;

/// <summary>Which way round volts rightly lie across each element that minds: as before for what was there and stays, as after for what is new.</summary>
internal sealed class RightSigns
{
    // Below this nothing is destroyed, and a meter's zero is not a sign.
    private const double Least = 1;

    private readonly Dictionary<(string Part, string Element), double> before = [], after = [];

    /// <summary>Whether an element minds which way round it is fed.</summary>
    public static bool Minds(Part part, Element element) =>
        !part.IsStandingSource && part.Kind.Polarity is "destroyed" or "reverses" && !element.Traits.HasFlag(ElementTraits.Bridge)
        && (element.IsConsumer || element.Type == ElementType.Shunt || (element.IsSource && element.When is not null));

    /// <summary>Notes the volts of a point of the before circuit, or of the after circuit.</summary>
    public void Note(bool isAfter, ModelElement element, double volts)
    {
        var signs = isAfter ? after : before;
        var key = (element.Part.Id, element.Element.Name);
        if (Math.Abs(volts) > Math.Abs(signs.GetValueOrDefault(key)) && Math.Abs(volts) >= Least) signs[key] = volts;
    }

    /// <summary>Whether volts lie the wrong way round across an element.</summary>
    /// <param name="isNew">Whether the part is as it is after and was not before.</param>
    /// <param name="element">The element.</param>
    /// <param name="volts">The volts from its first end to its second.</param>
    public bool AreWrong(bool isNew, ModelElement element, double volts)
    {
        if (Math.Abs(volts) < Least) return false;
        var key = (element.Part.Id, element.Element.Name);
        double right = isNew ? after.GetValueOrDefault(key) : before.TryGetValue(key, out double was) ? was : after.GetValueOrDefault(key);
        // What is fed in neither goes by its marks: the first end is plus.
        return right == 0 ? element.Part.Kind.Polarity == "destroyed" && volts < 0 : Math.Sign(right) != Math.Sign(volts);
    }
}
