using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>What is fixed for an acidifying method.</summary>
internal sealed record AcidifyingFacts(Method Method, Length? Depth, AcidifyingMaterial Material);
