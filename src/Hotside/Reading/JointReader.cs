using System.Text.RegularExpressions;
using Hotside.Circuits;
using Hotside.Notation;

namespace Hotside.Reading;

/// <summary>Reads a bad joint of a wire: <c>joint 0.2 ohm at T1</c>.</summary>
internal static partial class JointReader
{
    private const string Example = "write \"joint 0.2 ohm at\" and the end where it is";

    /// <summary>Whether an item is such a joint.</summary>
    public static bool IsJoint(LineItem item) => !item.IsQuoted && item.Text.StartsWith("joint ", StringComparison.Ordinal);

    /// <summary>The wire with the joint, or as it is and a report.</summary>
    public static Wire Read(Wire wire, LineItem item, (End From, End To)? ends, ReadingContext context)
    {
        var match = Shape().Match(item.Text);
        var quantity = match.Success ? QuantityReader.Read(match.Groups[1].Value, out _) : null;
        if (quantity is not { Unit: Unit.Ohm, UpTo: null, Values.Length: 1, Count: 1, Value: >= 0 })
        {
            context.Report(ReadingProblems.BadJoint.At(item.Span, item.Text) with { Hint = Example });
            return wire;
        }
        if (ends is not { } pair)
        {
            context.Report(ReadingProblems.BadJoint.At(item.Span, item.Text) with { Hint = "a joint that is made anew is taken to be good; say it where the wire is listed or run" });
            return wire;
        }
        var at = match.Groups[2];
        bool isFrom = Means(at.Value, pair.From), isTo = Means(at.Value, pair.To);
        if (isFrom == isTo)
        {
            context.Report(ReadingProblems.NoEndOfWire.At(item.Part(at.Index, at.Length), at.Value) with { Hint = isFrom ? $"say {pair.From} or {pair.To}" : $"it ends on {pair.From} and {pair.To}" });
            return wire;
        }
        if ((isFrom ? wire.JointAtFromInOhms : wire.JointAtToInOhms) is not null)
        {
            context.Report(ReadingProblems.GivenTwice.At(item.Span, "joint at " + at.Value) with { Hint = "give it once" });
            return wire;
        }
        return isFrom ? wire with { JointAtFromInOhms = quantity.Value } : wire with { JointAtToInOhms = quantity.Value };
    }

    // The part alone, where the other end is not on it as well; or the end as the line has it.
    private static bool Means(string text, End end) => text == end.ToString() || (end.Part is { } part && text == part);

    [GeneratedRegex(@"^joint (.+) at (\S+)$")]
    private static partial Regex Shape();
}
