using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Solving;
using Hotside.Studies;

namespace Hotside.Diagnoses;

/// <summary>Something that can be seen, heard or felt to work: a lamp, a motor, a horn, a gauge, the click of a relay.</summary>
/// <param name="Name">Its name as a load; a relay's id.</param>
/// <param name="Element">The consumer; of a relay its winding.</param>
/// <param name="Variable">Of a relay the index of what it moves; −1 for all else.</param>
internal sealed record Watched(string Name, ModelElement Element, int Variable)
{
    /// <summary>Whether it can be seen, heard or felt; what is known by its effect alone, as an ignition coil, may be complained of and is never asked for.</summary>
    public bool IsSeen { get; init; } = true;

    /// <summary>What can be watched in a circuit, in its order, then what is known by its effect alone.</summary>
    public static ImmutableArray<Watched> Of(CircuitModel model)
    {
        var all = ImmutableArray.CreateBuilder<Watched>();
        foreach (var element in model.Elements)
        {
            var (part, kind) = (element.Part, element.Element.Type);
            if (element.Element is { IsConsumer: true, IsInternal: false } && kind != ElementType.Coil && element.Regulator < 0)
                // A reducer gives its volts in silence.
                all.Add(new(LoadStudy.NameOf(part, element.Element), element, -1) { IsSeen = kind != ElementType.Electronics || part.Kind.Elements.All(e => e.Type != ElementType.Dropper) });
            else if (kind == ElementType.Coil && part.Kind.Actuators.FirstOrDefault(a => a.Pulls.Any(p => p.Coils.Contains(element.Element.Name))) is { } moved && all.All(w => w.Name != part.Id))
                all.Add(new(part.Id, element, model.IndexOf(part, moved.Name)));
        }
        foreach (var element in model.Elements.Where(e => e.Element is { IsConsumer: true, IsInternal: false, Type: ElementType.Coil } && e.Regulator < 0 && all.All(w => w.Element.Part.Id != e.Part.Id)).ToArray())
            all.Add(new(LoadStudy.NameOf(element.Part, element.Element), element, -1) { IsSeen = false });
        return all.ToImmutable();
    }
}

/// <summary>How something that works looks or sounds.</summary>
internal enum LookState
{
    /// <summary>Nothing.</summary>
    Off,

    /// <summary>Less than as it should be; a glow where it should be off.</summary>
    Dim,

    /// <summary>As it is when all is well; on though it should be off.</summary>
    Right,

    /// <summary>More than it should.</summary>
    Strong,
}
