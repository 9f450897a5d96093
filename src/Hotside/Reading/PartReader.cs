using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Notation;

namespace Hotside.Reading;

/// <summary>Reads what is said of a part: the kind first, then items, each the first thing that it fits.</summary>
internal sealed partial class PartReader
{
    private readonly ReadingContext context;
    private readonly bool mayMap;
    private readonly List<Rating> ratings = [];
    private readonly List<Joint> joints = [];
    private readonly List<SourceSpan> jointSpans = [];
    private readonly List<string> free = [];
    private readonly List<string> marks = [];
    private readonly List<string> options = [];
    private readonly List<(string Old, string New)> map = [];
    private PartKind kind;
    private string? name, reason, assembly, place;
    private CaseMount? mount;
    private SourceSpan? mountSpan;

    private PartReader(PartKind kind, ReadingContext context, bool mayMap)
    {
        this.kind = kind;
        this.context = context;
        this.mayMap = mayMap;
    }

    /// <summary>What a part line says; <see langword="null"/> when its kind is not known.</summary>
    public static PartLine? Read(ImmutableArray<LineItem> items, SourceSpan span, ReadingContext context, bool mayMap = false)
    {
        if (items.IsEmpty)
        {
            context.Report(ReadingProblems.NothingSaid.At(span, "this part") with { Hint = "begin with its kind, such as \"lamp, 6 V, 21 W\"" });
            return null;
        }
        var first = items[0];
        if (context.BrokenKinds.Contains(first.Text.Replace(' ', '-'))) return null;
        if (first.IsQuoted || context.Kinds.Find(first.Text) is not { } kind)
        {
            context.Report(ReadingProblems.UnknownKind.At(first.Span, first.Text) with { Hint = KindHint.Of(first.Text, context.Kinds) });
            return null;
        }
        var reader = new PartReader(kind, context, mayMap);
        reader.FindWays(items, span);
        foreach (var item in items.Skip(1)) reader.Take(item);
        return reader.Line();
    }

    private PartLine Line() => new(
        new(kind.MarkedAs(marks))
        {
            Name = name,
            Ratings = [.. ratings],
            Options = [.. options],
            Joints = [.. joints],
            Case = mount,
            FreeTerminals = [.. free],
            Assembly = assembly,
            Place = place,
        },
        [.. map],
        reason)
    {
        JointSpans = [.. jointSpans],
        CaseSpan = mountSpan,
    };

    // The number of ways comes first whatever its place in the line: it makes the terminals that other items name.
    private void FindWays(ImmutableArray<LineItem> items, SourceSpan span)
    {
        if (kind.Ways is not { } range) return;
        var said = items.Skip(1).Select(i => QuantityReader.Read(i.Text, out _)).FirstOrDefault(q => q is { Unit: Unit.Ways });
        if (said is null) context.Report(ReadingProblems.WaysMissing.At(span, kind.Id) with { Hint = "say it, such as \"12 ways\"" });
        else if (said.Value != Math.Floor(said.Value) || said.Value < range.Least || said.Value > range.Most)
            context.Report(ReadingProblems.WaysRange.At(span, kind.WithArticle(), Numbers.Whole(range.Least), Numbers.Whole(range.Most)) with { Hint = "count them; several blocks are several parts" });
        else
        {
            kind = kind.WithWays((int)said.Value);
            ratings.Add(new("ways", said));
        }
    }

    private void Take(LineItem item)
    {
        if (item.IsQuoted) Name(item);
        else if (item.IsReason) reason = item.Text;
        else if (QuantityReader.Read(item.Text, out string? problem) is { } quantity) Rate(quantity, "", item);
        else if (problem is not null) context.Report(ReadingProblems.BadQuantity.At(item.Span, item.Text, problem) with { Hint = "a name that begins with a digit stands in quotes" });
        else if (NamedQuantity(item) || LacksUnit(item)) { }
        else if (JointShape().Match(item.Text) is { Success: true } joint) Join(joint.Groups[1].Value, joint.Groups[2].Value, item);
        else if (FreeShape().Match(item.Text) is { Success: true } open) Free(open.Groups[1].Value, open.Groups[2].Value, item);
        else if (MapShape().Match(item.Text) is { Success: true } mapping) Map(mapping.Groups[1].Value, mapping.Groups[2].Value, item);
        else if (item.Text.StartsWith("in ", StringComparison.Ordinal)) Assemble(item);
        else if (item.Text.StartsWith("at ", StringComparison.Ordinal)) place = item.Text["at ".Length..];
        else if (kind.Options.ContainsKey(item.Text)) options.Add(item.Text);
        else if (char.IsAsciiDigit(item.Text[0]))
            context.Report(ReadingProblems.DigitName.At(item.Span, item.Text) with { Hint = DigitHint(item.Text) });
        else Name(item);
    }

