using Hotside.Symbols.Shapes;

namespace Hotside.Symbols.Parts;

/// <summary>Contacts at rest, and what moves them.</summary>
internal static class Contact
{
    /// <summary>A contact that closes: hinge 1 M below the centre, the blade leans to the left and closes rightwards.</summary>
    public static void Make(SymbolSketch s, double x, double y, double up = 2, double down = 2)
    {
        s.Line(Pen.Medium, x, y - up, x, y - 1);
        s.Line(Pen.Medium, x, y + 1, x, y + down);
        s.Line(Pen.Heavy, x, y + 1, x - 1.1, y - 1.1);
    }

    /// <summary>A contact that opens: the blade lies against a hook.</summary>
    public static void Break(SymbolSketch s, double x, double y, double up = 2, double down = 2)
    {
        s.Path(Pen.Medium, (x, y - up), (x, y - 1), (x + 0.8, y - 1));
        s.Line(Pen.Medium, x, y + 1, x, y + down);
        s.Line(Pen.Heavy, x, y + 1, x + 0.6, y - 1.3);
    }

    /// <summary>What moves a contact, drawn to the left of its link.</summary>
    /// <param name="s">The sketch.</param>
    /// <param name="actuator">What it is.</param>
    /// <param name="x">The left end of the link.</param>
    /// <param name="y">Height of the link.</param>
    public static void Actuate(SymbolSketch s, Actuator actuator, double x, double y)
    {
        switch (actuator)
        {
            case Actuator.Push:
                s.Path(Pen.Medium, (x + 0.4, y - 0.7), (x, y - 0.7), (x, y + 0.7), (x + 0.4, y + 0.7));
                break;
            case Actuator.Toggle:
                s.Line(Pen.Medium, x, y - 0.7, x, y + 0.7);
                break;
            case Actuator.Rotary:
                s.Path(Pen.Medium, (x - 0.4, y - 0.7), (x, y - 0.7), (x, y + 0.7), (x + 0.4, y + 0.7));
                break;
            case Actuator.Pull:
                s.Path(Pen.Medium, (x - 0.4, y - 0.7), (x, y - 0.7), (x, y + 0.7), (x - 0.4, y + 0.7));
                break;
            case Actuator.Key:
                s.Circle(x, y, 0.5);
                s.Line(Pen.Medium, x + 0.5, y + 0.1, x + 0.5, y + 0.6);
                break;
            case Actuator.Pedal:
                s.Path(Pen.Medium, (x + 0.3, y - 0.8), (x - 0.3, y + 0.7), (x + 0.7, y + 0.7));
                break;
            case Actuator.Pressure:
                Boxed(s, "p", x, y);
                break;
            case Actuator.Heat:
                Boxed(s, "t", x, y);
                break;
            case Actuator.Door:
                s.Circle(x, y, 0.4);
                s.Line(Pen.Medium, x - 0.4, y - 0.8, x - 0.4, y + 0.8);
                break;
            case Actuator.Automatic:
                s.Rectangle(x - 0.5, y - 0.5, 1, 1);
                break;
        }
    }

    private static void Boxed(SymbolSketch s, string letter, double x, double y)
    {
        s.Rectangle(x - 0.5, y - 0.6, 1.2, 1.2);
        s.Letter(letter, x + 0.1, y + 0.25, s.Lettering.Small with { CapHeight = 7.2 });
    }
}
