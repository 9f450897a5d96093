namespace Hotside.Layouts.Passes;

/// <summary>What may move for a straight line, and what that may cost.</summary>
internal abstract class StraighteningPolicy
{
    /// <summary>The two ends alone, and the text that is most in the way.</summary>
    public static StraighteningPolicy AtLittleCost { get; } = new Near();

    /// <summary>All that hangs in line with the two ends, and any text beside that line.</summary>
    public static StraighteningPolicy AtLength { get; } = new Far();

    /// <summary>How often the columns of so many seats may be settled.</summary>
    public abstract int Settles(int seats);

    /// <summary>Whether what hangs in line with the ends moves with them.</summary>
    public abstract bool MovesLine { get; }

    /// <summary>How many texts are tried on their other side.</summary>
    public abstract int MostTexts { get; }

    /// <summary>Whether columns are better than what there was.</summary>
    public abstract bool IsBetter(ColumnState now, ColumnState than);

    private sealed class Near : StraighteningPolicy
    {
        public override bool MovesLine => false;

        public override int MostTexts => 1;

        public override int Settles(int seats) => int.MaxValue;

        public override bool IsBetter(ColumnState now, ColumnState than) => now.Cost < than.Cost - 1e-9;
    }

    private sealed class Far : StraighteningPolicy
    {
        private const int Most = 30, Work = 120_000;

        // What a module of width costs beyond its share in the whole.
        private const double Wider = 1;

        public override bool MovesLine => true;

        public override int MostTexts => 6;

        // Twice the seats take four times as long to settle.
        public override int Settles(int seats) => Math.Min(Most, Work / (seats * seats));

        // Bends are saved and the drawing gets hardly wider: else more moves than it is worth.
        public override bool IsBetter(ColumnState now, ColumnState than) =>
            now.Cost + (Wider * (now.Width - than.Width)) < than.Cost - 1e-9 && now.Turns < than.Turns && now.Width - than.Width <= than.Turns - now.Turns;
    }
}
