namespace Hotside.Wording;

/// <summary>Whose trade words a sheet uses. Ids, terminals, the user's own names and the job file's syntax never change.</summary>
public enum Words
{
    /// <summary>Ground, generator, splice.</summary>
    American,

    /// <summary>Earth, dynamo, joint.</summary>
    British,
}
