namespace Hotside.Drawings;

/// <summary>Order of painting.</summary>
internal enum Layer
{
    /// <summary>Frame and furniture of the sheet.</summary>
    Frame,

    /// <summary>Rails, outlines of assemblies, divider.</summary>
    Boxes,

    /// <summary>Conductors.</summary>
    Wires,

    /// <summary>Parts.</summary>
    Parts,

    /// <summary>Joints.</summary>
    Dots,

    /// <summary>Triangles, labels, flags.</summary>
    Marks,

    /// <summary>Headline, title block, lists.</summary>
    Notes,
}
