using HortiCalc.Beds;
using HortiCalc.Json;
using HortiCalc.Tests.Season;

namespace HortiCalc.Tests.Beds;

/// <summary>The sample of a shopping list, run as its readers run it.</summary>
[Collection("samples")]
public sealed class ShoppingListTests
{
    [Fact]
    public async Task ShoppingList_Json_IsAHaulThatTheCarCanCarry()
    {
        (int exit, string output, string errors) = await SampleRun.Run("shopping-list.cs", "--json");
        Assert.Equal((0, ""), (exit, errors));
        HaulPlan haul = HortiCalcJson.Deserialize<HaulPlan>(output);
        Assert.True(haul.Trips.Count >= 2, haul.ToString());
        Assert.All(haul.Trips, trip => Assert.True(trip.Mass <= haul.Vehicle.Payload, trip.ToString()));
        Assert.Equal(
            ["bark", "compost", "potting medium", "topsoil"],
            haul.Items.Select(item => item.Name[..item.Name.LastIndexOf(' ', item.Name.LastIndexOf(' ') - 1)]).Distinct().Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task ShoppingList_NoArguments_PrintsListWeightsTripsAndCautions()
    {
        (int exit, string output, string errors) = await SampleRun.Run("shopping-list.cs");
        Assert.Equal((0, ""), (exit, errors));
        Assert.StartsWith("INVENTED", output, StringComparison.Ordinal);
        Assert.Contains("Trip 2", output, StringComparison.Ordinal);
        Assert.Contains("for a need of 475 L", output, StringComparison.Ordinal); // 1.2 m x 3 m x 12 cm and a tenth
        Assert.Contains(BedCautions.ContaminatedFill.Sentence, output, StringComparison.Ordinal);
        Assert.Contains(BedCautions.HeavyLoad.Sentence, output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task ShoppingList_UsUnits_ReadsAndPrintsThem()
    {
        (int exit, string output, string errors) = await SampleRun.Run("shopping-list.cs", "--units", "us", "--payload", "3000", "--space", "100");
        Assert.Equal((0, ""), (exit, errors));
        Assert.Contains("1.5 tons (US), 3.7 cu yd: 1 trip", output, StringComparison.Ordinal);
        Assert.DoesNotContain(" kg", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task ShoppingList_BadOption_GivesOneLineAndNothingElse()
    {
        foreach ((string[] arguments, string line) in ((string[], string)[])
        [
            (["--payload", "much"], "--payload: expected a number such as 400, found much"),
            (["--colour"], "--colour: expected one of the options that --help lists"),
            (["--payload", "10"], "items was 32.5 kg; allowed: things up to the payload of 10 kg each."),
        ])
        {
            (int exit, string output, string errors) = await SampleRun.Run("shopping-list.cs", arguments);
            Assert.Equal((1, "", line), (exit, output, errors.TrimEnd()));
        }
    }
}
