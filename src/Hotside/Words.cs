namespace Hotside;

/// <summary>Whose words a text uses. Ids, terminals, colour codes and the notation never change.</summary>
public enum Words
{
    /// <summary>Ground, generator, splice.</summary>
    American,

    /// <summary>Earth, dynamo, joint.</summary>
    British,
}
