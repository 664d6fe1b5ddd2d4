using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>
/// The salts and acids that nutrient solutions are usually made from, as pure formulas. A product is seldom pure: set its share by
/// <see cref="NutrientSalt.WithPurity"/> from the label.
/// </summary>
public static class NutrientSalts
{
    /// <summary>Ammonium nitrate, NH4NO3.</summary>
    public static NutrientSalt AmmoniumNitrate { get; } = Make(
        "ammonium-nitrate", "ammonium nitrate", "NH4NO3", (SolutionIon.Ammonium, 1), (SolutionIon.Nitrate, 1));

    /// <summary>Ammonium sulfate, (NH4)2SO4.</summary>
    public static NutrientSalt AmmoniumSulfate { get; } = Make(
        "ammonium-sulfate", "ammonium sulfate", "(NH4)2SO4", (SolutionIon.Ammonium, 2), (SolutionIon.Sulfate, 1));

    /// <summary>Calcium nitrate tetrahydrate, Ca(NO3)2.4H2O. The pure salt; fertiliser grade is <see cref="GreenhouseCalciumNitrate"/>.</summary>
    public static NutrientSalt CalciumNitrate { get; } = Make(
        "calcium-nitrate", "calcium nitrate tetrahydrate", "Ca(NO3)2.4H2O", (SolutionIon.Calcium, 1), (SolutionIon.Nitrate, 2));

    /// <summary>Calcium nitrate, greenhouse grade, 5Ca(NO3)2.NH4NO3.10H2O. The double salt that fertiliser grade mostly is: 15.5 % nitrogen, 18.5 % calcium, where labels say 19.</summary>
    public static NutrientSalt GreenhouseCalciumNitrate { get; } = Make(
        "greenhouse-calcium-nitrate", "calcium nitrate, greenhouse grade", "5Ca(NO3)2.NH4NO3.10H2O", (SolutionIon.Calcium, 5), (SolutionIon.Ammonium, 1), (SolutionIon.Nitrate, 11));

    /// <summary>Calcium chloride dihydrate, CaCl2.2H2O.</summary>
    public static NutrientSalt CalciumChloride { get; } = Make(
        "calcium-chloride", "calcium chloride dihydrate", "CaCl2.2H2O", (SolutionIon.Calcium, 1), (SolutionIon.Chloride, 2));

    /// <summary>Calcium sulfate dihydrate, CaSO4.2H2O. Gypsum, for the finished solution: a litre holds some 2 g of it, so no stock tank takes it.</summary>
    public static NutrientSalt CalciumSulfate { get; } = Make(
        "calcium-sulfate", "calcium sulfate dihydrate", "CaSO4.2H2O", (SolutionIon.Calcium, 1), (SolutionIon.Sulfate, 1));

    /// <summary>Potassium nitrate, KNO3.</summary>
    public static NutrientSalt PotassiumNitrate { get; } = Make(
        "potassium-nitrate", "potassium nitrate", "KNO3", (SolutionIon.Potassium, 1), (SolutionIon.Nitrate, 1));

    /// <summary>Potassium sulfate, K2SO4.</summary>
    public static NutrientSalt PotassiumSulfate { get; } = Make(
        "potassium-sulfate", "potassium sulfate", "K2SO4", (SolutionIon.Potassium, 2), (SolutionIon.Sulfate, 1));

    /// <summary>Potassium chloride, KCl.</summary>
    public static NutrientSalt PotassiumChloride { get; } = Make(
        "potassium-chloride", "potassium chloride", "KCl", (SolutionIon.Potassium, 1), (SolutionIon.Chloride, 1));

    /// <summary>Potassium bicarbonate, KHCO3.</summary>
    public static NutrientSalt PotassiumBicarbonate { get; } = Make(
        "potassium-bicarbonate", "potassium bicarbonate", "KHCO3", (SolutionIon.Potassium, 1), (SolutionIon.Bicarbonate, 1));

    /// <summary>Monopotassium phosphate, KH2PO4.</summary>
    public static NutrientSalt MonopotassiumPhosphate { get; } = Make(
        "monopotassium-phosphate", "monopotassium phosphate", "KH2PO4", (SolutionIon.Potassium, 1), (SolutionIon.DihydrogenPhosphate, 1));

