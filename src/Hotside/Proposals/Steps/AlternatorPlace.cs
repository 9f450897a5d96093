using Hotside.Circuits;

namespace Hotside.Proposals.Steps;

/// <summary>An alternator that was fitted and still wants its size and its charge wire.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Outlet">Where the old machine fed the vehicle; <see langword="null"/>: nowhere that is left.</param>
/// <param name="Metres">How long the old way was.</param>
internal sealed record AlternatorPlace(string Id, End? Outlet, double Metres);
