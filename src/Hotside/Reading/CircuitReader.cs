using System.Collections.Immutable;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Kinds;
using Hotside.Notation;

namespace Hotside.Reading;

/// <summary>Reads the sections that make a circuit: kinds, system, parts, wires.</summary>
internal sealed class CircuitReader(Sections sections, ReadingContext context)
{
    /// <summary>The circuit, without settings; <see langword="null"/> when its system or parts are missing.</summary>
    public Circuit? Read()
    {
        foreach (var entry in sections.Entries("kinds")) OwnKind(entry);
        var system = System();
        if (sections.Find("parts") is null) Missing("parts");
        var parts = Parts();
        var wires = Wires();
        return system is null || sections.Find("parts") is null ? null : context.Marks.On(new(Resolved(system), parts, wires, []));
    }

    private void OwnKind(YamlEntry entry)
    {
        int before = context.Problems.Count;
        if (entry.Value is not YamlMap map) context.Report(ReadingProblems.WrongShape.At(entry.Value.Span, entry.Key.Value, "a map that describes the kind"));
        else if (KindReader.Read(entry.Key, map, context.Kinds, context.Problems) is { } kind) context.Kinds = context.Kinds.With(kind);
        if (context.Problems.Skip(before).Any(p => p.Severity >= Severity.Error)) context.BrokenKinds.Add(entry.Key.Value);
    }

    private ElectricalSystem? System()
    {
        if (sections.Find("system") is not { } node)
        {
            Missing("system");
            return null;
        }
        var system = SystemReader.Read(node, null, context);
        return system;
    }

    private void Missing(string section) =>
        context.Report(ReadingProblems.SectionMissing.At(sections.Top, section) with { Hint = "\"hotside new NAME\" writes a file that has them all" });

    private ElectricalSystem Resolved(ElectricalSystem system) =>
        system.Return is not { } node ? system : system with { Return = EndReader.Resolve(node, sections.Find("system")!.Span, context) ?? node };

    private ImmutableArray<Part> Parts()
    {
        var read = new List<(Part Part, PartLine Line, SourceSpan Span)>();
        foreach (var entry in sections.Entries("parts"))
            foreach (var id in Ids(entry.Key))
            {
                if (!context.Claim(id)) continue;
                if (Line(entry, context) is not { } line) context.Unreadable.Add(id.Value);
                else
                {
                    if (line.Reason is not null) context.Report(ReadingProblems.NoChange.At(entry.Value.Span, id.Value) with { Hint = "a reason belongs to a change; say it in a comment" });
                    var part = line.Spec.As(id.Value);
                    context.Parts.Add(id.Value, part);
                    read.Add((part, line, entry.Value.Span));
                }
            }
        foreach (var (assembly, span) in context.Assemblies.Where(a => !context.Parts.ContainsKey(a.Id) && !context.Unreadable.Contains(a.Id)))
            context.Report(ReadingProblems.NoAssembly.At(span, assembly) with { Hint = NearestName.Of(assembly, context.Parts.Values.Where(p => p.Kind.HoldsParts).Select(p => p.Id)) is { } near ? $"did you mean \"{near}\"?" : $"an assembly is a part: \"{assembly}: assembly, Fuse block\"; a place in words is \"at …\"" });
        foreach (var (part, _, span) in read.Where(r => r.Part.Place is { } place && context.Parts.TryGetValue(place, out var box) && box.Kind.HoldsParts))
            context.Report(ReadingProblems.PlaceIsAssembly.At(span, part.Place!) with { Hint = $"write \"in {part.Place}\"" });
        context.Assemblies.Clear();
        return [.. read.Select(r => WithNodes(r.Part, r.Line, r.Span))];
    }

    private static PartLine? Line(YamlEntry entry, ReadingContext context) => entry.Value switch
    {
        YamlText text => PartReader.Read(LineItems.Split(text, context.Problems), text.Value.Length == 0 ? entry.Key.Span : text.Span, context),
        YamlMap map => PartReader.Read(MapForm.PartItems(map, context), map.Span, context),
        _ => NoLine(entry, context),
    };

    private static PartLine? NoLine(YamlEntry entry, ReadingContext context)
    {
        context.Report(ReadingProblems.WrongShape.At(entry.Value.Span, entry.Key.Value, "one line of text, or a map"));
        return null;
    }

    // "E1, E2: lamp, …" is two parts of one line.
    private IEnumerable<YamlText> Ids(YamlText key)
    {
        foreach (var item in LineItems.Split(key, context.Problems)) yield return new(item.Text, item.Span, 0);
    }

    private Part WithNodes(Part part, PartLine line, SourceSpan span)
    {
        var resolved = part with
        {
            Spec = part.Spec with
            {
                Joints = [.. part.Joints.Select((j, i) => (Joint: j, On: EndReader.Resolve(j.On, line.JointSpans[i], context))).Where(j => j.On is not null).Select(j => j.Joint with { On = j.On!.Value })],
                Case = part.CaseOn is { } on ? new(EndReader.Resolve(on, line.CaseSpan ?? span, context)) : part.Spec.Case,
            },
        };
        context.Parts[part.Id] = resolved;
        return resolved;
    }

    private ImmutableArray<Conductor> Wires()
    {
        var wires = ImmutableArray.CreateBuilder<Conductor>();
        foreach (var entry in sections.Entries("wires"))
        {
            if (!context.Claim(entry.Key)) continue;
            if (Wire(entry) is { } wire) wires.Add(wire);
            else context.Unreadable.Add(entry.Key.Value);
        }
        return wires.ToImmutable();
    }

    private Conductor? Wire(YamlEntry entry)
    {
        if (entry.Value is YamlList)
        {
            NoLine(entry, context);
            return null;
        }
        var items = entry.Value switch
        {
            YamlText text => LineItems.Split(text, context.Problems),
            YamlMap map => MapForm.WireItems(map, context),
            _ => [],
        };
        if (items.IsEmpty)
        {
            context.Report(ReadingProblems.NothingSaid.At(entry.Key.Span, entry.Key.Value) with { Hint = "begin with its ends, such as \"G1.neg to chassis\"" });
            return null;
        }
        var ends = EndReader.Pair(items[0], context);
        // Of ends that cannot be read nobody can say which joint is meant.
        var (wire, reason) = WireReader.Read(items.Skip(1).Where(i => ends is not null || !JointReader.IsJoint(i)), ends, context);
        if (reason is not null) context.Report(ReadingProblems.NoChange.At(items.Last(i => i.IsReason).Span, entry.Key.Value) with { Hint = "a reason belongs to a change; say it in a comment" });
        if (ends is not { } pair) return null;
        var from = Resolve(pair.From, items[0]);
        var to = Resolve(pair.To, items[0]);
        if ((pair.From.IsFree || pair.To.IsFree) && wire.Role != WireRole.Spare)
            context.Report(ReadingProblems.FreeEnd.At(items[0].Span) with { Hint = "add \"spare\", or say where the wire ends" });
        return from is null || to is null ? null : new(entry.Key.Value, from.Value, to.Value, wire);
    }

    private End? Resolve(End end, LineItem item)
    {
        // The place of this end within "A to B", so that the caret stands under what is wrong.
        int at = item.Text.StartsWith(end + " to ", StringComparison.Ordinal) ? 0 : item.Text.LastIndexOf(" to ", StringComparison.Ordinal) + 4;
        return EndReader.Resolve(end, item.Part(at, end.ToString().Length), context);
    }
}
