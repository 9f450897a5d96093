using System.Collections.Immutable;
using Hotside.Diagnostics;

namespace Hotside.Alterations;

/// <summary>What came of applying a list of changes. The alteration is missing when there are errors.</summary>
internal sealed record EditResult(Alteration? Alteration, ImmutableArray<EditProblem> Problems);

/// <summary>Something wrong with one edit of one group, both counted from 0.</summary>
internal sealed record EditProblem(Diagnostic Diagnostic, int Group, int Edit);
