using System.Text;

namespace Hotside.Tests.Studies;

/// <summary>Circuits like a vehicle's, made from a seed: contacts of several positions, relays, lamps, resistors, diodes, one or two batteries, both polarities.</summary>
internal sealed class GeneratedCircuit
{
    private ulong state;
    private readonly StringBuilder parts = new();
    private readonly StringBuilder wires = new();
    private readonly string[] splices;
    private int count;

    private GeneratedCircuit(int seed)
    {
        state = ((ulong)seed * 0x9E3779B97F4A7C15) + 0x1234567;
        splices = [.. Enumerable.Range(1, 2 + Next(4)).Select(i => "X" + i)];
    }

    /// <summary>The text of the circuit of a seed.</summary>
    public static string Of(int seed) => new GeneratedCircuit(seed).Make();

    /// <summary>The same with a battery disconnect in the hot lead of the first battery, in its ground lead, or in both, by the seed.</summary>
    public static string WithDisconnects(int seed)
    {
        string[] lines = Of(seed).Split('\n');
        string hot = lines[0].EndsWith("positive", StringComparison.Ordinal) ? "- G1.neg to " : "- G1.pos to ", cold = hot.Contains("neg", StringComparison.Ordinal) ? "- G1.pos to " : "- G1.neg to ";
        List<string> parts = [], wires = [];
        if (seed % 3 != 1) Cut("Q1", hot);
        if (seed % 3 != 0) Cut("Q2", cold);
        int first = Array.FindIndex(lines, l => l.StartsWith('-'));
        return string.Join('\n', [.. lines[..first], .. parts, .. lines[first..], .. wires]);

        void Cut(string id, string lead)
        {
            int at = Array.FindIndex(lines, l => l.StartsWith(lead, StringComparison.Ordinal));
            parts.Add(id + " disconnect");
            wires.Add($"- {id}.2 to {lines[at][lead.Length..]}");
            lines[at] = lead + id + ".1";
        }
    }

    /// <summary>The smallest text, lines taken out, of which something still holds.</summary>
    public static string Shrink(string text, Predicate<string> stillFails)
    {
        for (bool shrinks = true; shrinks;)
        {
            shrinks = false;
            string[] lines = text.Split('\n');
            for (int i = 1; i < lines.Length && !shrinks; i++)
            {
                string id = lines[i].Split(' ')[0];
                bool isWire = lines[i].StartsWith('-');
                string less = string.Join('\n', lines.Where((l, j) => j != i && (isWire || !l.Contains(" " + id + ".", StringComparison.Ordinal) && !l.EndsWith(" " + id, StringComparison.Ordinal))));
                bool fails;
                try { fails = stillFails(less); }
                catch (ArgumentException) { fails = false; }
                if (!fails) continue;
                text = less;
                shrinks = true;
            }
        }
        return text;
    }

    private string Make()
    {
        foreach (string splice in splices) Part(splice, "rail");
        bool isPositive = Next(2) == 0;
        string hot = isPositive ? "neg" : "pos", cold = isPositive ? "pos" : "neg";
        Part("G1", "battery 12V");
        Wire("G1." + cold, "chassis");
        Wire("G1." + hot, splices[0]);
        if (Next(8) == 0)
        {
            Part("G2", Next(2) == 0 ? "battery 6V" : "battery 12V");
            Wire("G2." + cold, Next(3) == 0 ? "G1." + hot : "chassis");
            Wire("G2." + hot, splices[^1]);
        }
        int switches = 2 + Next(3), relays = Next(4), loads = 2 + Next(4), others = Next(3);
        for (int i = 0; i < switches; i++) Add("S", Pick("switch", "push-button", "break-button", "turn-switch", "changeover", "condition", "selector"));
        for (int i = 0; i < relays; i++) Add("K", Pick("relay 12V 0.15A", "relay 12V 0.15A", "relay-changeover 12V 0.15A", "relay-make-and-break 12V 0.15A", "relay-two-makes 6V 0.15A", "starter-solenoid 12V 10A"));
        for (int i = 0; i < loads; i++) Add("E", Pick("lamp 12V 21W", "lamp 12V 2W", "led-lamp 12V 2W", "motor 12V 5A", "tail-stop-lamp 12V 10W"));
        for (int i = 0; i < others; i++) Add("R", Pick("resistor 4ohm", "resistor 40ohm", "diode", "fuse"));
        return $"12 V, {(isPositive ? "positive" : "negative")}\n{parts}{wires}".TrimEnd();
    }

    private void Add(string letter, string kind)
    {
        string id = letter + ++count;
        Part(id, kind);
        var terminals = TestKinds.Of(kind.Split(' ')[0]).Terminals;
        for (int i = 0; i < terminals.Length; i++) Wire(id + "." + terminals[i].Name, Node(i, terminals.Length));
    }

    // The first terminal lies nearer to the feed as a rule, the last nearer to the chassis.
    private string Node(int terminal, int of)
    {
        int lean = Next(5);
        if (terminal == of - 1 && lean < 2) return "chassis";
        if (terminal == 0 && lean < 2) return splices[0];
        return Next(14) == 0 ? "chassis" : splices[Next(splices.Length)];
    }

    private void Part(string id, string kind) => parts.Append(id).Append(' ').Append(kind).Append('\n');

    private void Wire(string from, string to) => wires.Append("- ").Append(from).Append(" to ").Append(to).Append('\n');

    private string Pick(params string[] choices) => choices[Next(choices.Length)];

    // A linear congruential generator (Knuth's MMIX constants), so that a seed means the same circuit everywhere.
    private int Next(int below)
    {
        state = (state * 6364136223846793005) + 1442695040888963407;
        return (int)((state >> 33) % (ulong)below);
    }
}
