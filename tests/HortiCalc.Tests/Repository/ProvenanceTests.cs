using System.Text.RegularExpressions;
using HortiCalc.Evidence;
using HortiCalc.Reference;

namespace HortiCalc.Tests.Repository;

/// <summary>Every number has a source, and every source has values that the tests exercise, as far as print allows.</summary>
public partial class ProvenanceTests
{
    /// <summary>Published sources of methods that print a rule and no value to compute; what checks the rule instead.</summary>
    private static readonly Dictionary<string, string> WithoutValues = new()
    {
        ["leaching-salt-balance"] = "prints the equation alone; an exam question of another source checks it",
        ["mcmaster-wilhelm-1997"] = "names the two readings of the average; worked examples of other publications check both",
        ["heliyon-gdd-variants"] = "prints formulas; worked examples of extension services check the one taken from it",
        ["ukcp09-degree-days"] = "prints the four cases; their arithmetic is checked on computed days and years",
        ["met-eireann-degree-days"] = "prints the four cases; above less below is the mean less the base",
        ["ams-growing-degree-hour"] = "defines degree hours in words; quadrature and computed years check them",
        ["california-degree-day-glossary"] = "defines triangle and sine; quadrature of the curve and computed tables check them",
        ["noaa-normals-1981-2010-freeze"] = "says how chances are meant; the tables of the older normals check the distribution",
        ["noaa-solar-calculations"] = "prints formulas; an ephemeris on a grid of the world and a table of sunrises check what is made with them",
        ["usda-ars-air-temperature-sine"] = "prints a formula; an independent implementation checks it",
        ["campbell-norman-1997"] = "prints formulas; their harmonics are checked as properties",
        ["uc-chill-portions"] = "says in words which hours count and when counting begins",
        ["hortgro-daily-positive-units"] = "says in words how a day is floored; an independent count of a year checks it",
        ["castle-hill-quarry-lime"] = "says that lime goes in proportion to depth; half for half the depth is checked against another bulletin",
        ["cesaraccio-2001"] = "four hours counted from it elsewhere are tested against in DiurnalKernelTests",
        ["parton-logan-1981"] = "its coefficients are repeated by the manual of a teaching package; properties check the curve",
        ["cesaraccio-2004-chill-days"] = "prints the cases as formulas; quadrature of the triangle checks them",
        ["canada-corn-heat-units"] = "prints the formula; the worked day of a farm column and computed sums check it",
        ["ontario-crop-heat-units"] = "prints the rule in words; the worked day of a farm column and computed sums check it",
        ["nebraska-physiological-days"] = "prints the response as a program; its zeros, its optimum and its limits check it",
        ["etccdi-core-indices"] = "prints definitions; an independent program over an open record checks them",
        ["defra-growing-season"] = "prints a definition and the extremes of a record that is not at hand; an independent program checks it",
        ["photothermal-time"] = "prints a product; degree-days have their own checks",
        ["iowa-stress-degree-days"] = "prints the idea and the threshold; arithmetic by hand checks it",
        ["scipy-plotting-positions"] = "prints formulas; each is checked on the ranks of ten",
        ["probscale-plotting-positions"] = "prints a formula; it is checked on the ranks of ten",
        ["clopper-pearson-1934"] = "defines the interval; its closed forms and its symmetry check it, a simulation study its coverage",
        ["mann-kendall-test"] = "prints formulas; a score and a variance counted by hand check them",
        ["fao-frost-risk"] = "treats risk over years in words as far as it could be read; another publication's two numbers check the formula",
        ["yin-1995"] = "prints a formula; the limits, the peak and the worked days of lentil check it",
        ["cochrane-salinas-sanchez-1980"] = "prints an equation and when its factor is 2; the rule itself is checked as a property",
        ["uga-lime-buffer-capacity"] = "defines the capacity; the product is checked as a property",
        ["iupac-atomic-weights-1997"] = "prints atomic weights; printed equivalents of lime and acid check what is computed from them",
        ["fda-ph-statistics"] = "prints the rule in words; the worked example of another publication checks it",
        ["conyers-2026-mean-ph"] = "its finding is in words; the plain mean is checked on a worked example of another publication",
        ["wmo-8"] = "prints the formula; tables of dew points and an independent program check it",
        ["buck-1996"] = "prints the formula; an independent program and the other formulas check it",
        ["hyland-wexler-1983"] = "prints the equations; tables of vapour pressure and an independent grid check them",
        ["ams-psychrometric-formula"] = "prints the formula; the weather service's own tables check it",
        ["canadian-hardiness-index"] = "prints the formula and no worked climate; its terms are checked one by one",
        ["daly-2012-hardiness"] = "defines the mean annual extreme minimum; counted winters check it",
        ["cibse-surface-resistance"] = "gives the film of air; a numerical solution of the heat equation checks the pot",
        ["knox-2017-wet-bulb"] = "prints the one-third rule; the psychrometric equation checks it near 0 °C",
        ["usda-soil-survey-manual"] = "prints bounds and no soils; the partition of the triangle, its corners and published soils check them",
        ["green-ampt-rawls-1983"] = "prints the equation; a worksheet and an independent program check it",
        ["mein-larson-1971"] = "its equation as taken from it; an independent integration of the rate checks it",
        ["makkonen-2006"] = "proves the rank rule; its arithmetic is checked on ranks",
        ["day-1985"] = "describes the continuation with past years; an independent computation checks it",
        ["usgs-phreeqc"] = "holds coefficients and a program; NIST's standards for meters and an independent solver check what is made with them",
        ["hyndman-fan-1996"] = "lists the ranks; an independent implementation of them checks the dates",
    };

