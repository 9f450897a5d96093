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
    /// <summary>What can be watched in a circuit, in its order.</summary>
    public static ImmutableArray<Watched> Of(CircuitModel model)
    {
        var all = ImmutableArray.CreateBuilder<Watched>();
        foreach (var element in model.Elements)
        {
            var (part, kind) = (element.Part, element.Element.Type);
            if (element.Element is { IsConsumer: true, IsInternal: false } && kind != ElementType.Coil && element.Regulator < 0)
                all.Add(new(LoadStudy.NameOf(part, element.Element), element, -1));
            else if (kind == ElementType.Coil && part.Kind.Actuators.FirstOrDefault(a => a.Pulls.Any(p => p.Coils.Contains(element.Element.Name))) is { } moved && all.All(w => w.Name != part.Id))
                all.Add(new(part.Id, element, model.IndexOf(part, moved.Name)));
        }
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
