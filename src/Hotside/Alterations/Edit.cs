using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Alterations;

/// <summary>One line of a change list: what is done to which things. Ends are as written; applying the list resolves them.</summary>
internal abstract record Edit;

/// <summary>Takes out parts and conductors.</summary>
internal sealed record TakeOutEdit(ImmutableArray<string> Ids) : Edit;

/// <summary>Fits new parts of one specification.</summary>
internal sealed record FitEdit(ImmutableArray<string> Ids, PartSpec Spec) : Edit;

/// <summary>
/// Puts new parts in the place of old ones. Name, joints, case, assembly and place are inherited where the specification does not state
/// them, ratings never.
/// Conductors stay by terminal name or alias, else by <paramref name="Map"/> (old terminal, new terminal).
/// </summary>
internal sealed record ReplaceEdit(ImmutableArray<string> Ids, PartSpec Spec, bool Reversed, ImmutableArray<(string Old, string New)> Map)
    : Edit;

/// <summary>Turns a part with two terminals round: what is at its terminals trades ends.</summary>
internal sealed record ReverseEdit(string Id) : Edit;

/// <summary>Changes what a part's case stands on.</summary>
internal sealed record RemountEdit(string Id, CaseMount Case) : Edit;

/// <summary>Runs a new conductor.</summary>
internal sealed record RunEdit(Conductor Conductor) : Edit;

/// <summary>Moves one end of a conductor, or both; with what changes of the wire itself.</summary>
internal sealed record MoveEdit(string Id, ImmutableArray<(End From, End To)> Ends, Wire? Wire) : Edit;

/// <summary>Renews conductors between the same ends; what <paramref name="Wire"/> leaves out stays.</summary>
internal sealed record RenewEdit(ImmutableArray<string> Ids, Wire Wire) : Edit;

/// <summary>Cuts a conductor to insert something: its first-written end stays and it now ends on <paramref name="First"/>; the rest runs
/// from <paramref name="Second"/>.</summary>
internal sealed record CutEdit(string Id, End First, End Second, string NewId) : Edit;

/// <summary>Work that changes no circuit.</summary>
internal sealed record DoEdit(string Id, string Sentence) : Edit;

/// <summary>What stands under one number: one or more edits, and why.</summary>
internal sealed record EditGroup(ImmutableArray<Edit> Edits, string? Reason);

/// <summary>A line that could not be read and was reported: what follows from it at these ids stays silent.</summary>
internal sealed record UnreadEdit(ImmutableArray<string> Ids) : Edit;
