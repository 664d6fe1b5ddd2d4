using System.Text.Json.Serialization;

namespace HortiCalc.Tests.Json;

/// <summary>The context of an application.</summary>
[JsonSerializable(typeof(Garden))]
public sealed partial class GardenJsonContext : JsonSerializerContext;
