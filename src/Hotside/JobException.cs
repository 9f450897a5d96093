using System.Collections.Immutable;
using Hotside.Diagnostics;

namespace Hotside;

/// <summary>A job file could not be read; thrown by <see cref="ReadResult.OrThrow"/> only. The message holds every diagnostic.</summary>
public sealed class JobException : Exception
{
    internal JobException(ImmutableArray<Diagnostic> diagnostics) : base(string.Join('\n', diagnostics)) => Diagnostics = diagnostics;

    /// <summary>What is wrong, in the order of the file.</summary>
    public ImmutableArray<Diagnostic> Diagnostics { get; }
}
