using Hotside.Diagnostics;

namespace Hotside.Checks.Protection;

/// <summary>Row 65: nothing protects the charge lead from the battery's side.</summary>
internal static class ChargeLead
{
    public static readonly DiagnosticKind Kind = new("HS3365", Severity.Error, "Charge lead without a fuse at the battery",
        "{0} joins {1} to {2} with no fuse or link: a chafed lead or a failed diode is fed by the battery until something burns")
    {
        Source = "common practice, no source: a fuse or link at the battery's end, 1.25 to 1.5 times the machine's amperes",
    };

    public static IEnumerable<Diagnostic> Of(CheckedCircuit circuit) =>
        from branch in circuit.Unfused
        where !branch.Machines.IsEmpty
        select Kind.Of([.. branch.Bare.Select(c => c.Id), .. branch.Machines.Select(m => m.Id)], branch.Bare[0].Id, Listing.Of(branch.Machines.Select(m => m.Id)), branch.Source.Id) with
        {
            Hint = "fit a fuse or fusible link where the lead leaves the battery or the starter's stud, with the battery out; never open it while the engine runs",
        };
}