    /// <summary>Monoammonium phosphate, NH4H2PO4.</summary>
    public static NutrientSalt MonoammoniumPhosphate { get; } = Make(
        "monoammonium-phosphate", "monoammonium phosphate", "NH4H2PO4", (SolutionIon.Ammonium, 1), (SolutionIon.DihydrogenPhosphate, 1));

    /// <summary>Magnesium sulfate heptahydrate, MgSO4.7H2O. Epsom salt.</summary>
    public static NutrientSalt MagnesiumSulfate { get; } = Make(
        "magnesium-sulfate", "magnesium sulfate heptahydrate", "MgSO4.7H2O", (SolutionIon.Magnesium, 1), (SolutionIon.Sulfate, 1));

    /// <summary>Magnesium nitrate hexahydrate, Mg(NO3)2.6H2O.</summary>
    public static NutrientSalt MagnesiumNitrate { get; } = Make(
        "magnesium-nitrate", "magnesium nitrate hexahydrate", "Mg(NO3)2.6H2O", (SolutionIon.Magnesium, 1), (SolutionIon.Nitrate, 2));

    /// <summary>Magnesium chloride hexahydrate, MgCl2.6H2O.</summary>
    public static NutrientSalt MagnesiumChloride { get; } = Make(
        "magnesium-chloride", "magnesium chloride hexahydrate", "MgCl2.6H2O", (SolutionIon.Magnesium, 1), (SolutionIon.Chloride, 2));

    /// <summary>Sodium nitrate, NaNO3.</summary>
    public static NutrientSalt SodiumNitrate { get; } = Make(
        "sodium-nitrate", "sodium nitrate", "NaNO3", (SolutionIon.Sodium, 1), (SolutionIon.Nitrate, 1));

    /// <summary>Sodium chloride, NaCl.</summary>
    public static NutrientSalt SodiumChloride { get; } = Make(
        "sodium-chloride", "sodium chloride", "NaCl", (SolutionIon.Sodium, 1), (SolutionIon.Chloride, 1));

    /// <summary>Urea, CO(NH2)2.</summary>
    public static NutrientSalt Urea { get; } = Make(
        "urea", "urea", "CO(NH2)2", (SolutionIon.Urea, 1));

    /// <summary>Nitric acid, HNO3. The pure acid: give the strength of the product as its purity.</summary>
    public static NutrientSalt NitricAcid { get; } = Make(
        "nitric-acid", "nitric acid", "HNO3", (SolutionIon.Hydrogen, 1), (SolutionIon.Nitrate, 1));

    /// <summary>Phosphoric acid, H3PO4. The pure acid: give the strength of the product as its purity. It counts one hydrogen; see <see cref="AcidInjection"/> for its dependence on pH.</summary>
    public static NutrientSalt PhosphoricAcid { get; } = Make(
        "phosphoric-acid", "phosphoric acid", "H3PO4", (SolutionIon.Hydrogen, 1), (SolutionIon.DihydrogenPhosphate, 1));

    /// <summary>Sulfuric acid, H2SO4. The pure acid: give the strength of the product as its purity.</summary>
    public static NutrientSalt SulfuricAcid { get; } = Make(
        "sulfuric-acid", "sulfuric acid", "H2SO4", (SolutionIon.Hydrogen, 2), (SolutionIon.Sulfate, 1));

    /// <summary>Sodium iron EDTA trihydrate, C10H12FeN2NaO8.3H2O. 13.3 % iron as it is; products differ, their label decides.</summary>
    public static NutrientSalt IronEdta { get; } = Make(
        "iron-edta", "sodium iron EDTA trihydrate", "C10H12FeN2NaO8.3H2O", (SolutionIon.Sodium, 1), (SolutionIon.IronChelate, 1));

    /// <summary>Iron sulfate heptahydrate, FeSO4.7H2O.</summary>
    public static NutrientSalt IronSulfate { get; } = Make(
        "iron-sulfate", "iron sulfate heptahydrate", "FeSO4.7H2O", (SolutionIon.Iron, 1), (SolutionIon.Sulfate, 1));

    /// <summary>Manganese sulfate monohydrate, MnSO4.H2O.</summary>
    public static NutrientSalt ManganeseSulfate { get; } = Make(
        "manganese-sulfate", "manganese sulfate monohydrate", "MnSO4.H2O", (SolutionIon.Manganese, 1), (SolutionIon.Sulfate, 1));

