using System.Globalization;
using HortiCalc.Climate;
using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;
using UnitsNet.Units;

namespace HortiCalc.Reference;

internal static class SumCalculations
{
    private static readonly Lazy<DailyTemperatures> Seattle = new(ReadSeattle);

    public static Dictionary<string, Func<Inputs, Computed>> All { get; } = new(StringComparer.Ordinal)
    {
        ["corn-heat-units-of-day"] = inputs => CornHeatUnits.OfDay(
            Temperature.FromDegreesCelsius(inputs.Number("minimum_C")),
            Temperature.FromDegreesCelsius(inputs.Number("maximum_C")),
            CornHeatUnitMethod.FromKey(inputs["method"])),
        ["winkler-region"] = inputs => GrapeHeat.Region(
            inputs.Has("sum_Fd") ? ThermalTime.FromFahrenheitDays(inputs.Number("sum_Fd")) : ThermalTime.FromCelsiusDays(inputs.Number("sum_Cd")),
            Enum.Parse<WinklerLimits>(inputs["limits"])).Value.ToString(),
        ["huglin-coefficient"] = inputs => GrapeHeat.HuglinCoefficient(Angle.FromDegrees(inputs.Number("latitude_deg"))).Value,
        ["huglin-class"] = inputs => GrapeHeat.ClassOf(ThermalTime.FromCelsiusDays(inputs.Number("index_Cd"))).Value.ToString(),
        ["degree-days-to-leaves"] = DegreeDaysToLeaves,
        ["leaf-number"] = inputs => LeafAppearance.Leaves(
            ThermalTime.FromFahrenheitDays(inputs.Number("sum_Fd")), PhyllochronOf(inputs)).Value,
        ["winter-cereal-leaf"] = WinterCerealLeaf,

        // Computed sums of the open daily record.
        ["seattle-sum"] = SeattleSum,
        ["seattle-growing-season-length"] = inputs => SeattleSeason(inputs).Length.Value,
        ["seattle-growing-season-start"] = inputs => MonthAndDay(SeattleSeason(inputs).First),
        ["seattle-growing-season-cold-run"] = inputs => SeattleSeason(inputs) is { Ending: GrowingSeasonEnding.ColdRun } season
            ? MonthAndDay(season.Last!.Value.AddDays(1))
            : "none",
    };

    private static Computed DegreeDaysToLeaves(Inputs inputs)
    {
        Phyllochron phyllochron = PhyllochronOf(inputs);
        Estimate<ThermalTime> needed = LeafAppearance.ThermalTimeTo(inputs.Number("leaves"), phyllochron);
        ThermalTime sum = !inputs.Has("end") ? needed.Value : inputs["end"] == "low" ? needed.Range!.Low : needed.Range!.High;
        return inputs["phyllochron"].StartsWith("maize", StringComparison.Ordinal) ? sum.FahrenheitDays : sum.CelsiusDays;
    }

    /// <summary>The leaf that a winter cereal has come to, by whole leaves; the source names none beyond the sixth.</summary>
    private static Computed WinterCerealLeaf(Inputs inputs)
    {
        ThermalTime sinceEmergence = ThermalTime.FromFahrenheitDays(inputs.Number("since_seeding_Fd") - inputs.Number("emergence_Fd"));
        int leaves = (int)Math.Floor(LeafAppearance.Leaves(sinceEmergence, Phyllochrons.WinterCereals).Value);
        return leaves >= 6 ? "6 or more" : leaves.ToString(CultureInfo.InvariantCulture);
    }

    private static Phyllochron PhyllochronOf(Inputs inputs) => inputs["phyllochron"] switch
    {
        "wheat-cold" => Phyllochrons.WheatAndBarleyInCold,
        "wheat-warm" => Phyllochrons.WheatAndBarleyInWarmth,
        "maize-leaves" => Phyllochrons.MaizeFourToSixteenLeaves,
        "maize-collars" => Phyllochrons.MaizeLeafCollars,
        string other => throw new FormatException($"No phyllochron '{other}'."),
    };

    private static Computed SeattleSum(Inputs inputs)
    {
        int year = (int)inputs.Number("year");
        DateSpan wholeYear = new(new DateOnly(year, 1, 1), new DateOnly(year, 12, 31));
        DateSpan april = CornHeatUnitMethod.Canada.Season.StartingIn(year);
        Temperature hot = Temperature.FromDegreesCelsius(30);
        return inputs["index"] switch
        {
            "winkler" => GrapeHeat.Winkler(
                Seattle.Value, GrapeHeat.WinklerSeason(Hemisphere.Northern).StartingIn(year)).Value.CelsiusDays,
            "huglin.floored" => GrapeHeat.Huglin(
                Seattle.Value,
                GrapeHeat.HuglinSeason(Hemisphere.Northern).StartingIn(year),
                Angle.FromDegrees(47.5),
                HuglinMethod.Floored).Value.CelsiusDays,
            "heat-days.above" => HeatDays.Above(Seattle.Value, wholeYear, hot).Value,
            "heat-days.at-or-above" => HeatDays.AtOrAbove(Seattle.Value, wholeYear, hot).Value,
            "physiological-days.celsius" => PhysiologicalDays.Sum(Seattle.Value, april, PhysiologicalDayMethod.Celsius).Value,
            string method => CornHeatUnits.Sum(Seattle.Value, april, CornHeatUnitMethod.FromKey(method)).Value,
        };
    }

    private static GrowingSeason SeattleSeason(Inputs inputs) => GrowingSeason.Of(
        Seattle.Value, (int)inputs.Number("year"), Hemisphere.Northern, GrowingSeasonMethod.FromKey(inputs["method"]));

    private static string MonthAndDay(DateOnly? date) => date?.ToString("MM-dd", CultureInfo.InvariantCulture) ?? "none";

    private static DailyTemperatures ReadSeattle()
    {
        string[][] rows =
        [
            .. File.ReadLines(Path.Combine(ReferenceLibrary.RepositoryRoot, "shared", "weather", "seattle-2012-2015.csv"))
                .Where(line => line.Length > 0 && char.IsAsciiDigit(line[0]))
                .Select(line => line.Split(',')),
        ];
        return DailyTemperatures.Create(
            DateOnly.ParseExact(rows[0][0], "yyyy-MM-dd", CultureInfo.InvariantCulture),
            [.. rows.Select(row => double.Parse(row[1], CultureInfo.InvariantCulture))],
            [.. rows.Select(row => double.Parse(row[2], CultureInfo.InvariantCulture))],
            TemperatureUnit.DegreeCelsius);
    }
}
