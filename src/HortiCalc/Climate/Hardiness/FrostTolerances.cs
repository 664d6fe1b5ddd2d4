using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Climate;

/// <summary>Published statements on the frost that vegetables and herbs stand.</summary>
/// <remarks>
/// They disagree (pea stands in two classes of one list, parsnip is put with lettuce in one and at -18 °C in another), because hardening, moisture,
/// age and variety decide as much as the crop: show all of <see cref="For"/>, and trust none to a degree. The temperatures that kill are
/// observations of one site in a milder climate, on unprotected plants; cold that comes again and again, and wind, kill sooner.
/// </remarks>
public static class FrostTolerances
{
    private static readonly Source Classes = new(
        "frost-tolerance-classes",
        "Frost tolerance in vegetables",
        "garden centre handout",
        null,
        "http://olneysgardens.com/16.html");

    private static readonly Source Coldest = new(
        "coldest-temperatures-minnesota",
        "Winter vegetables and the coldest temperature they withstand",
        "Minnesota garden group",
        null,
        "https://mnupstream.org/instagram/");

    private static readonly Source WinterKill = new(
        "winter-kill-virginia",
        "Winter hardiness: observations in central Virginia",
        "P. Dawling, market grower",
        2012,
        "https://www.sustainablemarketfarming.com/2012/08/27/winter-hardiness/");

    /// <summary>Every statement there is, source by source.</summary>
    public static IReadOnlyList<FrostTolerance> All { get; } = ValueList<FrostTolerance>.Of(
    [
        .. Of(
            FrostToleranceClass.DamagedByLightFrost,
            "bean", "cucumber", "eggplant", "muskmelon", "New Zealand spinach", "okra", "pepper", "pumpkin", "summer squash", "sweet corn", "tomato",
            "watermelon", "amaranth", "winter squash plant"),
        .. Of(
            FrostToleranceClass.WithstandsLightFrost,
            "artichoke", "beet", "carrot", "cauliflower", "celery", "chinese cabbage", "endive", "lettuce", "parsnip", "pea", "swiss chard",
            "escarole", "arugula", "bok choy", "mache", "radicchio"),
        .. Of(
            FrostToleranceClass.WithstandsHardFrost,
            "broccoli", "brussels sprout", "cabbage", "collards", "kale", "kohlrabi", "mustard", "onion", "parsley", "pea", "radish", "spinach",
            "turnip", "leek", "sorrel"),
        .. Withstand(0, "leek", "parsnip"),
        .. Withstand(10, "turnip", "swede", "kale"),
        .. Withstand(12, "garlic"),
        .. Withstand(14, "broad bean"),
        .. Withstand(20, "chard", "perpetual spinach", "radish"),
        .. Withstand(20, "cabbage", "brussels sprout"),
        .. Withstand(20, "carrot"),
        .. Withstand(20, "onion", "shallot"),
        .. Withstand(24, "asparagus"),
        .. Withstand(25, "broccoli", "winter cauliflower"),
        .. Withstand(28, "pea", "potato"),
        .. Withstand(30, "beetroot", "kohlrabi", "celeriac"),
        .. Withstand(31, "winter squash"),
        .. Die(35, "basil"),
        .. Die(
            32,
            "bush bean", "cauliflower curd", "corn", "cowpea", "cucumber", "eggplant", "lima bean", "melon", "okra", "some pak choy", "peanut",
            "pepper", "potato vine", "squash vine", "sweet potato vine", "tomato"),
        .. Die(27, "most cabbage", "sugarloaf chicory", "radicchio"),
        .. Die(
            25,
            "broccoli head", "chervil", "chicory root", "napa cabbage", "dill", "endive", "annual fennel", "large lettuce leaves",
            "some mustards and asian greens", "scallion", "radicchio", "some Windsor broad bean", "white mustard cover crop"),
        .. Die(22, "arugula", "tatsoi", "Bright Lights chard", "large lettuce leaves"),
        .. Die(20, "some beet", "cabbage heads"),
    ]);

    /// <summary>What is stated about a crop.</summary>
    /// <param name="crop">A part of its name, in any case: <c>pea</c> finds cowpea too.</param>
    /// <returns>The statements whose crop contains it; none where nothing is known here.</returns>
    /// <exception cref="ArgumentException">The name is empty.</exception>
    /// <example><code>
    /// foreach (FrostTolerance statement in FrostTolerances.For("parsnip"))
    ///     Console.WriteLine(statement); // two sources that disagree
    /// </code></example>
    public static IReadOnlyList<FrostTolerance> For(string crop)
    {
        Guard.NotBlank(crop);
        return ValueList<FrostTolerance>.Of(All.Where(statement => statement.Crop.Contains(crop, StringComparison.OrdinalIgnoreCase)));
    }

    private static IEnumerable<FrostTolerance> Of(FrostToleranceClass @class, params string[] crops) =>
        crops.Select(crop => new FrostTolerance(crop, @class, null, null, Classes));

    private static IEnumerable<FrostTolerance> Withstand(double fahrenheit, params string[] crops) =>
        crops.Select(crop => new FrostTolerance(crop, null, Temperature.FromDegreesFahrenheit(fahrenheit), null, Coldest));

    private static IEnumerable<FrostTolerance> Die(double fahrenheit, params string[] crops) =>
        crops.Select(crop => new FrostTolerance(crop, null, null, Temperature.FromDegreesFahrenheit(fahrenheit), WinterKill));
}
