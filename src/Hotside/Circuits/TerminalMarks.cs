using System.Collections.Immutable;

namespace Hotside.Circuits;

/// <summary>
/// By which marks terminals are written, where a kind knows several for one: the mark that is written first is taken to be the one stamped on the part, and is its name from then on.
/// </summary>
internal sealed class TerminalMarks
{
    private readonly Dictionary<End, string> marks = [];

    /// <summary>Notes how a terminal is written.</summary>
    /// <param name="part">Its part; what its own line names is written already.</param>
    /// <param name="terminal">The terminal's name so far.</param>
    /// <param name="written">As it is written; <c>case</c> is a word of the notation and no mark.</param>
    /// <returns>The mark by which it was written before, where that is another; else <see langword="null"/>.</returns>
    public string? Note(Part part, string terminal, string written)
    {
        if (written.Length == 0 || written == "case" || part.Kind.TakesAnyTerminal) return null;
        bool isSaid = part.Joints.Any(j => j.Terminal == terminal) || part.Spec.FreeTerminals.Contains(terminal);
        var end = End.At(part.Id, terminal);
        marks.TryAdd(end, isSaid ? terminal : written);
        return marks[end] == written ? null : marks[end];
    }

    /// <summary>Gives a terminal a mark, whatever was noted.</summary>
    public void Set(End terminal, string mark) => marks[terminal] = mark;

    /// <summary>The circuit by these marks; itself where they are its names already.</summary>
    public Circuit On(Circuit circuit)
    {
        foreach (var (end, mark) in marks.ToArray())
            if (mark == end.Terminal || circuit.FindPart(end.Part!) is not { } part || !part.Kind.MayBear(mark)) marks.Remove(end);
        return marks.Count == 0 ? circuit : new Circuit(
            circuit.System.Return is { } node ? circuit.System with { Return = On(node) } : circuit.System,
            [.. circuit.Parts.Select(On)],
            [.. circuit.Conductors.Select(c => c with { From = On(c.From), To = On(c.To) })],
            circuit.Settings).With(circuit.Sequences);
    }

    private Part On(Part part)
    {
        var own = marks.Where(m => m.Key.Part == part.Id).ToDictionary(m => m.Key.Terminal, m => m.Value, StringComparer.Ordinal);
        bool standsOn = part.Joints.Any(j => marks.ContainsKey(j.On)) || (part.CaseOn is { } node && marks.ContainsKey(node));
        return own.Count == 0 && !standsOn ? part : part with
        {
            Spec = part.Spec with
            {
                Kind = part.Kind.Marked(own),
                Joints = [.. part.Joints.Select(j => new Joint(own.GetValueOrDefault(j.Terminal, j.Terminal), On(j.On)))],
                FreeTerminals = [.. part.Spec.FreeTerminals.Select(t => own.GetValueOrDefault(t, t))],
                Case = part.CaseOn is { } on ? new(On(on)) : part.Spec.Case,
            },
        };
    }

    private End On(End end) => marks.TryGetValue(end, out string? mark) ? End.At(end.Part!, mark) : end;
}

/// <summary>Kinds as single parts bear them.</summary>
internal static class MarkedKinds
{
    /// <summary>The kind with some terminals by other of their marks; a terminal's old name is then one of those that mean it, too.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="marks">Name so far to mark.</param>
    public static PartKind Marked(this PartKind kind, IReadOnlyDictionary<string, string> marks)
    {
        if (!kind.Terminals.Any(t => IsOther(t.Name))) return kind;
        return kind with
        {
            AsWritten = kind.AsWritten,
            Terminals = [.. kind.Terminals.Select(t => !IsOther(t.Name) ? t : t with { Name = marks[t.Name], Own = t.Own, Aliases = [t.Name, .. t.Aliases.Where(a => a != marks[t.Name])] })],
            Elements = [.. kind.Elements.Select(e => e with { From = Of(e.From), To = Of(e.To), Against = e.Against is { } against ? Of(against) : null })],
        };

        bool IsOther(string name) => marks.TryGetValue(name, out string? mark) && mark != name && kind.MayBear(mark);
        string Of(string end) => IsOther(end) && kind.Terminals.Any(t => t.Name == end) ? marks[end] : end;
    }

    /// <summary>The kind with the terminals by those marks that a line of it writes first.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="written">The marks, as written.</param>
    public static PartKind MarkedAs(this PartKind kind, IEnumerable<string> written)
    {
        var marks = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (string mark in written.Where(w => w != "case"))
            if (kind.TerminalNamed(mark) is { } own)
                marks.TryAdd(own, mark);
        return kind.Marked(marks);
    }

    /// <summary>Whether a terminal may be called so: nothing else within the kind is.</summary>
    public static bool MayBear(this PartKind kind, string mark) => mark != "case" && !kind.InnerNodes.Contains(mark) && kind.Terminals.All(t => t.Name != mark);
}
