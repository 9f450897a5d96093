using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;
using Hotside.Wording;

namespace Hotside.Drawings.Charts;

/// <summary>One kind by itself: its figure at the left, at the right what it is and what each terminal means.</summary>
internal static class KindCard
{
    private const double Margin = 24, Gap = 36, TextWidth = 420, LeastHeight = 120;

    public static Scene Of(PartKind kind, Words words, Lettering lettering)
    {
        var figure = KindFigure.Of(kind, lettering);
        var text = Text(kind, Vocabulary.Of(words), lettering);
        double height = Math.Max(LeastHeight, Math.Max(figure.Height, text.Height) + (2 * Margin)), x = Margin + figure.Width + Gap;
        ImmutableArray<SceneGroup> groups =
        [
            new(Layer.Parts, figure.At(Margin, Math.Round((height - figure.Height) / 2))) { Id = "kind-" + kind.Id, Classes = ["kind"], Data = [("kind", kind.Id)], Title = kind.Summary },
            new(Layer.Notes, text.At(x, Math.Round((height - text.Height) / 2))) { Classes = ["notes"] },
        ];
        return new(Math.Ceiling(x + text.Width + Margin), Math.Ceiling(height), kind.Id, $"{kind.Summary}. Terminals: {string.Join("; ", kind.Terminals.Select(Terminal))}.", groups);
    }

    private static Piece Text(PartKind kind, Vocabulary words, Lettering lettering)
    {
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        double y = 0;
        void Add(string text, TextStyle style, ColourRole colour)
        {
            foreach (string line in TextLines.Break(text, style, TextWidth))
                shapes.Add(TextShape.Of(line, style, 0, y += style.Pitch, colour: colour));
        }

        Add(kind.Id, lettering.Title, ColourRole.Ink);
        Add($"{words.Noun(kind)}: {kind.Summary}", lettering.Body, ColourRole.Quiet);
        y += 6;
        foreach (var terminal in kind.Terminals) Add(Terminal(terminal), lettering.Body, ColourRole.Ink);
        if (kind.Case == CaseKind.Grounded) Add("case: stands on the chassis unless said otherwise", lettering.Body, ColourRole.Ink);
        Box box = Box.Around(shapes.Select(s => s.Bounds));
        return new(box.Right, box.Bottom, shapes.ToImmutable());
    }

    private static string Terminal(KindTerminal terminal)
    {
        string meaning = terminal.Meaning.Length > 0 ? ": " + terminal.Meaning : "";
        return terminal.Name + meaning + string.Concat(terminal.Aliases.Concat(terminal.IsCase ? ["case"] : []).Select(a => ", also " + a));
    }
}
