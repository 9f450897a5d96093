using System.Collections.Immutable;

namespace Hotside.Studies;

/// <summary>A control as an expression of and, or and positions. A term that stands in several places is one object: it is shared, for written out it may be too long for any file.</summary>
public sealed class ControlTerm
{
    private ControlTerm() { }

    /// <summary>The positions that it asks for; <see langword="null"/> where it is made of other terms.</summary>
    public PositionSet? Position { get; private init; }

    /// <summary>The terms of which all must hold; empty where it is no such term.</summary>
    public ImmutableArray<ControlTerm> All { get; private init; } = [];

    /// <summary>The terms of which any must hold; empty where it is no such term.</summary>
    public ImmutableArray<ControlTerm> Any { get; private init; } = [];

    /// <summary>The terms that stand in several places and are no single positions, in the order in which they are first met.</summary>
    public ImmutableArray<ControlTerm> Shared
    {
        get
        {
            Dictionary<ControlTerm, int> met = [];
            List<ControlTerm> order = [];
            Visit(this);
            return [.. order.Where(t => met[t] > 1 && t.Position is null)];

            void Visit(ControlTerm term)
            {
                met[term] = met.GetValueOrDefault(term) + 1;
                if (met[term] > 1) return;
                order.Add(term);
                foreach (var part in term.All.Concat(term.Any)) Visit(part);
            }
        }
    }

    /// <summary>Whether it holds in a choice of positions.</summary>
    /// <param name="isIn">Whether the variable of some positions stands in one of them.</param>
    public bool Holds(Predicate<PositionSet> isIn)
    {
        ArgumentNullException.ThrowIfNull(isIn);
        Dictionary<ControlTerm, bool> known = [];
        return Told(this);

        bool Told(ControlTerm term) => known.TryGetValue(term, out bool holds) ? holds
            : known[term] = term.Position is { } set ? isIn(set) : term.Any.IsEmpty ? term.All.All(Told) : term.Any.Any(Told);
    }

    /// <summary>As a sentence would have it; shared terms as letters in brackets that are explained behind.</summary>
    public override string ToString()
    {
        var shared = Shared;
        string Name(ControlTerm term) => shared.IndexOf(term) is >= 0 and var i && term != this ? $"({Letters(i)})" : Written(term);
        string Written(ControlTerm term) => term.Position is { } set ? set.ToString()
            : term.Any.IsEmpty ? string.Join(" and ", term.All.Select(t => t.Any.IsEmpty || shared.Contains(t) ? Name(t) : $"({Name(t)})"))
            : string.Join(" or ", term.Any.Select(Name));
        return Written(this) + string.Concat(shared.Select((t, i) => $"; ({Letters(i)}): {Written(t)}"));
    }

    internal static ControlTerm Of(PositionSet position) => new() { Position = position };

    internal static ControlTerm AllOf(params ImmutableArray<ControlTerm> terms) => terms.Length == 1 ? terms[0] : new() { All = terms };

    internal static ControlTerm AnyOf(params ImmutableArray<ControlTerm> terms) => terms.Length == 1 ? terms[0] : new() { Any = terms };

    private static string Letters(int i) => (i < 26 ? "" : Letters((i / 26) - 1)) + (char)('a' + (i % 26));
}
