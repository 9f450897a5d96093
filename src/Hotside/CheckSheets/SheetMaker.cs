using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Studies;
using Hotside.Wording;

namespace Hotside.CheckSheets;

/// <summary>Makes check sheets of a circuit.</summary>
internal static class SheetMaker
{
    private const string Defers = "An aid, worked out from the netlist: the workshop manual, local codes and licensed practice take precedence.";

    /// <summary>The intake sheet of some loads.</summary>
    public static CheckSheet Intake(CircuitStudy study, string title, IEnumerable<LoadStudy> loads, Vocabulary words) =>
        new($"Intake sheet: {title}", new IntakeRows(study, words).Of(loads))
        {
            Heads =
            [
                "Vehicle ______________________   date ____________   hand ____________   battery now ______ V",
                $"Netlist: {study.Circuit.System}. Measured at the battery: post on {words.Ground} is  + / −  ______ V",
            ],
            Cautions =
            [
                Defers,
                "Rings, watch and chains off; eyes protected; no flame near the battery.",
                $"Measure the battery's polarity at its posts first: cable {words.Color}s and the book may both be wrong.",
                "Take a loaded meter or a test lamp: a meter of 10 MΩ shows ghost volts on an open wire. Photograph and tag every terminal before it is moved.",
            ],
            Notes = ["Expected values are the netlist's; what is measured decides. A reading that contradicts the netlist means the record is wrong, or the vehicle is."],
        };
}