    private string DigitHint(string text)
    {
        // The pole that is grounded is a matter of the vehicle.
        if (PoleShape().Match(text) is { Success: true } volts)
            return $"write \"{volts.Groups[1].Value} V\"; which pole is grounded stands once for the vehicle: \"system: {volts.Groups[1].Value} V, negative ground\"";
        string[] units = [.. kind.Ratings.Where(r => r.IsMain).Select(r => r.Name)];
        return Numbers.TryRead(text, out _) && units.Length > 0 ? $"write {string.Join(" or ", units.Select(u => $"\"{text} {u}\""))}; a name stands in quotes"
            : "add the unit; a name that begins with a digit stands in quotes";
    }

    private void Name(LineItem item)
    {
        if (name is null) name = item.Text;
        else
            context.Report(ReadingProblems.TwoNames.At(item.Span, name, item.Text) with
            {
                Hint = Near(item.Text) ?? $"if both are one name, write '{name}, {item.Text}' in quotes; a place is \"at {item.Text}\"",
            });
    }

    private string? Near(string text) =>
        NearestName.Of(text, kind.Options.Keys.Concat(kind.Ratings.Select(r => r.Name))) is { } near ? $"did you mean \"{near}\"?" : null;

    private bool NamedQuantity(LineItem item)
    {
        var match = NamedShape().Match(item.Text);
        if (!match.Success || QuantityReader.Read(match.Groups[2].Value, out _) is not { } quantity) return false;
        Rate(quantity, match.Groups[1].Value, item);
        return true;
    }

    private void Rate(StatedValue quantity, string words, LineItem item)
    {
        if (quantity.Unit == Unit.Ways && words.Length == 0)
        {
            // A wrong number of ways is reported already.
            if (kind.Ways is null && ratings.All(r => r.Name != "ways")) NoRating(quantity, item, words);
            return;
        }
        string symbol = QuantityText.Symbol(quantity.Unit);
        string full = words.Length == 0 ? symbol : words + " " + symbol;
        var rule = kind.RatingNamed(full);
        if (rule is null) NoRating(quantity, item, words);
        else if (ratings.Any(r => r.Name == full)) context.Report(ReadingProblems.RatingTwice.At(item.Span, full) with { Hint = "give it once" });
        else if (!rule.IsInRange(quantity) && rule.Unit == Unit.Percent)
            context.Report(ReadingProblems.BadQuantity.At(item.Span, item.Text, "it is 0 to 100 %") with { Hint = "leave out what is not known" });
        else if (!rule.IsInRange(quantity))
            context.Report(ReadingProblems.NotPositive.At(item.Span, item.Text) with { Hint = "the ground says which pole is which; leave out what is not known" });
        else if (quantity.Values.Length > rule.MostValues)
            context.Report(ReadingProblems.TooManyValues.At(item.Span, item.Text, full) with { Hint = rule.IsOneEach ? "a value each for: " + string.Join(", ", rule.Elements) : "one value is enough" });
        else ratings.Add(new(full, quantity));
    }

    // "coil 0.15" is a rating that lost its unit, not a name.
    private bool LacksUnit(LineItem item)
    {
        int last = item.Text.LastIndexOf(' ');
        if (last < 0 || !item.Text[(last + 1)..].All(c => char.IsAsciiDigit(c) || c is '.' or '/')) return false;
        var meant = kind.Ratings.Concat(kind.CommonRatings).FirstOrDefault(r => r.Name.StartsWith(item.Text[..(last + 1)], StringComparison.Ordinal));
        if (meant is null) return false;
        context.Report(ReadingProblems.BadQuantity.At(item.Span, item.Text, "the unit is missing") with { Hint = $"write \"{item.Text} {meant.Name[(meant.Name.LastIndexOf(' ') + 1)..]}\"; a name stands in quotes" });
        return true;
    }

    private void NoRating(StatedValue quantity, LineItem item, string words)
    {
        var ratings = kind.Ratings.Concat(kind.CommonRatings).ToArray();
        string known = ratings.Length == 0 ? "it has no ratings" : "it has " + string.Join(", ", ratings.Select(r => r.Name));
        string hint = words.Length == 0 ? known : known + "; if it is a name, put it in quotes";
        context.Report(ReadingProblems.NoSuchRating.At(item.Span, kind.WithArticle(), (words + " " + QuantityText.Symbol(quantity.Unit)).Trim()) with { Hint = hint });
    }

    private void Join(string terminal, string node, LineItem item)
    {
        if (EndReader.Read(node, item.Span, context) is not { } on) return;
        if (terminal == "case" && !kind.HasCaseTerminal) context.Report(ReadingProblems.NoCase.At(item.Span, kind.WithArticle()) with { Hint = "leave it out, or choose a kind with a case" });
        else if (kind.TerminalNamed(terminal) is not { } own)
            context.Report(ReadingProblems.UnknownTerminal.At(item.Span, kind.WithArticle(), terminal) with { Hint = kind.TerminalHint(terminal) + "; if it is a name, put it in quotes" });
        else if (own == "case") Mount(new(on), item);
        else
        {
            joints.Add(new(First(own, terminal), on));
            jointSpans.Add(item.Span);
        }
    }

    private void Free(string terminal, string state, LineItem item)
    {
        if (terminal == "case" && state == "insulated")
        {
            if (kind.HasCaseTerminal) Mount(CaseMount.Insulated, item);
            else context.Report(ReadingProblems.NoCase.At(item.Span, kind.WithArticle()) with { Hint = "leave it out, or choose a kind with a case" });
        }
        else if (kind.TerminalNamed(terminal) is { } own) free.Add(First(own, terminal));
        else context.Report(ReadingProblems.UnknownTerminal.At(item.Span, kind.WithArticle(), terminal) with { Hint = kind.TerminalHint(terminal) });
    }

    // The mark by which the line writes a terminal first.
    private string First(string own, string written)
    {
        marks.Add(written);
        return marks.First(m => kind.TerminalNamed(m) == own) is var mark and not "case" ? mark : own;
    }

    private void Mount(CaseMount on, LineItem item)
    {
        if (mount is not null) context.Report(ReadingProblems.GivenTwice.At(item.Span, "case") with { Hint = "give it once" });
        else (mount, mountSpan) = (on, item.Span);
    }

    private void Map(string old, string now, LineItem item)
    {
        if (!mayMap) context.Report(ReadingProblems.MapOutside.At(item.Span, item.Text) with { Hint = $"a terminal bolted to a node is \"{old} on …\"" });
        else map.Add((old, now));
    }

    private void Assemble(LineItem item)
    {
        assembly = item.Text["in ".Length..];
        // Whether the assembly exists is known once all parts are read.
        context.Assemblies.Add((assembly, item.Span));
    }

    [GeneratedRegex(@"^([0-9.]+) ?[vV](?:olts?)?[ ,]*(?:pos|neg|\+|-|[–−])", RegexOptions.IgnoreCase)]
    private static partial Regex PoleShape();

    [GeneratedRegex(@"^([^\d].*?) ((?:\d+x)?[\d.,/]+(?:\.\.[\d.,]+)? ?\S+)$")]
    private static partial Regex NamedShape();

    [GeneratedRegex(@"^(\S+) on (\S+)$")]
    private static partial Regex JointShape();

    [GeneratedRegex(@"^(\S+) (free|insulated)$")]
    private static partial Regex FreeShape();

    [GeneratedRegex(@"^(\S+) ?= ?(\S+)$")]
    private static partial Regex MapShape();
}
