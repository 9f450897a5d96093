namespace Hotside.Tool;

/// <summary>The job file that <c>hotside new</c> writes: sound as it stands, so that the first check and the first drawing succeed.</summary>
internal static class Template
{
    public const string Text = """
        # A job file for Hotside. A line a part, a line a wire, a line a change.
        # Everything behind two spaces and a # is a comment. "hotside kinds" lists the kinds of parts.
        hotside: 1
        title: Horn circuit
        title block:
          legal owner: (your workshop)
          identification number: JOB-001
          creator: (your initials)
          date of issue: 2026-01-31
        system: 6 V, positive ground, sizes in AWG

        parts:            # id: kind, name, ratings, "1 on X1" = terminal 1 is bolted straight to X1
          G1: battery, 6 V, 90 Ah
          X1: feed-rail, Battery feed
          F1: fuse, 15 A, 1 on X1
          H1: horn, 6 V, 8 A
          S1: push-button, Horn button

        wires:            # id: end to end, size and colour, length; an end is part.terminal or chassis
          w1: G1.neg to X1, 2 BK, 0.6 m
          w2: G1.pos to chassis, 2 BK, 0.5 m
          w3: F1.2 to H1.1, 14 BK, 1.4 m
          w4: H1.2 to S1.1, 14 YE, 1.1 m
          w5: S1.2 to chassis, 14 BK, 0.2 m

        settings:         # a name and the switches that are not at rest
          horn pressed: S1 pressed

        alteration:
          title: 12 V, negative ground
          system: 12 V, negative ground
          changes:        # take out, fit, replace, reverse, remount, run, move, renew, cut, do
            - replace F1: fuse, 10 A
            - replace H1: horn, 12 V, 5 A
            - replace G1 reversed: battery, 12 V, 60 Ah

        """;
}
