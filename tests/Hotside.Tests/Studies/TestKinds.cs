using System.Collections.Immutable;
using Hotside.Circuits;

namespace Hotside.Tests.Studies;

/// <summary>Part kinds with just what these tests need, in a short form: a kind and its terminals, then a line an element (name, type, ends, words) or an actuator (name = positions, words).</summary>
internal static class TestKinds
{
    private const string Text = """
        battery: pos neg
          cells source pos neg
        generator: A
          armature source A case either when engine running
          engine = stopped running auto shared
          case grounded
        generator-own: A
          armature source A case either when run running
          run = stopped running auto
          case grounded
        alternator: B+ D+
          output source B+ case when engine running
          exciter source D+ case when engine running
          rotor coil D+ case oneway internal
          engine = stopped running auto shared
          case grounded
        cut-out: BAT GEN
          voltage~coil coil GEN case internal
          contact contact GEN BAT when armature pulled
          armature = released pulled pulled<voltage~coil
          case grounded
        rail: 1
        metal: 1
        fuse: 1 2
          fuse fuse 1 2
        disconnect: 1 2
          class Q
          contact contact 1 2 when knob on
          knob = off on
        push-button: 1 2
          contact contact 1 2 when button pressed
          button = released pressed
        break-button: 1 2
          contact contact 1 2 when button released
          button = released pressed
        switch: 1 2
          contact contact 1 2 when lever on
          lever = off on
        closed-switch: 1 2
          contact contact 1 2 when lever closed
          lever = closed open
        switch-open-closed: 1 2
          contact contact 1 2 when lever closed
          lever = open closed
        condition: 1 2
          contact contact 1 2 when state closed
          state = open closed auto
        oil-switch: 1
          contact contact 1 case when pressure none
          pressure = none up auto
          case grounded
        changeover: 0 r p
          rest contact 0 r when lever rest
          pressed contact 0 p when lever pressed
          lever = rest pressed
        crossover: a1 a2 b1 b2
          one contact a1 b1 when lever straight
          two contact a2 b2 when lever straight
          three contact a1 b2 when lever crossed
          four contact a2 b1 when lever crossed
          lever = straight crossed
        turn-switch: 49a L R
          left contact 49a L when turn left or both
          right contact 49a R when turn right or both
          turn = off left right both
        selector: 1 2 C
          one contact 1 C when knob one or all
          two contact 2 C when knob other or all
          knob = none one all other
        ignition-switch: 30 75 15 50
          accessories contact 30 75 when key acc or run
          ignition contact 30 15 when key run or start
          start contact 30 50 when key start
          key = locked acc run start
        relay: 86 85 30 87
          coil coil 86 85
          contact contact 30 87 when coil pulled
          coil = released pulled pulled<coil
        relay-changeover: 86 85 30 87 87a
          coil coil 86 85
          make contact 30 87 when coil pulled
          break contact 30 87a when coil released
          coil = released pulled pulled<coil
        relay-two-makes: 86 85 13 14 23 24
          coil coil 86 85
          first contact 13 14 when coil pulled
          second contact 23 24 when coil pulled
          coil = released pulled pulled<coil
        relay-make-and-break: 86 85 31 32 23 24
          coil coil 86 85
          break contact 31 32 when coil released
          make contact 23 24 when coil pulled
          coil = released pulled pulled<coil
        latching-relay: S R C 30 87
          set coil S C
          reset coil R C
          contact contact 30 87 when armature over
          armature = back over over<set back<reset stays
        starter-relay-internal: BAT MOT S
          coil coil BAT S
          contact contact BAT MOT when coil pulled
          coil = released pulled pulled<coil
        starter-solenoid: B M S
          pull-in coil S M
          hold-in coil S case
          main contact B M when plunger pulled
          plunger = released pulled pulled<pull-in pulled<hold-in kept<hold-in
          case grounded
        overdrive-solenoid: 1
          pull coil 1 n
          cutter contact n case nocontrol when plunger out
          hold coil 1 case
          plunger = out in in<pull kept<hold
          case grounded
        buzzer-relay: 1 2
          contact contact 1 n when coil released
          coil coil n 2
          coil = released pulled pulled<coil
        wiper: 53 53a 53e
          motor motor 53 case
          cam contact 53a 53e when arms away
          park contact 53e case when arms parked
          arms = parked away auto
          case grounded
        wiper-plain: 53 53a 53e
          motor motor 53 case
          cam contact 53a 53e when arms away
          arms = parked away auto
          case grounded
        wiper-switch: 53a 53e 53
          run contact 53a 53 when knob on
          park contact 53e 53 when knob off
          knob = off on
        lamp: 1 2
          lamp lamp 1 2
        led-lamp: 1 2
          lamp lamp 1 2 oneway
        motor: 1 2
          motor motor 1 2
        starter: 1
          motor motor 1 case
          case grounded
        horn: 1 2
          horn horn 1 2
        gauge: I S
          heater gauge I S
        coil: 15 1
          primary coil 15 1
        tail-stop-lamp: 54 58 31
          tail lamp 58 31
          stop lamp 54 31
        resistor: 1 2
          resistor resistor 1 2
        sender: 1
          sender sender 1 case
          case grounded
        limiter: in out
          drop dropper in out
        diode: A K
          diode diode A K
        flasher: 49 49a
          heater resistor 49 49a
          contact contact 49 49a when flash lit
          flash = lit dark auto cycles
        """;

