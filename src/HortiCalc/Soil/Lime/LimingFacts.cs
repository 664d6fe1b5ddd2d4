using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>What is fixed for a liming method.</summary>
internal sealed record LimingFacts(Method Method, Length? Depth, LimingMaterial Material, string Fineness);
