using System.Globalization;

namespace Hotside.Benchmarks;

/// <summary><c>vehicle SEED</c>: the job file of a generated vehicle.</summary>
internal static class VehicleCommand
{
    public static int Run(string[] arguments, TextWriter output)
    {
        if (arguments is not [var word] || !int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out int seed)) return 64;
        output.Write(GeneratedVehicle.Of(seed));
        return 0;
    }
}
