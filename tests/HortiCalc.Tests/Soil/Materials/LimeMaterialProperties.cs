using FsCheck;
using FsCheck.Xunit;
using HortiCalc.Soil;
using UnitsNet;
using static HortiCalc.Tests.Soil.SoilSamples;

namespace HortiCalc.Tests.Soil;

/// <summary>Laws of what liming materials are worth.</summary>
public class LimeMaterialProperties
{
    private static readonly LimeIndex[] Indexes = Enum.GetValues<LimeIndex>();

    [Property]
    public bool Convert_ThereAndBack_GivesTheFigureAgain(PositiveInt value, PositiveInt from, PositiveInt to)
    {
        LimeIndex first = Indexes[from.Get % Indexes.Length];
        LimeIndex second = Indexes[to.Get % Indexes.Length];
        double figure = Between(value, 0, 2000);
        return Near(LimeIndexes.Convert(LimeIndexes.Convert(figure, first, second), second, first), figure);
    }

    [Property]
    public bool Convert_ThroughTheEffectiveShare_IsTheSame(PositiveInt value, PositiveInt from, PositiveInt to)
    {
        LimeIndex first = Indexes[from.Get % Indexes.Length];
        LimeIndex second = Indexes[to.Get % Indexes.Length];
        double figure = Between(value, 0, 2000);
        return Near(LimeIndexes.FromEffective(LimeIndexes.ToEffective(figure, first), second), LimeIndexes.Convert(figure, first, second));
    }

    [Property]
    public bool Fineness_AnyScheme_IsFromNothingToAll(PositiveInt scheme, PositiveInt one, PositiveInt two, PositiveInt three)
    {
        double fineness = FinenessScheme.All[scheme.Get % FinenessScheme.All.Count].Fineness(Every(one, two, three)).Value.Percent;
        return fineness is >= -1e-9 and <= 100 + 1e-9;
    }

    [Property]
    public bool Fineness_AllThroughTheFinest_IsWhole(PositiveInt scheme)
    {
        FinenessScheme chosen = FinenessScheme.All[scheme.Get % FinenessScheme.All.Count];
        return Near(chosen.Fineness(new SieveAnalysis([new SievePassing(chosen.Sieves[^1], Ratio.FromPercent(100))])).Value.Percent, 100);
    }

    [Property]
    public bool Fineness_Finer_IsNeverLess(PositiveInt scheme, PositiveInt one, PositiveInt two, PositiveInt three, PositiveInt share)
    {
        FinenessScheme chosen = FinenessScheme.All[scheme.Get % FinenessScheme.All.Count];
        SieveAnalysis coarse = Every(one, two, three);
        double towards = Between(share, 0, 1);
        SieveAnalysis fine = new([.. coarse.Sieves.Select(sieve =>
            new SievePassing(sieve.Opening, Ratio.FromPercent(Math.Min(100, sieve.Passing.Percent + towards * (100 - sieve.Passing.Percent)))))]);
        return chosen.Fineness(fine).Value.Percent >= chosen.Fineness(coarse).Value.Percent - 1e-9;
    }

    // Cumulative 0.1, 0.3, 0.6 are bands of 0.1, 0.4, 1.
    [Property]
    public bool Fineness_IowaCumulative_IsTheSameAsItsBands(PositiveInt one, PositiveInt two, PositiveInt three)
    {
        SieveAnalysis sieves = Every(one, two, three);
        double four = Through(sieves, 4);
        double eight = Through(sieves, 8);
        double sixty = Through(sieves, 60);
        return Near(FinenessScheme.Iowa.Fineness(sieves).Value.Percent, 0.1 * (four - eight) + 0.4 * (eight - sixty) + sixty);
    }

    [Property]
    public bool EffectiveEquivalent_AnyProduct_IsTheThreeFactors(PositiveInt cce, PositiveInt moisture, PositiveInt one, PositiveInt two, PositiveInt three)
    {
        double percent = Between(cce, 10, 110);
        double wet = Between(moisture, 0, 40);
        SieveAnalysis sieves = Every(one, two, three);
        LimingProduct product = new(Product(percent), sieves, MassFraction.FromPercent(wet));
        return Near(
            product.EffectiveEquivalent(FinenessScheme.NewYork).Value.Percent,
            percent * FinenessScheme.NewYork.Fineness(sieves).Value.Percent / 100 * (1 - wet / 100));
    }

