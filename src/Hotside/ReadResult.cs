using System.Collections.Immutable;
using Hotside.Diagnostics;
using Hotside.Notation;

namespace Hotside;

/// <summary>What came of reading a job file: a job, or what is wrong with the file, or both.</summary>
public sealed class ReadResult
{
    private readonly ImmutableDictionary<string, SourceText> sources;

    internal ReadResult(Job? job, ImmutableArray<Diagnostic> diagnostics, ImmutableDictionary<string, SourceText> sources)
    {
        Job = job;
        Diagnostics = diagnostics;
        this.sources = sources;
    }

    /// <summary>The job; <see langword="null"/> when there is an error in the file that nothing can be made of.</summary>
    public Job? Job { get; }

    /// <summary>What is wrong or doubtful about the file, by place, then code; the circuits' own findings are <see cref="Job.Findings"/>.</summary>
    public ImmutableArray<Diagnostic> Diagnostics { get; }

    /// <summary>The job.</summary>
    /// <exception cref="JobException">There is none; the exception carries every diagnostic.</exception>
    public Job OrThrow() => Job ?? throw new JobException(Diagnostics);

    /// <summary>A diagnostic with the line of the file that it is about, and a mark below the place.</summary>
    /// <param name="diagnostic">A diagnostic of this result or of its job.</param>
    /// <returns>Lines without a line feed behind the last: the message, the excerpt where it has a place in a file that was read, and the hint where it has one.</returns>
    public string Print(Diagnostic diagnostic)
    {
        ArgumentNullException.ThrowIfNull(diagnostic);
        return DiagnosticPrinter.Print(diagnostic, span => sources.TryGetValue(span.File, out var source) ? source.Line(span.Line) : null);
    }
}