    private static readonly Dictionary<string, PartKind> All = Read(Text);

    public static PartKind Of(string id) => All[id];

    /// <summary>A kind with one element, made on the spot; for generated circuits.</summary>
    public static PartKind Read(string id, string text) => Read(text)[id];

    private static Dictionary<string, PartKind> Read(string text)
    {
        Dictionary<string, PartKind> kinds = [];
        string? id = null;
        foreach (string line in text.Split('\n').Where(l => l.Trim().Length > 0))
        {
            string[] words = line.Trim().Split(' ');
            if (!line.StartsWith(' '))
            {
                id = words[0].TrimEnd(':');
                kinds[id] = new(id) { Terminals = [.. words[1..].Select(t => new KindTerminal(t, TerminalSide.Any))], Ratings = [] };
            }
            else if (words[0] == "class") kinds[id!] = kinds[id!] with { Letter = words[1] };
            else if (words[0] == "case") kinds[id!] = kinds[id!] with { Case = CaseKind.Grounded };
            else if (words[1] == "=") kinds[id!] = kinds[id!] with { Actuators = kinds[id!].Actuators.Add(ActuatorOf(words)) };
            else kinds[id!] = kinds[id!] with { Elements = kinds[id!].Elements.Add(ElementOf(words)) };
        }
        foreach (string key in kinds.Keys.ToArray()) kinds[key] = Finish(kinds[key]);
        return kinds;
    }

    private static PartKind Finish(PartKind kind)
    {
        ImmutableArray<string> rated = [.. kind.Elements.Select(e => e.Name)];
        return rated.IsEmpty ? kind : kind with
        {
            Ratings = [new("V", Unit.Volt, rated, false), new("A", Unit.Ampere, rated, false), new("W", Unit.Watt, rated, false), new("ohm", Unit.Ohm, rated, false)],
            InnerNodes = [.. kind.Elements.SelectMany(e => new[] { e.From, e.To }).Distinct().Where(n => n != "case" && kind.Terminals.All(t => t.Name != n))],
        };
    }

    private static Element ElementOf(string[] words)
    {
        int when = Array.IndexOf(words, "when");
        string[] flags = words[4..(when < 0 ? words.Length : when)];
        return new(Spaced(words[0]), Enum.Parse<ElementType>(words[1], ignoreCase: true), words[2], words[3])
        {
            IsOneWay = flags.Contains("oneway"),
            TakesEitherPolarity = flags.Contains("either"),
            IsInternal = flags.Contains("internal"),
            IsNoControl = flags.Contains("nocontrol"),
            When = when < 0 ? null : new([.. string.Join(' ', words[(when + 1)..]).Split(" and ").Select(TestOf)]),
        };
    }

    private static string Spaced(string name) => name.Replace('~', ' ');

    private static PositionTest TestOf(string text)
    {
        int space = text.IndexOf(' ', StringComparison.Ordinal);
        return new(text[..space], [.. text[(space + 1)..].Split(" or ")]);
    }

    private static Actuator ActuatorOf(string[] words)
    {
        string[] rest = words[2..];
        string[] flags = ["auto", "shared", "cycles", "nocontrol", "stays"];
        var pulls = rest.Where(w => w.Contains('<', StringComparison.Ordinal) && !w.StartsWith("kept<", StringComparison.Ordinal)).Select(w => w.Split('<'))
            .GroupBy(p => p[0]).Select(g => new Pull(g.Key, [.. g.Select(p => Spaced(p[1]))])).ToImmutableArray();
        var drive = pulls.Length > 0 ? ActuatorDrive.Driven : rest.Contains("auto") ? ActuatorDrive.Automatic : ActuatorDrive.Hand;
        return new(words[0], [.. rest.Where(w => !flags.Contains(w) && !w.Contains('<', StringComparison.Ordinal))], drive)
        {
            IsShared = rest.Contains("shared"),
            Cycles = rest.Contains("cycles"),
            IsNoControl = rest.Contains("nocontrol"),
            Stays = rest.Contains("stays"),
            Pulls = pulls,
            KeptBy = [.. rest.Where(w => w.StartsWith("kept<", StringComparison.Ordinal)).Select(w => Spaced(w[5..]))],
        };
    }
}
