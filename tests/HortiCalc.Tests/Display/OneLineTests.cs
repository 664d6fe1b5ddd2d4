using System.Globalization;
using HortiCalc.Beds;
using HortiCalc.Climate;
using HortiCalc.Containers;
using HortiCalc.Evidence;
using HortiCalc.Mixes;
using HortiCalc.Season;
using HortiCalc.Soil;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Display;

/// <summary>Plain inputs and reasons in one line, the same whatever the culture of the machine.</summary>
public class OneLineTests
{
    private static readonly Source Notes = new("notes", "own notes", "the grower", 2026, null, SourceKind.Given);

    private static readonly Crop Tomato = new(
        "tomato", new Ph(5.5), new Ph(6.8), Temperature.FromDegreesCelsius(0.5), new Spacing(Length.FromCentimeters(60), Length.FromMeters(1.2)), [Notes]);

    private static readonly Site Site = new("Larkmere Halt", Angle.FromDegrees(-46.2), Notes);

    public static TheoryData<object, string> Lines() => new()
    {
        { new SoilReport(), "nothing known" },
        { new SoilReport { PhInWater = new Ph(5.4), Texture = SoilTexture.SandyLoam }, "pH 5.4, sandy loam" },
        {
            new SoilReport
            {
                MehlichBufferPh = new Ph(6.1),
                ExchangeableAcidity = ExchangeableCharge.FromCentimolesPerKilogram(5.2),
                BufferAcidity = VolumetricCharge.FromCentimolesPerLitre(2),
            },
            "Mehlich buffer pH 6.1, exchangeable acidity 5.2 cmol(c)/kg, buffer acidity 2 cmol(c)/L"
        },
        { new ResidualLime(AreaDensity.FromGramsPerSquareMeter(1.5), 1, NorthCarolinaSoilClass.MineralOrganic), "1.5 g/m² of lime 1 month ago, on mineral-organic soil" },
        { AcceptedChances.Usual, "cold after planting 10 %, freeze before pruning heals 10 %, cold before indoors 10 %, later harvest 20 %, too few plants 10 %" },
        { new BedPlan("wall bed", "tomato", Bed.Rectangle(Length.FromMeters(1.2), Length.FromMeters(4))), "wall bed: 4.8 m² of tomato" },
        { Tomato, "tomato: pH 5.5 to 6.8, hurt at 0.5 °C, 60 cm by 1.2 m" },
        { new Garden(Site, 2027, [Tomato]), "Larkmere Halt, season of 2027: 1 crop, 0 beds, 0 lots of pots, 0 mixes" },
        { Site, "Larkmere Halt, 46.2° south" },
        { new LimeProduct(LimingMaterial.Dolomite, Mass.FromKilograms(12.5)), "dolomite in bags of 12.5 kg" },
        { new MixPlan("pots and tools", SanitisingRecipes.All[0].Key, Volume.FromLiters(2.5)), $"pots and tools: 2.5 L of {SanitisingRecipes.All[0].Key}" },
        {
            new PotPlan(
                "terrace pots", "tomato", Container.Round(Length.FromCentimeters(20), Length.FromCentimeters(20)), 6, Length.FromCentimeters(2), Ratio.Zero, "own mix"),
            "terrace pots: 6 of tomato"
        },
        { new Raising(Propagule.Cutting, Ratio.FromPercent(62.5), 7), "cuttings, 62.5 % succeed, 7 weeks to planting out" },
        { new ColdNightChance(Temperature.FromDegreesCelsius(-1.5), Ratio.FromPercent(10), 30), "10 % chance of -1.5 °C or colder" },
        { new ColdNightOnRecord(Temperature.FromDegreesCelsius(-1), 4), "-1 °C or colder in 4 seasons; too few for a chance" },
        { new CountedFromStep(PlanStep.PlantOut, -49), "49 days before planting out" },
        { new DaysToMaturity(70), "70 days" },
        { new HeatToMaturity(ThermalTime.FromCelsiusDays(855.5), new DegreeDayThresholds(Temperature.FromDegreesCelsius(10))), "855.5 °C·d" },
        { new DegreeDay(new DateOnly(2024, 5, 12), ThermalTime.FromCelsiusDays(6.5), ThermalTime.FromCelsiusDays(112.5)), "2024-05-12: 6.5 °C·d, 112.5 °C·d in all" },
        { new DegreeDay(new DateOnly(2024, 5, 13), null, ThermalTime.FromCelsiusDays(112.5)), "2024-05-13: missing, 112.5 °C·d in all" },
        { new VolumeDose(MixIngredients.HouseholdBleach, VolumeConcentration.FromPercent(1), VolumeConcentration.FromPercent(2.5)), "1 % by volume to 2.5 % by volume of household bleach" },
        { new MassDose(MixIngredients.HouseholdBleach, MassConcentration.FromGramsPerLiter(5), MassConcentration.FromGramsPerLiter(5)), "5 g/L of household bleach" },
        { new SpoonDose(MixIngredients.HouseholdBleach, VolumeConcentration.FromPercent(0.5)), "0.5 % by volume of household bleach" },
    };

    [Theory]
    [MemberData(nameof(Lines))]
    public void ToString_InACommaCulture_IsOneInvariantLine(object value, string line)
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");

            Assert.Equal(line, value.ToString());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void ToString_OfAnAmendmentPlan_NamesTheMaterialAndTheLayer() =>
        Assert.StartsWith("compost: ", new AmendmentPlan("compost", AmendmentPlan.NewBedLayer).ToString(), StringComparison.Ordinal);
}
