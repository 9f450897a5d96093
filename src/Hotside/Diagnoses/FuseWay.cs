using Hotside.Circuits;

namespace Hotside.Diagnoses;

/// <summary>A fuse, or one way of a block of several.</summary>
internal static class FuseWay
{
    /// <summary>Whether a hand takes it out of its way: fuses, and breakers that are parts by themselves; not the one within a switch.</summary>
    public static bool IsPulled(Part part, Element element) =>
        element.Type == ElementType.Fuse || (element.Type == ElementType.Breaker && part.Kind.Elements.All(IsFuse));

    /// <summary>Its name: the part's id, with the way where the part has several: <c>F1</c>, <c>F1.fuse3</c>.</summary>
    public static string NameOf(Part part, Element element) => part.Kind.Elements.Count(IsFuse) == 1 ? part.Id : part.Id + "." + element.Name;

    private static bool IsFuse(Element element) => element.Type is ElementType.Fuse or ElementType.Breaker;
}
