using Hotside.Circuits;

namespace Hotside.Studies.Switching;

/// <summary>Tells what is on in a named setting.</summary>
internal static class SettingJudge
{
    public static SettingStudy Judge(SwitchingStudy study, Setting setting)
    {
        var positions = study.Positions;
        var settling = study.Whole.Settling;
        int[] state = new int[positions.Space.VariableCount];
        foreach (var set in setting.Positions)
            if (positions.Free.FirstOrDefault(v => v.Part == set.Part && v.Actuator.Name == set.Actuator) is { } variable)
                state[positions.NumberOf(variable)!.Value] = variable.Actuator.Positions.IndexOf(set.Position);
        bool isShort = study.Whole.Short.HoldsIn(state);
        var names = study.Whole.Feeding.Loads.Select((feed, i) => (Name: study.NameOf(feed.Load), feed.Load.Element.IsInternal, Index: i)).Where(l => !l.IsInternal).ToArray();
        bool IsOn(int index) => !isShort && settling.Settled(study.Whole.Feeding.Loads[index].Fed).HoldsIn(state);
        bool IsInSeries(int index) => !isShort && !IsOn(index) && settling.Settled(study.InSeries(index)).HoldsIn(state);
        int[] rest = settling.RestOf(state);
        return new(setting, [.. names.Where(l => IsOn(l.Index)).Select(l => l.Name)], [.. names.Where(l => IsInSeries(l.Index)).Select(l => l.Name)],
            [.. positions.Driven.Select(v => Put(v, rest[positions.NumberOf(v)!.Value]))])
        {
            Positions = [.. positions.Free.Select(v => Put(v, state[positions.NumberOf(v)!.Value]))],
            IsShort = isShort,
            IsUnsettled = settling.Searches.Any(s => (s.NeverRests | s.Races).HoldsIn(rest)),
        };
    }

    private static SetPosition Put(Variable variable, int position) => new(variable.Part, variable.Actuator.Name, variable.Actuator.Positions[position]);
}
