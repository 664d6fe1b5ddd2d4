using HortiCalc.Evidence;

namespace HortiCalc.Climate;

/// <summary>A way to sum the Huglin index: whether a day below the base takes from the sum.</summary>
public sealed record HuglinMethod
{
    internal static readonly Source Copernicus = new(
        "copernicus-huglin-index",
        "Huglin index",
        "Copernicus Climate Change Service, description of indices",
        null,
        "https://keng.istc.cnr.it/hacid-cs-kg/id/Copernicus-CCS/indices/HuglinIndex");

    private HuglinMethod(string key, string name, Source source, bool isFloored)
    {
        Evidence = new Method(
            key,
            name,
            source,
            new Domain("grapes; 1 April to 30 September, south of the equator 1 October to 31 March", new DomainLimit("latitude", -50, 50, "°")));
        IsFloored = isFloored;
    }

    /// <summary>As printed: a day whose mean of mean and maximum is below 10 °C takes from the sum.</summary>
    public static HuglinMethod Printed { get; } = new("huglin.printed", "Huglin index, days below the base counted", Copernicus, isFloored: false);

    /// <summary>The common practice of taking such a day for zero.</summary>
    public static HuglinMethod Floored { get; } = new(
        "huglin.floored",
        "Huglin index, days below the base taken for zero",
        Source.CommonPractice("huglin-floored", "no day takes from the Huglin index"),
        isFloored: true);

    /// <summary>Every method there is.</summary>
    public static IReadOnlyList<HuglinMethod> All { get; } = ValueList<HuglinMethod>.Of([Printed, Floored]);

    /// <summary>The method's key, name and source.</summary>
    public Method Evidence { get; }

    /// <summary>Whether a day below the base is taken for zero.</summary>
    public bool IsFloored { get; }

    /// <summary>Finds a method by its key.</summary>
    /// <param name="key">The <see cref="Method.Key"/> of its <see cref="Evidence"/>.</param>
    /// <returns>The method.</returns>
    /// <exception cref="ArgumentException">There is no such method, or the key is empty.</exception>
    public static HuglinMethod FromKey(string key) => Keyed.Find(All, method => method.Evidence.Key, key);

    /// <summary>The method's name.</summary>
    /// <returns>For instance <c>Huglin index, days below the base taken for zero</c>.</returns>
    public override string ToString() => Evidence.Name;

    internal double CelsiusDays(double minimumCelsius, double maximumCelsius)
    {
        double meanCelsius = (minimumCelsius + maximumCelsius) / 2;
        double celsiusDays = (meanCelsius - 10 + (maximumCelsius - 10)) / 2;
        return IsFloored ? Math.Max(0, celsiusDays) : celsiusDays;
    }
}