    [Property]
    public bool AsEffectiveMaterial_ADose_NeutralisesTheSame(PositiveInt cce, PositiveInt sixty)
    {
        LimingProduct product = new(Product(Between(cce, 40, 110)), SieveAnalysis.OfMeshes((8, 100), (40, 100), (60, Between(sixty, 20, 100))));
        LimingMaterial effective = product.AsEffectiveMaterial(FinenessScheme.Missouri);
        LimeRequirement need = Given(500);
        return Near(need.As(effective).Grams() * effective.CalciumCarbonateEquivalent.Percent, 50_000) && need.As(effective).Grams() >= need.As(product.Material).Grams() - 1e-9;
    }

    [Property]
    public bool ByCost_Products_GoFromCheapToDear(PositiveInt first, PositiveInt second, PositiveInt price, PositiveInt other)
    {
        LimingProduct[] products = [Priced(Between(first, 30, 100), Between(price, 1, 90)), Priced(Between(second, 30, 100), Between(other, 1, 90)), Priced(80, null)];
        decimal?[] costs = [.. LimingProduct.ByCost(products, FinenessScheme.Ontario).Select(product => product.PricePerEffectiveTonne(FinenessScheme.Ontario))];
        return costs[0] <= costs[1] && costs[2] is null;
    }

    [Property]
    public bool PricePerEffectiveTonne_TimesTheEffectiveShare_IsThePrice(PositiveInt cce, PositiveInt price)
    {
        double percent = Between(cce, 30, 110);
        double cost = Between(price, 1, 200);
        return Near((double)Priced(percent, cost).PricePerEffectiveTonne(FinenessScheme.Ontario)!.Value * percent / 100, cost);
    }

    [Property]
    public bool FromComposition_ParallelMixtures_AddUp(PositiveInt calcite, PositiveInt magnesite)
    {
        double ca = Between(calcite, 1, 50);
        double mg = Between(magnesite, 0, 50);
        LimingMaterial mixture = LimingMaterial.FromComposition("mixture", new LimeComposition(MassFraction.FromPercent(ca), MassFraction.FromPercent(mg)));
        return Near(mixture.CalciumCarbonateEquivalent.Percent, ca + mg * LimingMaterial.MagnesiumCarbonate.CalciumCarbonateEquivalent.Percent / 100)
            && Near(mixture.Magnesium!.Value.Percent, mg * LimingMaterial.MagnesiumCarbonate.Magnesium!.Value.Percent / 100);
    }

    [Property]
    public bool MagnesiumSupplied_OfDolomite_IsItsShareOfTheRate(PositiveInt rate)
    {
        LimeRequirement need = Given(Between(rate, 1, 2000)).As(LimingMaterial.Dolomite);
        return Math.Abs(need.MagnesiumSupplied!.Value.GramsPerSquareMeter / need.Grams() - 24.305 / 184.401) < 1e-5;
    }

    [Property]
    public bool GermanAdvice_MoreHumus_NeverAsksForAHigherPh(PositiveInt group, PositiveInt first, PositiveInt second)
    {
        GermanSoilGroup soil = (GermanSoilGroup)(group.Get % 5);
        double less = Math.Min(Between(first, 0, 30), Between(second, 0, 30));
        double more = Math.Max(Between(first, 0, 30), Between(second, 0, 30));
        GermanLimeAdvice low = GermanLiming.Advice(soil, GermanLandUse.Arable, MassFraction.FromPercent(less));
        GermanLimeAdvice high = GermanLiming.Advice(soil, GermanLandUse.Arable, MassFraction.FromPercent(more));
        return high.TargetInCalciumChloride <= low.TargetInCalciumChloride && high.Maintenance!.Grams() <= low.Maintenance!.Grams();
    }

    private static LimingProduct Priced(double cce, double? price) =>
        new(Product(cce), SieveAnalysis.OfMeshes((10, 100), (60, 100)), pricePerTonne: price is { } known ? (decimal)known : null);

    /// <summary>An analysis on every sieve that any scheme asks for, falling in three free steps.</summary>
    private static SieveAnalysis Every(PositiveInt one, PositiveInt two, PositiveInt three)
    {
        double coarse = Between(one, 50, 100);
        double middle = Between(two, 0, coarse);
        double fine = Between(three, 0, middle);
        Length[] sieves = [.. FinenessScheme.All.SelectMany(scheme => scheme.Sieves).DistinctBy(sieve => sieve.Millimeters).OrderByDescending(sieve => sieve.Millimeters)];
        return new SieveAnalysis([.. sieves.Select(sieve => new SievePassing(
            sieve, Ratio.FromPercent(sieve.Millimeters > 2.1 ? coarse : sieve.Millimeters > 0.26 ? middle : fine)))]);
    }

    private static double Through(SieveAnalysis sieves, int mesh) =>
        sieves.Sieves.Single(sieve => Math.Abs((sieve.Opening - SieveAnalysis.OpeningOf(mesh)).Millimeters) < 1e-6).Passing.Percent;
}