    [Fact]
    public void Sources_WithTheSameKey_AreTheSame()
    {
        Assert.NotEmpty(EvidenceInTheLibrary.Sources);
        Assert.Empty(EvidenceInTheLibrary.Sources.GroupBy(source => source.Key).Where(group => group.Count() > 1).Select(group => group.Key));
    }

    [Fact]
    public void Sources_Published_HaveAddressOrYear() =>
        Assert.Empty(EvidenceInTheLibrary.Sources.Where(source => source.Kind == SourceKind.Published && source.Address is null && source.Year is null));

    [Fact]
    public void Sources_OfMethods_HavePublishedValuesOrAReason()
    {
        HashSet<string> withValues = [.. ReferenceLibrary.Values.Select(value => value.Source.Key)];
        IEnumerable<string> methods = EvidenceInTheLibrary.Methods
            .Where(method => method.Source.Kind == SourceKind.Published)
            .Select(method => method.Source.Key)
            .Distinct();

        Assert.Empty(methods.Where(key => !withValues.Contains(key) && !WithoutValues.ContainsKey(key)));
    }

    [Fact]
    public void Sources_ListedAsWithoutValues_StillExistAndHaveNone()
    {
        HashSet<string> withValues = [.. ReferenceLibrary.Values.Select(value => value.Source.Key)];

        Assert.Empty(WithoutValues.Keys.Where(key => withValues.Contains(key) || EvidenceInTheLibrary.Sources.All(source => source.Key != key)));
    }

    [Fact]
    public void Methods_WithTheSameKey_AreTheSame() =>
        Assert.Empty(EvidenceInTheLibrary.Methods.GroupBy(method => method.Key).Where(group => group.Count() > 1).Select(group => group.Key));

    [Fact]
    public void Cautions_Codes_AreUniqueAndWellFormed()
    {
        Assert.NotEmpty(EvidenceInTheLibrary.Cautions);
        Assert.Empty(EvidenceInTheLibrary.Cautions.GroupBy(caution => caution.Code).Where(group => group.Count() > 1).Select(group => group.Key));
        Assert.All(EvidenceInTheLibrary.Cautions, caution => Assert.Matches(Code(), caution.Code));
        Assert.All(EvidenceInTheLibrary.Cautions, caution => Assert.EndsWith(".", caution.Sentence, StringComparison.Ordinal));
    }

    [GeneratedRegex("^[a-z0-9]+(-[a-z0-9]+)*\\.[a-z0-9]+(-[a-z0-9]+)*$")]
    private static partial Regex Code();
}
