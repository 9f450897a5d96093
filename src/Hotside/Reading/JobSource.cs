using Hotside.Kinds;

namespace Hotside.Reading;

/// <summary>The text from which a job was read, and how it was read.</summary>
/// <param name="File">The name that places bear.</param>
/// <param name="Text">The text as it was given.</param>
/// <param name="Kinds">The kinds that it may use.</param>
/// <param name="Include">The text of another file by its path from the job's folder.</param>
internal sealed record JobSource(string File, string Text, Catalogue Kinds, Func<string, string?> Include);
