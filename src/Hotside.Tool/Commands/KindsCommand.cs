using System.CommandLine;
using Hotside.Circuits;
using Hotside.Kinds;

namespace Hotside.Tool.Commands;

/// <summary><c>hotside kinds [KIND]</c>: the kinds of parts, or one in full.</summary>
internal static class KindsCommand
{
    public static Command Make()
    {
        var kind = new Argument<string?>("KIND") { Description = "One kind, to see its terminals and ratings.", Arity = ArgumentArity.ZeroOrOne };
        var command = new Command("kinds", """
            Lists the kinds of parts with a line each, or one kind with its terminals, ratings and positions.

            Example:
              hotside kinds horn-relay
            """) { kind };
        command.SetAction(parsed =>
        {
            var output = parsed.InvocationConfiguration.Output;
            if (parsed.GetValue(kind) is not { } id)
            {
                int width = Catalogue.Standard.Kinds.Max(k => k.Id.Length);
                foreach (var each in Catalogue.Standard.Kinds) output.WriteLine($"{each.Id.PadRight(width)}  {each.Summary}");
                return ExitCode.Done;
            }
            if (Catalogue.Standard.Find(id) is { } found)
            {
                foreach (string line in Lines(found)) output.WriteLine(line);
                return ExitCode.Done;
            }
            string hint = Catalogue.Standard.Nearest(id) is { } near ? $" Did you mean \"{near}\"?" : " \"hotside kinds\" lists them.";
            parsed.InvocationConfiguration.Error.WriteLine($"hotside: there is no kind \"{id}\".{hint}");
            return ExitCode.WrongUsage;
        });
        return command;
    }

    private static IEnumerable<string> Lines(PartKind kind)
    {
        yield return $"{kind.Id}: {kind.Summary}";
        foreach (var terminal in kind.Terminals)
        {
            string aliases = terminal.Aliases.IsEmpty ? "" : $" (also {string.Join(", ", terminal.Aliases)})";
            yield return $"  terminal {terminal.Name,-6} {terminal.Meaning}{aliases}".TrimEnd();
        }
        if (kind.HasCaseTerminal) yield return $"  terminal case   {(kind.Case == CaseKind.Grounded ? "stands on the chassis unless said otherwise" : "the shell")}";
        foreach (var element in kind.Elements)
            yield return $"  inside   {element.Name}: {element.Type.ToString().ToLowerInvariant()}, {element.From} to {element.To}{(element.When is { } when ? ", when " + when : "")}";
        foreach (var actuator in kind.Actuators.Where(a => a.Drive != ActuatorDrive.Driven))
            yield return $"  position {actuator.Name}: {string.Join(" / ", actuator.Positions)}";
        if (!kind.Ratings.IsEmpty) yield return $"  ratings  {string.Join(", ", kind.Ratings.Select(r => r.Name))}";
        yield return $"  voltage {kind.Voltage}, polarity {kind.Polarity}";
    }
}
