using System.Reflection;
using System.Runtime.CompilerServices;
using Hotside.Alterations;
using Hotside.Circuits;
using Hotside.Diagnostics;
using Hotside.Kinds;
using Hotside.Sizing;
using Hotside.Studies;
using Hotside.Studies.Figures;
using UnitsNet;

namespace Hotside.Tests.Architecture;

/// <summary>Who passes null where the signature takes none is told which argument it was, by every public method and by every constructor that is more than a list of properties.</summary>
public class NullArgumentTests
{
    private static readonly Circuit Built = Begin().Build();
    private static readonly Job Made = Job.From(Begin().Build().Alter("Test").Build());
    private static readonly Drawing Drawn = Made.Draw();

    private static CircuitBuilder Begin() => new CircuitBuilder(ElectricPotential.FromVolts(6), Ground.Positive)
        .Part("G1", Kind.Battery).Part("H1", Kind.Horn)
        .Wire("w1", "G1.neg", "H1.1").Wire("w2", "H1.2", "chassis").Wire("w3", "G1.pos", "chassis")
        .Setting("still");

    [Fact]
    public async Task Null_is_refused_by_the_name_of_the_argument()
    {
        var wrong = new List<string>();
        int tried = 0;
        foreach (var method in Methods())
            foreach (var parameter in method.GetParameters().Where(TakesNoNull))
            {
                tried++;
                var told = await Record.ExceptionAsync(() => Call(method, parameter));
                if (told is not ArgumentException refused || refused.ParamName != parameter.Name)
                    wrong.Add($"{method.DeclaringType!.Name}.{method.Name}, {parameter.Name}: {told?.GetType().Name ?? "nothing"} {(told as ArgumentException)?.ParamName}");
            }
        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
        Assert.True(tried > 80, $"only {tried} arguments were tried");
    }

    private static IEnumerable<MethodBase> Methods() =>
        typeof(Job).Assembly.GetExportedTypes().Where(t => t is { IsEnum: false } && !typeof(Delegate).IsAssignableFrom(t)).SelectMany(t =>
            t.GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly).Where(m => !m.IsSpecialName && m.Name != nameof(Equals))
                .Concat<MethodBase>(t.GetMethods().Any(m => m.Name == "Deconstruct") ? [] : t.GetConstructors()))
            .Where(m => m.GetCustomAttribute<CompilerGeneratedAttribute>() is null);

    private static bool TakesNoNull(ParameterInfo parameter) =>
        !parameter.ParameterType.IsValueType && !parameter.IsOut && !parameter.ParameterType.IsByRef && new NullabilityInfoContext().Create(parameter).WriteState == NullabilityState.NotNull;

    // All other arguments are good ones, so that what is refused is the null.
    private static async Task Call(MethodBase method, ParameterInfo absent)
    {
        object?[] arguments = [.. method.GetParameters().Select(p => p.Position == absent.Position ? null : Good(p))];
        object? answer = method is ConstructorInfo make
            ? make.Invoke(BindingFlags.DoNotWrapExceptions, null, arguments, null)
            : method.Invoke(method.IsStatic ? null : Good(method.DeclaringType!, ""), BindingFlags.DoNotWrapExceptions, null, arguments, null);
        if (answer is Task task) await task;
    }

    private static object? Good(ParameterInfo parameter) =>
        parameter.HasDefaultValue ? parameter.DefaultValue
        // A builder of circuits is given new ids, all else those that are there.
        : parameter is { Name: "id", Member.DeclaringType: { } type } && type == typeof(CircuitBuilder) ? "w8"
        : Good(parameter.ParameterType, parameter.Name!);

    private static object Good(Type type, string name) =>
        type == typeof(string) ? Word(name)
        : Samples.TryGetValue(type, out var make) ? make()
        : type.IsValueType ? Activator.CreateInstance(type)!
        : throw new InvalidOperationException($"There is no sample of {type}; add one to this test.");

    private static string Word(string name) => name switch
    {
        "from" or "first" => "H1.1",
        "to" or "second" or "on" => "chassis",
        "path" => Path.Combine(Path.GetTempPath(), "hotside-no-such-folder", "unused"),
        "load" or "part" or "partId" => "H1",
        "newId" => "w9",
        "colour" => "BK",
        "text" => "#000000",
        _ => "w1",
    };

    private static Dictionary<Type, Func<object>> Samples { get; } = new()
    {
        [typeof(Circuit)] = () => Built,
        [typeof(Hotside.Diagnoses.Diagnosis)] = () => Made.Diagnose(new() { Dead = ["H1"] }),
        [typeof(Hotside.Diagnoses.DiagnosisLists)] = () => Hotside.Diagnoses.DiagnosisLists.Standard,
        [typeof(CircuitBuilder)] = Begin,
        [typeof(Part)] = () => Built.Parts[0],
        [typeof(PartKind)] = () => Kind.Horn,
        [typeof(WireSize)] = () => WireSize.Awg(14),
        [typeof(IQuantity)] = () => Ratio.FromPercent(50),
        [typeof(ElectricPotential)] = () => ElectricPotential.FromVolts(6),
        [typeof(Wire)] = () => new Wire { Name = "feed" },
        [typeof(Alteration)] = () => Made.Alteration,
        [typeof(AlterationBuilder)] = () => Built.Alter("Test"),
        [typeof(Catalogue)] = () => Catalogue.Standard,
        [typeof(Job)] = () => Made,
        [typeof(ReadResult)] = () => Job.Read("hotside: 1"),
        [typeof(Diagnostic)] = () => new Diagnostic(DiagnosticKind.All[0], "wrong"),
        [typeof(CircuitSizes)] = () => Made.Sizes.Before,
        [typeof(Setting)] = () => new Setting("still", [], []),
        [typeof(CircuitStudy)] = () => Made.Study.Before,
        [typeof(LoadStudy)] = () => Made.Study.Before.Loads[0],
        [typeof(SettingFigures)] = () => Made.Study.Before.Setting("still").Figures,
        [typeof(string[])] = () => new[] { "still" },
        [typeof(ControlTerm)] = () => ControlTerm.AllOf([]),
        [typeof(Predicate<PositionSet>)] = () => new Predicate<PositionSet>(_ => true),
        [typeof(Drawing)] = () => Drawn,
        [typeof(WireList)] = () => WireList.Of(Made),
        [typeof(Hotside.CheckSheets.CheckSheet)] = () => Made.CheckSheet(),
        [typeof(Hotside.Proposals.Proposal)] = () => Made.Proposal(new() { To = "24 V negative" }),
        [typeof(OrderTable)] = () => OrderTable.Of(Made),
        [typeof(WorkPack)] = () => Made.Pack(new() { Only = ["wires"] }),
        [typeof(Stream)] = () => new MemoryStream(),
        [typeof(IEnumerable<string>)] = () => new[] { "w1" },
        [typeof(IEnumerable<Drawing>)] = () => new[] { Drawn },
        [typeof(IEnumerable<PartKind>)] = () => new[] { Kind.Horn },
        [typeof((string, string)[])] = () => Array.Empty<(string, string)>(),
    };
}
