using System.CommandLine;
using System.CommandLine.Parsing;

namespace Hotside.Tool.Commands;

/// <summary>Options that take one of a few words; a wrong one is told with those that there are.</summary>
internal static class Choice
{
    /// <summary>An option that takes one word.</summary>
    public static Option<T> Of<T>(string name, string description, T standard) where T : struct, Enum =>
        new(name) { Description = description, DefaultValueFactory = _ => standard, CustomParser = result => Read<T>(name, result).FirstOrDefault() };

    /// <summary>An option that takes several.</summary>
    public static Option<T[]> Several<T>(string name, string description, T standard) where T : struct, Enum =>
        new(name) { Description = description, DefaultValueFactory = _ => [standard], CustomParser = result => Read<T>(name, result), AllowMultipleArgumentsPerToken = true };

    private static T[] Read<T>(string name, ArgumentResult result) where T : struct, Enum
    {
        string[] words = Enum.GetNames<T>();
        foreach (string wrong in result.Tokens.Select(t => t.Value).Where(v => !words.Contains(v, StringComparer.OrdinalIgnoreCase)))
            result.AddError($"\"{wrong}\" is no {name}: it takes {string.Join(", ", words.Select(w => w.Length > 2 ? w.ToLowerInvariant() : w))}.");
        return [.. result.Tokens.Select(t => Enum.TryParse(t.Value, ignoreCase: true, out T value) ? value : default)];
    }
}
