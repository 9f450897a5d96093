using System.Globalization;
using Hotside.Symbols.Shapes;
using Hotside.Tests.Outputs;
using Hotside.Tests.Support;

namespace Hotside.Tests.Packs;

/// <summary>Jobs whose packs are looked at, each made once.</summary>
internal static class PackJobs
{
    public const string Ninety = "Horn of the left front wing behind the headlamp bracket with its rubber mounted bell, old1";
    public const string German = "Scheinwerferreinigungsanlagenrelaissockelhalterung mit Übertemperaturschutzschalter";
    public const string Finnish = "Äänimerkinantolaitteen käyttökytkimen varmuusrele, etulokasuojan jäähdytinsäleikön takana";

    /// <summary>The pages without schematics, which have tests of their own.</summary>
    public static readonly string[] Written = [.. WorkPack.AllPages.Where(p => p != "schematics")];

    /// <summary>Those without the check sheets, which take a while.</summary>
    public static readonly string[] Quick = [.. Written.Where(p => !p.StartsWith("check-", StringComparison.Ordinal))];

    private static readonly Lazy<WorkPack> HornPack = new(() => GalleryJobs.Read("horn").Pack()), VanPack = new(() => GalleryJobs.Read("van").Pack(new() { Only = [.. Quick] }));

    /// <summary>The horn, all pages, A4.</summary>
    public static WorkPack Horn => HornPack.Value;

    /// <summary>The whole van, all written pages but the check sheets, A4.</summary>
    public static WorkPack Van => VanPack.Value;

    /// <summary>The text of the horn's job file.</summary>
    public static string HornText { get; } = File.ReadAllText(Repository.Path("gallery", "horn", "job.yaml"));

    /// <summary>The horn with names that are hard to set.</summary>
    public static string Named(string name) => HornText.Replace("S1: push-button, Horn button", $"S1: push-button, '{name}'", StringComparison.Ordinal)
        .Replace("relay, Horn relay", $"relay, '{name}'", StringComparison.Ordinal).Replace("fuse, 15 A", $"fuse, '{name}', 15 A", StringComparison.Ordinal);

    /// <summary>So many lamps, each replaced, on a fuse and a switch of its own, with a wire that nobody has measured.</summary>
    public static string Lamps(int count)
    {
        string Lines(Func<int, string> line) => string.Concat(Enumerable.Range(1, count).Select(n => line(n) + "\n"));
        string N(int n) => n.ToString(CultureInfo.InvariantCulture);
        return "hotside: 1\ntitle: Many lamps\nsystem: 6 V, positive ground, sizes in AWG\nparts:\n  G1: battery, 6 V, 90 Ah\n  X1: feed-rail, Battery feed\n"
            + Lines(n => $"  F{N(n)}: fuse, 5 A, 1 on X1\n  S{N(n)}: switch, 10 A\n  E{N(n)}: lamp, 6 V, 5 W")
            + "wires:\n  w1: G1.neg to X1, 2 BK, 0.5 m\n  w2: G1.pos to chassis, 2 BK, 0.5 m\n" + Lines(n => $"  a{N(n)}: F{N(n)}.2 to S{N(n)}.1, 14 BK, 1 m\n  b{N(n)}: S{N(n)}.2 to E{N(n)}.1, 14 BK, 1 m\n  c{N(n)}: E{N(n)}.2 to chassis, 14 BK, 0.3 m")
            + "alteration:\n  title: Half as bright\n  changes:\n" + Lines(n => $"    - replace E{N(n)}: lamp, 6 V, 3 W, because the old one was too bright for the number plate");
    }

    /// <summary>All shapes of a sheet.</summary>
    public static IEnumerable<Shape> ShapesOf(PackSheet sheet) => sheet.Drawing.Scene.Groups.SelectMany(g => g.Shapes);

    /// <summary>All texts of a page of the pack, over all its sheets.</summary>
    public static string[] TextsOf(WorkPack pack, string page) => [.. pack.Sheets.SelectMany(s => s.Drawing.Scene.Groups).Where(g => g.Classes.Contains(page)).SelectMany(g => g.Shapes).OfType<TextShape>().Select(t => t.Text)];
}
