using HortiCalc.Evidence;

namespace HortiCalc.Containers;

/// <summary>Where the physics of media comes from. A key is also the name of the file of published values, where there are any.</summary>
internal static class PhysicsSources
{
    public static Source PoreSpaceRegression { get; } = new(
        "acta-horticulturae-294-pore-space",
        "Pore space and air volume of horticultural substrates without particle density, abstract",
        "Acta Horticulturae 294",
        null,
        "http://www.actahort.org/books/294/294_2.htm");

    public static Source ContainerGeometry { get; } = new(
        "container-geometry-1987",
        "Effects of Container Geometry and Media Physical Properties on Air and Water Volumes in Containers, abstract",
        "Journal of Environmental Horticulture 5(4)",
        1987,
        "https://meridian.allenpress.com/jeh/article/5/4/180/79738/Effects-of-Container-Geometry-and-Media-Physical");

    public static Source PeatRetention { get; } = new(
        "suo-1990-sphagnum-peat",
        "Volumetric water retention of sphagnum growth peat (Heiskanen), abstract",
        "Suo, Finnish Peatland Society",
        1990,
        "https://suo.fi/article/9676/author/17940");

    public static Source GreenRoof { get; } = new(
        "green-roof-retention",
        "van Genuchten parameters of green-roof layers",
        "Scientific Research Publishing",
        null,
        "http://html.scirp.org/file/_5-9402645_1.htm");

    public static Source TexasRanges { get; } = new(
        "texas-media-air-and-water",
        "Air, water and media: putting them all together",
        "Texas A&M Aggie Horticulture",
        null,
        "https://aggie-horticulture.tamu.edu/ornamental/greenhouse-management/air-water-and-media-putting-them-all-together");

    public static Source CaliforniaRange { get; } = new(
        "california-air-filled-porosity", "Air-filled porosity of container media", "University of California ANR", null, "https://class.ucanr.edu/node/101549");

    public static Source QueenslandRange { get; } = new(
        "queensland-growing-media",
        "Growing media physical properties",
        "Nursery and Garden Industry Queensland",
        null,
        "https://ngiq.asn.au/download/growing-media-physical-properties-2");

    public static Source RutgersRange { get; } = new(
        "rutgers-fs812", "FS812 Container Media", "Rutgers", null, "https://it.scribd.com/document/435104909/Container-Media");

    public static Source PurdueRange { get; } = new(
        "purdue-air-of-pores", "Air and water in substrates: a test on the bench", "Purdue University", null, "https://purdue.edu/hla/sites/cea/?p=2120");

    public static Source ArkansasPeat { get; } = new(
        "arkansas-unit-07",
        "Greenhouse management, unit 7: substrates, section 5",
        "University of Arkansas",
        null,
        "https://greenhouse.hosted.uark.edu/Unit07/Section05.html");

    public static Source Coirs { get; } = new(
        "hortscience-coir-dusts",
        "Physical properties of thirteen coir dusts",
        "HortScience",
        null,
        "https://journals.ashs.org/search?f_0=author&q_0=Carolina+Carrio%CC%81n");

    public static Source OnePorositySize { get; } = new(
        "acta-horticulturae-779-porosity",
        "Total porosity of organic and inorganic media at one particle size",
        "Acta Horticulturae 779",
        2008,
        "https://scribd.com/document/723425842/10-17660-ActaHortic-2008-779-74");

    public static Source Ansorena { get; } = new(
        "ansorena-1994-substrates",
        "Best levels of the physical properties of a growing substrate (J. Ansorena, Sustratos: propiedades y caracterización), copied table",
        "Mundi-Prensa",
        1994,
        "https://deploy.studylib.es/doc/5187905/niveles-%C3%B3ptimos-para-las-propiedades-f%C3%ADsicas-de-un-sustra...");

    public static Source SoillessVegetables { get; } = new(
        "cultivo-sin-suelo-hortalizas",
        "Cultivo sin suelo de hortalizas, section 3.2.1, physical properties, as copied",
        "a grower's pages, Spain",
        2012,
        "https://oscurveagricultor.blogspot.com/2012_05_30_archive.html");

    public static Source Aurea { get; } = new(
        "aurea-substrates",
        "Physical properties of substrates (Propriétés physiques des substrats)",
        "Auréa, laboratory, France",
        2012,
        "https://wiki.aurea.eu/index.php?title=Propri%C3%A9t%C3%A9s_physiques_des_substrats&oldid=637");

    public static Source CostaRicaCoir { get; } = new(
        "agronomia-costarricense-46-coir",
        "Evaluation of methodologies to determine the physical characteristics of a coconut fiber substrate, abstract",
        "Agronomía Costarricense 46(2)",
        2022,
        "https://opac5.scielo.sa.cr/j/ac/a/hPMTHbVMQQWdFxzNtJzxrrx/?lang=es");

    public static Source AceaCourse { get; } = new(
        "acea-substrates-xiii",
        "Growing in substrates, part XIII (Cultivo en sustratos)",
        "ACEA, technical articles, Mexico",
        null,
        "https://acea.com.mx/articulos-tecnicos/100-cultivo-en-sustratos-xiii");

    public static Source CellTrays { get; } = new(
        "multicellules-air",
        "The qualities of a substrate, 1: physical properties, after Les techniques de culture en multicellules, page 60",
        "a propagator's pages, Québec",
        2009,
        "http://transplantbio.blogspot.com/2009/03/les-qualites-dun-substrat-1-les.html");
}
