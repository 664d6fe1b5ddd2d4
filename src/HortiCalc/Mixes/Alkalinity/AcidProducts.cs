using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>Acids in the strengths they are usually sold at. The label and the safety data sheet of the product decide.</summary>
/// <remarks>
/// Densities: sulfuric 93 % and nitric 63 % by the University of Massachusetts, https://ag.umass.edu/fact-sheets/adjusting-alkalinity-with-acids;
/// phosphoric by the registration dossier of phosphoric acid, European Chemicals Agency, 75 % 1.57 to 1.58; the others from memory.
/// </remarks>
public static class AcidProducts
{
    /// <summary>Sulfuric acid of 93 %, 66° Baumé. For licensed or trained users only.</summary>
    public static AcidProduct Sulfuric93 { get; } = Liquid(WaterAcid.Sulfuric, 93, 1.835);

    /// <summary>Sulfuric acid of 35 %, as for batteries.</summary>
    public static AcidProduct Sulfuric35 { get; } = Liquid(WaterAcid.Sulfuric, 35, 1.26);

    /// <summary>Phosphoric acid of 75 %, the usual strength; food or fertiliser grade.</summary>
    public static AcidProduct Phosphoric75 { get; } = Liquid(WaterAcid.Phosphoric, 75, 1.58);

    /// <summary>Phosphoric acid of 85 %.</summary>
    public static AcidProduct Phosphoric85 { get; } = Liquid(WaterAcid.Phosphoric, 85, 1.69);

    /// <summary>Nitric acid of 63 %. It fumes.</summary>
    public static AcidProduct Nitric63 { get; } = Liquid(WaterAcid.Nitric, 63, 1.381);

    /// <summary>Nitric acid of 67 %. It fumes.</summary>
    public static AcidProduct Nitric67 { get; } = Liquid(WaterAcid.Nitric, 67, 1.40);

    /// <summary>Citric acid of 50 %, dissolved.</summary>
    public static AcidProduct Citric50 { get; } = Liquid(WaterAcid.Citric, 50, 1.24);

    /// <summary>Citric acid, dry and without water: weighed.</summary>
    public static AcidProduct CitricDry { get; } = new(WaterAcid.Citric, MassFraction.FromPercent(100), null);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<AcidProduct> All { get; } = ValueList<AcidProduct>.Of(
        [Sulfuric93, Sulfuric35, Phosphoric75, Phosphoric85, Nitric63, Nitric67, Citric50, CitricDry]);

    private static AcidProduct Liquid(WaterAcid acid, double percent, double kilogramsPerLitre) =>
        new(acid, MassFraction.FromPercent(percent), Density.FromKilogramsPerLiter(kilogramsPerLitre));
}
