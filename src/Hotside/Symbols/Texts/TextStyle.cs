namespace Hotside.Symbols.Texts;

/// <summary>How a text is lettered; its colour is a role of the shape.</summary>
/// <param name="Name">Name of the style, part of its class in the picture.</param>
/// <param name="CapHeight">Height of a capital in units.</param>
/// <param name="Bold">Bold or regular.</param>
/// <param name="Pitch">Distance of baselines in units.</param>
/// <param name="Spacing">Extra space after each character in units.</param>
internal sealed record TextStyle(string Name, double CapHeight, bool Bold, double Pitch, double Spacing = 0)
{
    /// <summary>Font size in units.</summary>
    public double Size => CapHeight * 1000 / FontFace.CapHeight;

    /// <summary>How far a letter such as g reaches below the baseline, in units.</summary>
    public double Descent => Size * 0.21;

    /// <summary>The face.</summary>
    public FontFace Face => Bold ? FontFace.Bold : FontFace.Regular;
}
