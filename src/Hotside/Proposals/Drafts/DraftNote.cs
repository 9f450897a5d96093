namespace Hotside.Proposals.Drafts;

/// <summary>What is said of a part or wire that the draft alters.</summary>
internal sealed class DraftNote
{
    /// <summary>Why, for its line.</summary>
    public string? Reason { get; set; }

    /// <summary>What stands above its line.</summary>
    public List<string> Comments { get; } = [];

    /// <summary>What is asked.</summary>
    public List<string> Questions { get; } = [];

    /// <summary>Whether its length is a guess.</summary>
    public bool IsToMeasure { get; set; }

    /// <summary>Whether a fuse was fitted where it begins.</summary>
    public bool IsFused { get; set; }

    /// <summary>What is to be done to it by hand, without a change of the circuit.</summary>
    public List<string> Works { get; } = [];
}
