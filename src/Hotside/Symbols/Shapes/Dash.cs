namespace Hotside.Symbols.Shapes;

/// <summary>A dash pattern in units: on, off and perhaps a second on and off. The default is a solid line.</summary>
internal readonly record struct Dash(double On, double Off, double On2 = 0, double Off2 = 0)
{
    /// <summary>Mechanical link between a contact and what moves it.</summary>
    public static readonly Dash Link = new(4, 3);

    /// <summary>Enclosure of a part.</summary>
    public static readonly Dash Enclosure = new(9, 3, 1.5, 3);

    /// <summary>Symbol of a part that goes.</summary>
    public static readonly Dash Going = new(4.5, 2.2);

    /// <summary>Fine dots: divider, badge of a load in series.</summary>
    public static readonly Dash Dots = new(1, 3);

    /// <summary>Whether the line has no gaps.</summary>
    public bool IsSolid => On == 0;

    /// <summary>The pattern stretched or pressed so that a line of a length begins and ends with a dash; solid where the line is too short for two.</summary>
    public Dash Fitted(double length)
    {
        int gaps = (int)Math.Round((length - On) / (On + Off), MidpointRounding.AwayFromZero);
        if (IsSolid || gaps < 1)
            return default;
        double scale = length / (((gaps + 1) * On) + (gaps * Off));
        return new(On * scale, Off * scale);
    }
}
