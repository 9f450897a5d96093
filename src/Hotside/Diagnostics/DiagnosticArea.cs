namespace Hotside.Diagnostics;

/// <summary>What a diagnostic is about; the first digit of its code.</summary>
public enum DiagnosticArea
{
    /// <summary>The text of a job file or of a kind (HS1xxx): what is wrong there cannot be understood.</summary>
    Reading,

    /// <summary>A circuit as such (HS2xxx): it is understood, and something about it is wrong or doubtful.</summary>
    Circuit,

    /// <summary>What a circuit does (HS3xxx).</summary>
    Study,

    /// <summary>What an alteration changes (HS4xxx).</summary>
    Alteration,

    /// <summary>What is written (HS5xxx).</summary>
    Output,
}
