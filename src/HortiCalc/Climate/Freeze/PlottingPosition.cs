using HortiCalc.Evidence;

namespace HortiCalc.Climate;

/// <summary>Which chance is given to the m-th of n ranked yearly values: (m - α) / (n + 1 - α - β).</summary>
/// <remarks>
/// <para>
/// <see cref="Weibull"/> is the default: whatever the distribution, a new year lies below the m-th of n values in m of n + 1 cases, so
/// that its chances are those a grower meets. The others aim at something else, for instance at unbiased quantiles of a normal
/// distribution, and take the outermost values for rarer than they prove to be. The types are those of Hyndman and Fan (1996).
/// </para>
/// <para>Immutable; equal when the keys are.</para>
/// </remarks>
public sealed record PlottingPosition
{
    private static readonly Source Formulas = new(
        "scipy-plotting-positions",
        "scipy.stats.mstats.plotting_positions (reference of the statistics package)",
        "SciPy project",
        null,
        "https://docs.scipy.org/doc/scipy-1.13.1/reference/generated/scipy.stats.mstats.plotting_positions.html");

    private static readonly Source GringortenFormula = new(
        "probscale-plotting-positions",
        "Using different formulations of plotting positions",
        "Matplotlib probscale project",
        null,
        "https://matplotlib.org/mpl-probscale/tutorial/closer_look_at_plot_pos.html");

    private PlottingPosition(string key, string name, double alpha, double beta, Source source)
    {
        Evidence = new Method("plotting-position." + key, name, source, new Domain("yearly values alike and independent of one another"));
        Alpha = alpha;
        Beta = beta;
    }

    /// <summary>m/(n + 1), type 6: right for any distribution.</summary>
    public static PlottingPosition Weibull { get; } = new("weibull", "Weibull plotting position m/(n + 1)", 0, 0, Formulas);

    /// <summary>(m - 0.5)/n, type 5.</summary>
    public static PlottingPosition Hazen { get; } = new("hazen", "Hazen plotting position (m - 0.5)/n", 0.5, 0.5, Formulas);

    /// <summary>(m - 0.4)/(n + 0.2): nearly unbiased quantiles of many distributions.</summary>
    public static PlottingPosition Cunnane { get; } = new("cunnane", "Cunnane plotting position (m - 0.4)/(n + 0.2)", 0.4, 0.4, Formulas);

    /// <summary>(m - 0.44)/(n + 0.12): for extreme values.</summary>
    public static PlottingPosition Gringorten { get; } = new("gringorten", "Gringorten plotting position (m - 0.44)/(n + 0.12)", 0.44, 0.44, GringortenFormula);

    /// <summary>(m - 0.375)/(n + 0.25), type 9: nearly unbiased quantiles of a normal distribution.</summary>
    public static PlottingPosition Blom { get; } = new("blom", "Blom plotting position (m - 0.375)/(n + 0.25)", 0.375, 0.375, Formulas);

    /// <summary>(m - 1/3)/(n + 1/3), type 8: nearly median-unbiased quantiles of any distribution.</summary>
    public static PlottingPosition Median { get; } = new("median", "median plotting position (m - 1/3)/(n + 1/3)", 1 / 3.0, 1 / 3.0, Formulas);

    /// <summary>(m - 1)/(n - 1), type 7: what spreadsheets do. The outermost years get no chance of being passed.</summary>
    public static PlottingPosition Mode { get; } = new("mode", "plotting position (m - 1)/(n - 1)", 1, 1, Formulas);

    /// <summary>m/n, type 4: the plain share of the years up to a value.</summary>
    public static PlottingPosition Share { get; } = new("share", "plain share m/n", 0, 1, Formulas);

    /// <summary>Every plotting position there is.</summary>
    public static IReadOnlyList<PlottingPosition> All { get; } =
        ValueList<PlottingPosition>.Of([Weibull, Hazen, Cunnane, Gringorten, Blom, Median, Mode, Share]);

    /// <summary>The key, name and source.</summary>
    public Method Evidence { get; }

    /// <summary>What is taken off the rank.</summary>
    public double Alpha { get; }

    /// <summary>What is taken off the number of years besides.</summary>
    public double Beta { get; }

    /// <summary>Finds a plotting position by its key.</summary>
    /// <param name="key">The <see cref="Method.Key"/> of its <see cref="Evidence"/>, for instance <c>plotting-position.weibull</c>.</param>
    /// <returns>The plotting position.</returns>
    /// <exception cref="ArgumentException">There is none such, or the key is empty.</exception>
    public static PlottingPosition FromKey(string key) => Keyed.Find(All, position => position.Evidence.Key, key);

    /// <summary>The name.</summary>
    /// <returns>For instance <c>Weibull plotting position m/(n + 1)</c>.</returns>
    public override string ToString() => Evidence.Name;

    /// <summary>The chance of a rank, of so many years; years need not be a whole number where they come from a share.</summary>
    internal double ChanceOfRank(double rank, double years) => Math.Clamp((rank - Alpha) / (years + 1 - Alpha - Beta), 0, 1);

    /// <summary>The rank of a chance.</summary>
    internal double RankOfChance(double chance, double years) => Alpha + chance * (years + 1 - Alpha - Beta);
}
