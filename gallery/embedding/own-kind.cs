// A part kind of one's own: a few lines of data, and it is checked, studied and drawn like any other.
//   dotnet run own-kind.cs
#:project ../../src/Hotside/Hotside.csproj

using Hotside;
using Hotside.Kinds;

Catalogue kinds = Catalogue.Standard.WithKind("""
    kind: spot-lamp
    letter: E
    summary: lamp with a switch in its handle
    terminals:
      feed: top, feed
    inner: after lamp
    case: grounded
    elements:
      lamp: lamp, feed to after lamp
      contact: contact, after lamp to case, when handle on
    actuators:
      handle: off / on, by hand
    ratings:
      V: lamp
      W: lamp
    """);

Job job = Job.Read("""
    hotside: 1
    title: Spot lamp
    system: 12 V, negative ground, sizes in AWG
    parts:
      G1: battery, 12 V
      F1: fuse, 10 A
      E1: spot-lamp, 12 V, 35 W, case on chassis
    wires:
      w1: G1.pos to F1.1, 14 RD
      w2: F1.2 to E1.feed, 14 RD
      w3: G1.neg to chassis, 2 BK
    """, new() { Kinds = kinds }).OrThrow();

job.Draw(View.Before).SaveSvg("spot-lamp.svg");
foreach (var load in job.Study.Before.Loads) Console.WriteLine($"{load.Name}: {load.Summary()}");
