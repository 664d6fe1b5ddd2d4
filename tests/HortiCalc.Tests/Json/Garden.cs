using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Tests.Json;

/// <summary>A type of an application that holds quantities and results of the library.</summary>
public sealed class Garden
{
    public string Name { get; set; } = "";

    public Area Area { get; set; }

    public Length? Border { get; set; }

    public Estimate<Length>? Depth { get; set; }
}