    /// <summary>Manganese sulfate tetrahydrate, MnSO4.4H2O.</summary>
    public static NutrientSalt ManganeseSulfateTetrahydrate { get; } = Make(
        "manganese-sulfate-tetrahydrate", "manganese sulfate tetrahydrate", "MnSO4.4H2O", (SolutionIon.Manganese, 1), (SolutionIon.Sulfate, 1));

    /// <summary>Manganese chloride tetrahydrate, MnCl2.4H2O.</summary>
    public static NutrientSalt ManganeseChloride { get; } = Make(
        "manganese-chloride", "manganese chloride tetrahydrate", "MnCl2.4H2O", (SolutionIon.Manganese, 1), (SolutionIon.Chloride, 2));

    /// <summary>Zinc sulfate heptahydrate, ZnSO4.7H2O.</summary>
    public static NutrientSalt ZincSulfate { get; } = Make(
        "zinc-sulfate", "zinc sulfate heptahydrate", "ZnSO4.7H2O", (SolutionIon.Zinc, 1), (SolutionIon.Sulfate, 1));

    /// <summary>Copper sulfate pentahydrate, CuSO4.5H2O.</summary>
    public static NutrientSalt CopperSulfate { get; } = Make(
        "copper-sulfate", "copper sulfate pentahydrate", "CuSO4.5H2O", (SolutionIon.Copper, 1), (SolutionIon.Sulfate, 1));

    /// <summary>Boric acid, H3BO3.</summary>
    public static NutrientSalt BoricAcid { get; } = Make(
        "boric-acid", "boric acid", "H3BO3", (SolutionIon.BoricAcid, 1));

    /// <summary>Sodium molybdate dihydrate, Na2MoO4.2H2O.</summary>
    public static NutrientSalt SodiumMolybdate { get; } = Make(
        "sodium-molybdate", "sodium molybdate dihydrate", "Na2MoO4.2H2O", (SolutionIon.Sodium, 2), (SolutionIon.Molybdate, 1));

    /// <summary>Molybdic acid, H2MoO4. Sold as 85 %: <see cref="NutrientSalt.WithPurity"/>.</summary>
    public static NutrientSalt MolybdicAcid { get; } = Make(
        "molybdic-acid", "molybdic acid", "H2MoO4", (SolutionIon.Hydrogen, 2), (SolutionIon.Molybdate, 1));

    /// <summary>All of them.</summary>
    public static IReadOnlyList<NutrientSalt> All { get; } = ValueList<NutrientSalt>.Of(
    [
        AmmoniumNitrate,
        AmmoniumSulfate,
        CalciumNitrate,
        GreenhouseCalciumNitrate,
        CalciumChloride,
        CalciumSulfate,
        PotassiumNitrate,
        PotassiumSulfate,
        PotassiumChloride,
        PotassiumBicarbonate,
        MonopotassiumPhosphate,
        MonoammoniumPhosphate,
        MagnesiumSulfate,
        MagnesiumNitrate,
        MagnesiumChloride,
        SodiumNitrate,
        SodiumChloride,
        Urea,
        NitricAcid,
        PhosphoricAcid,
        SulfuricAcid,
        IronEdta,
        IronSulfate,
        ManganeseSulfate,
        ManganeseSulfateTetrahydrate,
        ManganeseChloride,
        ZincSulfate,
        CopperSulfate,
        BoricAcid,
        SodiumMolybdate,
        MolybdicAcid,
    ]);

    /// <summary>Finds a salt by its key.</summary>
    /// <param name="key">The <see cref="NutrientSalt.Key"/>, for instance <c>potassium-nitrate</c>.</param>
    /// <returns>The pure salt.</returns>
    /// <exception cref="ArgumentException">There is no such salt, or the key is empty.</exception>
    public static NutrientSalt FromKey(string key)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(key);
        return All.FirstOrDefault(salt => salt.Key == key)
            ?? throw new ArgumentException($"{nameof(key)} was '{key}'; allowed: {string.Join(", ", All.Select(salt => salt.Key))}.", nameof(key));
    }

    private static NutrientSalt Make(string key, string name, string formula, params (SolutionIon Ion, double Count)[] ions) => new(
        key, name, formula, [.. ions.Select(ion => new SaltIon(ion.Ion, ion.Count))], MassFraction.FromPercent(100));
}
