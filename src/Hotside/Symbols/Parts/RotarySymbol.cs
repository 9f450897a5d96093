using System.Collections.Immutable;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Symbols.Parts;

/// <summary>A switch whose wiper goes from ring to ring; at rest it stands on the first, which may lead nowhere.</summary>
internal static class RotarySymbol
{
    private const int Height = 7;
    private const double Hinge = 1.6, Rings = 3.6, Ring = 0.24;

    public static Symbol? Draw(TerminalSet terminals, SymbolOptions options)
    {
        SymbolTerminal? common = terminals.TakeAt(SymbolSide.Top) ?? terminals.TakeNext();
        ImmutableArray<SymbolTerminal> ends = terminals.Left;
        if (common is null || ends.Length < 2 || options.Contacts.Any(c => c.From != common.Name) || (!options.Contacts.IsEmpty && options.Contacts.Length != ends.Length))
            return null;
        while (terminals.Count > 0)
            terminals.TakeNext();
        bool free = options.Contacts.All(c => !c.ClosedAtRest);
        string Position(SymbolTerminal end) => options.Contacts.FirstOrDefault(c => c.To == end.Name)?.ClosedIn ?? "";
        double widest = Math.Max(TextMeasure.Widest(ends.Select(e => e.Label), options.Lettering.Small), TextMeasure.Widest(ends.Select(Position), options.Lettering.SmallBold));
        int pitch = Math.Max(2, (int)Math.Ceiling((widest / Symbol.Module) + 1)), first = 3 + (free ? 2 : 0), middle = first + ((ends.Length - 1) * pitch / 2);
        var s = new SymbolSketch(first + (ends.Length * pitch), Height, options.Lettering);
        s.Line(Pen.Medium, middle, 0, middle, Hinge);
        double rest = free ? first - 2 : first;
        s.Line(Pen.Heavy, middle, Hinge, rest + 0.15, Rings - 0.25);
        double link = (Hinge + Rings) / 2;
        s.Line(Pen.Link, 0.5, link, (middle + rest) / 2, link);
        Contact.Actuate(s, Actuator.Rotary, 0.5, link);
        if (free)
            s.Circle(rest, Rings, Ring);
        for (int i = 0; i < ends.Length; i++)
        {
            int x = first + (i * pitch);
            s.Line(Pen.Medium, x, Rings + Ring, x, Height);
            s.Circle(x, Rings, Ring);
            s.Letter(Position(ends[i]), x + 0.4, Rings + 1.3, s.Lettering.SmallBold, Anchor.Start);
            s.Mark(ends[i].Label, x + 0.4, Height - 0.4);
            s.Pin(ends[i], x, Height, SymbolSide.Bottom);
        }

        s.Mark(common.Label, middle + 0.4, 0.3 + (s.Lettering.Small.CapHeight / Symbol.Module));
        s.Pin(common, middle, 0, SymbolSide.Top);
        return s.Done("rotary");
    }
}
