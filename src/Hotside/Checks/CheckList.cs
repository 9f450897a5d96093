using System.Collections.Immutable;
using Hotside.Checks.Charging;
using Hotside.Checks.Gauges;
using Hotside.Checks.Joints;
using Hotside.Checks.Lamps;
using Hotside.Checks.Loads;
using Hotside.Checks.Polarity;
using Hotside.Checks.Protection;
using Hotside.Checks.Starting;
using Hotside.Diagnostics;
using Hotside.Sizing;
using Hotside.Studies;

namespace Hotside.Checks;

/// <summary>All checks, in one place. To add one: its file, and a line here.</summary>
internal static class CheckList
{
    private static readonly Func<CheckedCircuit, IEnumerable<Diagnostic>>[] ofCircuit =
    [
        UnfusedRun.Of,
        FarProtection.Of,
        ParallelFeeds.Of,
        SharedHeadlampFuse.Of,
        ChargeLead.Of,
        BreakingCapacity.Of,
        FusibleLinkSize.Of,
        FuseOverWire.Of,
        FuseUnderLoad.Of,
        WireOverAmpacity.Of,
        NotSized.Of,
        ChargeWire.Of,
        CyclingBreaker.Of,
        ContactLoad.Of,
        PointsCurrent.Of,
        WrongVolts.Of,
        TooFewVolts.Of,
        AlwaysOn.Of,
        CaseGrounded.Of,
        GroundSwitchedAfloat.Of,
        VoltageDrop.Of,
        RunsBackward.OfStamped,
        SuppressorReversed.Of,
        SocketPolarity.Of,
        FieldMismatch.Of,
        RunOn.Of,
        Exciter.Of,
        AmmeterLoad.Of,
        StarterPastAmmeter.Of,
        Budget.Of,
        BatteryHours.Of,
        DisconnectInChargePath.Of,
        CrankingVolts.Of,
        CableDrop.Of,
        AlwaysCranking.Of,
        BondingStrap.Of,
        DropperHeat.Of,
        SharedDropper.Of,
        LimiterGround.Of,
        FlasherLoad.Of,
        BrakeOverTurn.Of,
        PilotWithLeds.Of,
        ConnectorLoad.Of,
        CrowdedStud.Of,
        BadWire.Of,
        BadJointKept.Of,
        HotPlace.Of,
        HalfConnector.Of,
        OneEndOnly.Of,
        LiveMagneto.Of,
        UnsuppressedCoil.Of,
    ];

    private static readonly Func<CheckedAlteration, IEnumerable<Diagnostic>>[] ofAlteration =
    [
        ForgottenPart.Of,
        DestroyedByReversal.Of,
        RunsBackward.Of,
        GeneratorNotPolarised.Of,
        PolarisedAlternator.Of,
        AmmeterReversed.Of,
        GaugeError.Of,
        ThinnerWire.Of,
        ColourCustom.Of,
    ];

    /// <summary>What all checks find: the circuit that counts is the altered one; what changes is looked at only where something does.</summary>
    /// <param name="study">The study of both circuits.</param>
    /// <param name="sizes">What their conductors carry, may carry and need.</param>
    /// <param name="cancel">Ends the work early.</param>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was triggered.</exception>
    public static ImmutableArray<Diagnostic> Run(Study study, Lazy<SizeStudy> sizes, CancellationToken cancel = default)
    {
        CheckedAlteration alteration = new(study, sizes);
        var found = ImmutableArray.CreateBuilder<Diagnostic>();
        foreach (var check in ofCircuit)
        {
            cancel.ThrowIfCancellationRequested();
            found.AddRange(check(alteration.After));
        }
        if (ReferenceEquals(alteration.Before, alteration.After)) return found.ToImmutable();
        foreach (var check in ofAlteration)
        {
            cancel.ThrowIfCancellationRequested();
            found.AddRange(check(alteration));
        }
        return found.ToImmutable();
    }
}
