using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Solving;

namespace Hotside.Sizing.Guards;

/// <summary>What opens before too much current flows in a conductor.</summary>
/// <param name="Devices">The fuses, breakers and links that let the least through on the way from the sources, from the side from which most can come.</param>
internal sealed record Protection(ImmutableArray<ModelElement> Devices)
{
    /// <summary>Whether a source reaches it without passing a consumer: whether a short to the return is a short of the source.</summary>
    public bool IsHot { get; init; }

    /// <summary>Whether a battery reaches it past every fuse.</summary>
    public bool IsUnprotected { get; init; }

    /// <summary>The fuses, breakers and links of both sides.</summary>
    public ImmutableArray<ModelElement> All { get; init; } = [];

    /// <summary>The sum of their ratings in amperes; <see langword="null"/> where one is not stated, or there is none.</summary>
    public double? Amperes => Devices.IsEmpty || Devices.Any(d => RatingOf(d) is null) ? null : Devices.Sum(d => RatingOf(d)!.Value);

    /// <summary>The gauge of a fusible link that states one.</summary>
    public int? LinkGauge => Devices is [var device] && device.Part.Rated(device.Element.Name, Unit.Awg) is { } gauge ? (int)gauge : null;

    /// <summary>The rating of a device in amperes; that which its kind commonly has where none is stated.</summary>
    public static double? RatingOf(ModelElement device) =>
        device.Part.Rated(device.Element.Name, Unit.Ampere)
        ?? device.Part.Kind.RulesOf(device.Element.Name, Unit.Ampere).Select(r => r.Default?.Quantity.Value).FirstOrDefault(a => a is not null);
}
