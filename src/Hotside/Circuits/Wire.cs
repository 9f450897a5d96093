using UnitsNet;

namespace Hotside.Circuits;

/// <summary>What a conductor is made of, apart from where it runs. Whatever is not known is left out.</summary>
public sealed record Wire
{
    private const string NoSize = "A size is made by WireSize.Awg or WireSize.SquareMillimetres; leave it out when it is not known.";

    /// <summary>A conductor of which nothing is known.</summary>
    public Wire() { }

    /// <summary>A conductor of known size, colour and length.</summary>
    /// <param name="size">Its size.</param>
    /// <param name="colour">Its colour, as code or word, such as <c>RD/WH</c>.</param>
    /// <param name="length">Its length, above 0; <see langword="null"/> when not measured.</param>
    /// <exception cref="ArgumentException"><paramref name="size"/> is none, <paramref name="colour"/> is no colour, or <paramref name="length"/> is not above 0.</exception>
    public Wire(WireSize size, string colour, Length? length = null)
    {
        if (size == default) throw new ArgumentException(NoSize, nameof(size));
        ArgumentNullException.ThrowIfNull(colour);
        if (!WireColour.TryParse(colour, out var read))
            throw new ArgumentException(WireColour.Meant(colour) is { } meant ? $"\"{colour}\" is no colour; did you mean \"{meant}\"?"
                : $"\"{colour}\" is no colour; codes are {string.Join(", ", WireColour.Codes)}, with a tracer such as RD/WH.", nameof(colour));
        if (length is { } given && !(given.Meters > 0)) throw new ArgumentException("A length is above 0.", nameof(length));
        Size = size;
        Colour = read;
        LengthInMetres = length?.Meters;
    }

    /// <summary>The size; <see langword="null"/> when not known.</summary>
    /// <exception cref="ArgumentException">It is a size that neither <see cref="WireSize.Awg"/> nor <see cref="WireSize.SquareMillimetres"/> made.</exception>
    public WireSize? Size
    {
        get;
        init => field = value != default(WireSize) ? value : throw new ArgumentException(NoSize, nameof(value));
    }

    /// <summary>The colour; <see langword="null"/> when not known, and for a braid.</summary>
    public WireColour? Colour { get; init; }

    /// <summary>Whether it is a bare braid.</summary>
    public bool IsBraid { get; init; }

    /// <summary>The length in metres, above 0.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is not above 0.</exception>
    public double? LengthInMetres
    {
        get;
        init => field = value is null or > 0 and < double.PositiveInfinity ? value : throw new ArgumentOutOfRangeException(nameof(value), value, "A length is above 0.");
    }

    /// <summary>The measured resistance end to end in ohms, 0 or more; it wins over what size and length give.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is below 0.</exception>
    public double? ResistanceInOhms
    {
        get;
        init => field = value is null or >= 0 and < double.PositiveInfinity ? value : throw new ArgumentOutOfRangeException(nameof(value), value, "A resistance is 0 or more.");
    }

    /// <summary>What a bad joint at its first end adds in ohms, 0 or more; <see langword="null"/>: a good joint.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is below 0.</exception>
    public double? JointAtFromInOhms { get; init => field = CheckedJoint(value); }

    /// <summary>What a bad joint at its second end adds in ohms, 0 or more; <see langword="null"/>: a good joint.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is below 0.</exception>
    public double? JointAtToInOhms { get; init => field = CheckedJoint(value); }

    /// <summary>
    /// The temperature where it runs in °C, −60 to 250, taken as that of its copper at rest and of the air around it; <see langword="null"/> when not said: then 20 °C for the
    /// copper, and the air that the tables of ampacity count with.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">It is below −60 or above 250.</exception>
    public double? TemperatureInCelsius
    {
        get;
        init => field = value is null or >= LeastCelsius and <= MostCelsius ? value : throw new ArgumentOutOfRangeException(nameof(value), value, "A temperature is from -60 to 250 °C.");
    }

    /// <summary>What a temperature may be in °C.</summary>
    internal const double LeastCelsius = -60, MostCelsius = 250;

    /// <summary>The class of insulation, such as <c>GPT</c>.</summary>
    public string? Insulation { get; init => field = FreeText.Checked(value, nameof(value)); }

    /// <summary>The loom it runs in.</summary>
    public string? Loom { get; init => field = FreeText.Checked(value, nameof(value)); }

    /// <summary>What it is called, such as <c>throttle cable</c>.</summary>
    public string? Name { get; init => field = FreeText.Checked(value, nameof(value)); }

    /// <summary>Where it runs, in free words.</summary>
    public string? Place { get; init => field = FreeText.Checked(value, nameof(value)); }

    /// <summary>What it is there for.</summary>
    public WireRole Role { get; init; }

    /// <summary>The state of an old conductor; <see langword="null"/> when nobody looked.</summary>
    public WireCondition? Condition { get; init; }

    private static double? CheckedJoint(double? ohms) =>
        ohms is null or >= 0 and < double.PositiveInfinity ? ohms : throw new ArgumentOutOfRangeException(nameof(ohms), ohms, "A resistance is 0 or more.");

    /// <summary>Whether it runs in the engine space, as its place says.</summary>
    internal bool IsInEngineSpace => Place?.Contains("engine", StringComparison.OrdinalIgnoreCase) == true;

    /// <summary>Size and colour as they stand in a wire label: <c>14 RD/WH</c>, <c>1/0 braid</c>; empty when neither is known.</summary>
    public string Label => string.Join(' ', new[] { Size?.Label, IsBraid ? "braid" : Colour?.ToString() }.Where(s => !string.IsNullOrEmpty(s)));
}
