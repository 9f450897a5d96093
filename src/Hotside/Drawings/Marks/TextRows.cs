using System.Collections.Immutable;
using Hotside.Symbols.Shapes;
using Hotside.Symbols.Texts;

namespace Hotside.Drawings.Marks;

/// <summary>Lines and pieces under each other, all beginning at the left or all ending at the right.</summary>
internal sealed class TextRows(bool rightAligned)
{
    private readonly List<(Piece Piece, double Y)> _rows = [];
    private double _y;
    private double _width;

    /// <summary>Adds a piece below what is there.</summary>
    public TextRows Add(Piece piece)
    {
        _rows.Add((piece, _y));
        _y += piece.Height;
        _width = Math.Max(_width, piece.Width);
        return this;
    }

    /// <summary>Adds a line, one pitch of its style below.</summary>
    public TextRows Text(string text, TextStyle style, ColourRole colour, string? whole)
    {
        TextShape shape = TextShape.Of(text, style, 0, style.Pitch, Anchor.Start, colour) with { Whole = whole };
        return Add(new(shape.Width, style.Pitch, [shape]));
    }

    /// <summary>Leaves room.</summary>
    public TextRows Gap(double height)
    {
        _y += height;
        return this;
    }

    /// <summary>All of it; the height includes the feet of the last line.</summary>
    public Piece Done()
    {
        double below = _rows.Count == 0 ? 0 : _rows.Max(r => r.Y + Box.Around(r.Piece.Shapes.Select(s => s.Bounds)).Bottom);
        ImmutableArray<Shape> shapes = [.. _rows.SelectMany(r => r.Piece.At(rightAligned ? _width - r.Piece.Width : 0, r.Y))];
        return new(_width, Math.Max(_y, below), shapes);
    }
}
