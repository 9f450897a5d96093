using Hotside.Outputs;
using Hotside.Proposals;

namespace Hotside;

/// <summary>Writes a proposal.</summary>
public static class ProposalFile
{
    /// <summary>Writes the proposal as a job file in UTF-8: beside it first, then renamed, so that a failed run leaves what was there.</summary>
    /// <param name="proposal">The proposal.</param>
    /// <param name="path">The file; its folder exists.</param>
    /// <exception cref="ArgumentException"><paramref name="path"/> is empty.</exception>
    /// <exception cref="IOException">The file cannot be written, its folder does not exist, or the path is a folder.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be written.</exception>
    public static void SaveYaml(this Proposal proposal, string path)
    {
        ArgumentNullException.ThrowIfNull(proposal);
        SafeFile.Write(path, proposal.ToYaml);
    }
}
