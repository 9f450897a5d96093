using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Sizing.Tables;

/// <summary>The sizes that are made, in one of the two series, smallest first.</summary>
internal static class WireLadder
{
    private static readonly ImmutableArray<WireSize> gauges = [.. DataTable.Named("sizes").Rows.Select(r => WireSize.Awg(DataTable.GaugeOf(r[0])))];
    private static readonly ImmutableArray<WireSize> metric = [.. DataTable.Named("sizes").Rows.Select(r => WireSize.SquareMillimetres(DataTable.FigureOf(r[1])!.Value))];

    /// <summary>The series of a wire: that of its size, else that of the job.</summary>
    public static ImmutableArray<WireSize> Of(Wire wire, ElectricalSystem system) =>
        wire.Size is { } size ? size.Gauge is null ? metric : gauges : system.SizesIn == Unit.SquareMillimetre ? metric : gauges;

    /// <summary>The smallest conductor that stands being handled.</summary>
    /// <param name="ladder">The series.</param>
    /// <param name="isInSheath">Whether it runs in a loom.</param>
    public static WireSize Least(ImmutableArray<WireSize> ladder, bool isInSheath)
    {
        var table = DataTable.Named("minima");
        var row = table.Row(isInSheath ? "sheath" : "single");
        return ladder[0].Gauge is null ? WireSize.SquareMillimetres(table.Figure(row, "mm²")!.Value) : WireSize.Awg(DataTable.GaugeOf(table.Cell(row, "AWG")));
    }

    /// <summary>Up to what length a pigtail needs no least size, in metres.</summary>
    public static double PigtailMetres(ImmutableArray<WireSize> ladder)
    {
        var table = DataTable.Named("minima");
        return table.Figure(table.Row("single"), ladder[0].Gauge is null ? "pigtail-metric-m" : "pigtail-AWG-m")!.Value;
    }
}
