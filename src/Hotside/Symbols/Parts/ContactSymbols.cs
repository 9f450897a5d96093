using Hotside.Symbols.Shapes;

namespace Hotside.Symbols.Parts;

/// <summary>Switches with one contact, named by what moves it.</summary>
internal static class ContactSymbols
{
    /// <summary>The symbols of this family.</summary>
    public static readonly (string, Func<TerminalSet, SymbolOptions, Symbol?>)[] All =
    [
        Make("contact-make", Actuator.None),
        Break("contact-break", Actuator.None),
        Make("push-button", Actuator.Push),
        Break("push-button-break", Actuator.Push),
        Make("switch-toggle", Actuator.Toggle),
        Make("switch-pull", Actuator.Pull),
        Make("switch-rotary", Actuator.Rotary),
        Make("switch-pedal", Actuator.Pedal),
        Make("switch-door", Actuator.Door),
        Make("switch-pressure", Actuator.Pressure),
        Break("switch-pressure-break", Actuator.Pressure),
        Make("switch-heat", Actuator.Heat),
        Make("switch-automatic", Actuator.Automatic),
        Break("switch-automatic-break", Actuator.Automatic),
        ("disconnect", Disconnect),
    ];

    /// <summary>One contact that closes.</summary>
    public static Symbol? Single(string name, Actuator actuator, TerminalSet terminals, SymbolOptions options) =>
        TwoPinFrame.Draw(name, terminals, options, 3, 1, (s, x, y, _) =>
        {
            Contact.Make(s, x, y);
            Moved(s, actuator, x, y, x - 0.6);
        });

    private static (string, Func<TerminalSet, SymbolOptions, Symbol?>) Make(string name, Actuator actuator) =>
        (name, (t, o) => Single(name, actuator, t, o));

    private static (string, Func<TerminalSet, SymbolOptions, Symbol?>) Break(string name, Actuator actuator) =>
        (name, (t, o) => TwoPinFrame.Draw(name, t, o, 3, 1, (s, x, y, _) =>
        {
            Contact.Break(s, x, y);
            Moved(s, actuator, x, y, x + 0.25);
        }));

    private static Symbol? Disconnect(TerminalSet terminals, SymbolOptions options) => TwoPinFrame.Draw("disconnect", terminals, options, 3, 1, (s, x, y, _) =>
    {
        Contact.Make(s, x, y);
        s.Line(Pen.Medium, x - 0.5, y - 1, x + 0.5, y - 1);
        Moved(s, Actuator.Rotary, x, y, x - 0.6);
    });

    private static void Moved(SymbolSketch s, Actuator actuator, double x, double y, double blade)
    {
        if (actuator == Actuator.None)
            return;
        s.Line(Pen.Link, x - 2.3, y, blade, y);
        Contact.Actuate(s, actuator, x - 2.3, y);
    }
}
