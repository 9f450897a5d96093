using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;
using Hotside.Wording;

namespace Hotside.Drawings.Charts;

/// <summary>A kind as the chart shows it: its figure, and below it the id and what it is called.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Figure">Its symbol with terminals.</param>
/// <param name="Columns">How many columns of the chart it takes.</param>
/// <param name="Id">Its id, in lines.</param>
/// <param name="Noun">What it is called, in lines; none where the id says so.</param>
internal sealed record KindCell(PartKind Kind, Piece Figure, int Columns, ImmutableArray<string> Id, ImmutableArray<string> Noun)
{
    /// <summary>Width of a column in units.</summary>
    public const double Column = 152;

    private const double Margin = 8, Below = 8;

    /// <summary>Height of the words in units.</summary>
    public double CaptionHeight(Lettering lettering) => Below + (Id.Length * lettering.BodyBold.Pitch) + (Noun.Length * lettering.Small.Pitch) + lettering.Small.Descent;

    /// <summary>The cell of a kind.</summary>
    public static KindCell Of(PartKind kind, Vocabulary words, Lettering lettering)
    {
        var figure = KindFigure.Of(kind, lettering);
        int columns = Math.Max(1, (int)Math.Ceiling((figure.Width + (2 * Margin)) / Column));
        double room = (columns * Column) - (2 * Margin);
        string noun = words.Noun(kind);
        ImmutableArray<string> called = noun == kind.Id.Replace('-', ' ') ? [] : TextLines.Break(noun, lettering.Small, room, 2);
        if (kind.Ways is { } ways) called = called.Add($"{Numbers.Whole(ways.Least)} to {Numbers.Whole(ways.Most)} ways");
        return new(kind, figure, columns, TextLines.Break(kind.Id, lettering.BodyBold, room, 2), called);
    }

    /// <summary>The cell in its place.</summary>
    /// <param name="x">Its left edge.</param>
    /// <param name="y">The top of the room for the figure.</param>
    /// <param name="room">The height of that room.</param>
    /// <param name="lettering">Lettering.</param>
    public SceneGroup At(double x, double y, double room, Lettering lettering)
    {
        double middle = x + (Columns * Column / 2), line = y + room + Below;
        var shapes = ImmutableArray.CreateBuilder<Shape>();
        shapes.AddRange(Figure.At(Math.Round(middle - (Figure.Width / 2)), Math.Round(y + ((room - Figure.Height) / 2))));
        foreach (string id in Id)
            shapes.Add(TextShape.Of(id, lettering.BodyBold, middle, line += lettering.BodyBold.Pitch, Anchor.Middle));
        foreach (string noun in Noun)
            shapes.Add(TextShape.Of(noun, lettering.Small, middle, line += lettering.Small.Pitch, Anchor.Middle, ColourRole.Quiet));
        return new(Layer.Parts, shapes.ToImmutable()) { Id = "kind-" + Kind.Id, Classes = ["kind"], Data = [("kind", Kind.Id)], Title = Kind.Summary };
    }
}
