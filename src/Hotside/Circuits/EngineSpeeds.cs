namespace Hotside.Circuits;

/// <summary>What is meant by the words for an engine's speed, in turns a minute (common practice, no source).</summary>
internal static class EngineSpeeds
{
    public const double Idle = 700, Cruise = 2500;
}
