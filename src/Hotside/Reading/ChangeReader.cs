using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Hotside.Alterations;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Notation;

namespace Hotside.Reading;

/// <summary>Reads the list of changes into edits, with the place of each.</summary>
internal sealed partial class ChangeReader(ReadingContext context)
{
    private readonly List<EditGroup> groups = [];
    private readonly List<ImmutableArray<SourceSpan>> places = [];

    /// <summary>The groups of edits and, for each edit, its place.</summary>
    public (ImmutableArray<EditGroup> Groups, ImmutableArray<ImmutableArray<SourceSpan>> Places) Read(YamlNode node)
    {
        if (node is YamlList list)
            foreach (var item in list.Items) Group(item is YamlList inner ? inner.Items : [item]);
        else if (node is not YamlText { Value.Length: 0 })
            context.Report(ReadingProblems.WrongShape.At(node.Span, "changes", "a list, a line for each change") with { Hint = "begin each with a dash: \"- take out w3\"" });
        return ([.. groups], [.. places]);
    }

    private void Group(ImmutableArray<YamlNode> nodes)
    {
        var edits = ImmutableArray.CreateBuilder<Edit>();
        var spans = ImmutableArray.CreateBuilder<SourceSpan>();
        string? reason = null;
        foreach (var node in nodes)
        {
            if (ChangeLineReader.Read(node, context) is not { } line) continue;
            reason ??= line.Items.FirstOrDefault(i => i.IsReason)?.Text;
            var edit = Edit(line);
            if (edit is null)
            {
                // What the line would have brought is missed by others for no fault of their own.
                context.Unreadable.UnionWith(line.Ids.Select(i => i.Text));
                edit = new UnreadEdit([.. line.Ids.Select(i => i.Text)]);
            }
            edits.Add(edit);
            spans.Add(line.Span);
        }
        if (edits.Count == 0) return;
        groups.Add(new(edits.ToImmutable(), reason));
        places.Add(spans.ToImmutable());
    }

    private Edit? Edit(ChangeLine line)
    {
        var items = line.Items.Where(i => !i.IsReason).ToImmutableArray();
        foreach (var id in line.Ids.Where(i => !ItemId.IsWellFormed(i.Text))) context.Report(ReadingProblems.BadId.At(id.Span, id.Text) with { Hint = "ids come first, then a colon: \"fit K1: relay, …\"" });
        ImmutableArray<string> ids = [.. line.Ids.Where(i => ItemId.IsWellFormed(i.Text)).Select(i => i.Text)];
        if (ids.IsEmpty) return line.Ids.IsEmpty ? Bad(line) : null;
        string only = ids[0];
        switch (line.Verb)
        {
            case "take out": return new TakeOutEdit(ids);
            case "fit" when PartReader.Read(items, line.Span, context) is { } part:
                foreach (var id in line.Ids) New(id);
                return new FitEdit(ids, part.Spec);
            case "replace" when PartReader.Read(items, line.Span, context, mayMap: true) is { } part:
                foreach (var id in line.Ids) Anew(id);
                return new ReplaceEdit(ids, part.Spec, line.Reversed, part.Map);
            case "reverse" when ids.Length == 1: return new ReverseEdit(only);
            case "remount" when ids.Length == 1 && items is [var how] && Mount(how) is { } mount: return new RemountEdit(only, mount);
            case "run" when ids.Length == 1 && !items.IsEmpty:
                New(line.Ids[0]);
                return EndReader.Pair(items[0], context) is { } ends ? new RunEdit(new(only, ends.From, ends.To, WireReader.Read(items.Skip(1), ends, context).Wire)) : null;
            case "move" when ids.Length == 1 && !items.IsEmpty: return Move(only, items);
            case "renew" when !items.IsEmpty:
                foreach (var id in line.Ids) Anew(id);
                return new RenewEdit(ids, WireReader.Read(items, null, context).Wire);
            case "cut" when ids.Length == 1 && items is [var insert, ..] && CutShape().Match(insert.Text) is { Success: true } match: return Cut(only, insert, match);
            case "do" when line.Rest.Trim().Length > 0: return new DoEdit(only, line.Rest.Trim());
            case "fit" or "replace": return null;
            default: return Bad(line);
        }
    }

    private Edit? Move(string id, ImmutableArray<LineItem> items)
    {
        var pairs = items.TakeWhile(i => !i.IsQuoted && i.Text.Split(" to ").Length == 2).ToArray();
        if (pairs.Length == 0)
        {
            EndReader.Pair(items[0], context);
            return null;
        }
        var ends = pairs.Select(p => EndReader.Pair(p, context)).ToArray();
        var rest = items.Skip(pairs.Length).ToArray();
        return ends.All(e => e is not null)
            ? new MoveEdit(id, [.. ends.Select(e => e!.Value)], rest.Length == 0 ? null : WireReader.Read(rest, null, context).Wire)
            : null;
    }

    private Edit? Cut(string id, LineItem item, Match match)
    {
        New(new(match.Groups[3].Value, item.Span));
        return EndReader.Read(match.Groups[1].Value, item.Span, context) is { } first && EndReader.Read(match.Groups[2].Value, item.Span, context) is { } second
            ? new CutEdit(id, first, second, match.Groups[3].Value)
            : null;
    }

    private CaseMount? Mount(LineItem item) => item.Words switch
    {
        ["case", "insulated"] => CaseMount.Insulated,
        ["case", "on", var node] when EndReader.Read(node, item.Span, context) is { } on => new(on),
        _ => null,
    };

    // Where a new id stands, unless another has it, which applying the list reports.
    private void New(LineItem id) => context.Places.TryAdd(id.Text, id.Span);

    // Where it is said how it is from now on.
    private void Anew(LineItem id) => context.LaterPlaces[id.Text] = id.Span;

    private Edit? Bad(ChangeLine line)
    {
        context.Report(ReadingProblems.BadChange.At(line.Span, line.Verb switch
        {
            "take out" => "take out w3, G2",
            "fit" => "fit K1: relay, 12 V, 30 A",
            "replace" => "replace H1: horn, 12 V, 5 A",
            "reverse" => "reverse P1",
            "remount" => "remount H1: case insulated",
            "run" => "run w6: H1.2 to chassis, 14 BK, 0.4 m",
            "move" => "move w4: H1.2 to K1.85",
            "renew" => "renew w7, w8: 6 BN",
            "cut" => "cut w1: F0.1 and F0.2 as w15",
            _ => "do G1: what to do",
        }));
        return null;
    }

    [GeneratedRegex(@"^(\S+) and (\S+) as (\S+)$")]
    private static partial Regex CutShape();
}
