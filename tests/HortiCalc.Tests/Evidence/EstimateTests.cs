using System.Globalization;
using HortiCalc.Evidence;
using HortiCalc.Units;
using HortiCalc.Tests.Units;
using UnitsNet;

namespace HortiCalc.Tests.Evidence;

public class EstimateTests
{
    [Fact]
    public void Equality_OneInchAndItsMillimetres_AreEqualAndHashAlike()
    {
        Estimate<Length> inch = new(Length.FromInches(1), Samples.Method);
        Estimate<Length> metric = new(Length.FromMillimeters(25.4), Samples.Method);
        Assert.Equal(inch, metric);
        Assert.Equal(inch.GetHashCode(), metric.GetHashCode());
        Assert.True(inch == metric);
    }

    [Fact]
    public void Equality_AnyMemberThatDiffers_Tells()
    {
        Estimate<Length> depth = Samples.Depth;
        Estimate<Length>[] others =
        [
            new(Length.FromInches(5), depth.Method, depth.Range, depth.Adjustments, depth.Cautions),
            new(depth.Value, Samples.Rule, depth.Range, depth.Adjustments, depth.Cautions),
            new(depth.Value, depth.Method, null, depth.Adjustments, depth.Cautions),
            new(depth.Value, depth.Method, depth.Range, [Samples.Rule], depth.Cautions),
            new(depth.Value, depth.Method, depth.Range, depth.Adjustments, [Samples.Danger]),
        ];
        Assert.All(others, other => Assert.NotEqual(depth, other));
        Assert.Equal(depth, new Estimate<Length>(Length.FromCentimeters(15.24), depth.Method, depth.Range, [], [Samples.Note]));
    }

    [Fact]
    public void Constructor_ListsHandedIn_AreCopied()
    {
        List<Caution> cautions = [Samples.Note];
        Estimate<int> estimate = new(3, Samples.Method, cautions: cautions);
        cautions.Add(Samples.Danger);
        Assert.Equal([Samples.Note], estimate.Cautions);
        Assert.Empty(estimate.Adjustments);
    }

    [Fact]
    public void Constructor_WithoutMethodOrValue_IsRefused()
    {
        Assert.Equal("method", Assert.Throws<ArgumentNullException>(() => new Estimate<int>(1, null!)).ParamName);
        Assert.Equal("value", Assert.Throws<ArgumentNullException>(() => new Estimate<string>(null!, Samples.Method)).ParamName);
    }

    [Fact]
    public void Select_RisingArithmetic_CarriesValueRangeAndEvidence()
    {
        Estimate<Volume> volume = Samples.Depth.Select(depth => depth * Area.FromSquareMeters(2));
        Assert.Equal(304.8, volume.Value.Liters, 1e-9);
        Assert.Equal(203.2, volume.Range!.Low.Liters, 1e-9);
        Assert.Equal(406.4, volume.Range.High.Liters, 1e-9);
        Assert.Equal(Samples.Depth.Range!.Meaning, volume.Range.Meaning);
        Assert.Equal(Samples.Depth.Method, volume.Method);
        Assert.Equal(Samples.Depth.Cautions, volume.Cautions);
        Assert.Empty(volume.Adjustments);
    }

    [Fact]
    public void Select_FallingArithmetic_SwapsTheRange()
    {
        Estimate<double> perMetre = Samples.Depth.Select(depth => 1 / depth.Meters);
        Assert.Equal(1 / 0.2032, perMetre.Range!.Low, 1e-9);
        Assert.Equal(1 / 0.1016, perMetre.Range.High, 1e-9);
        Assert.InRange(perMetre.Value, perMetre.Range.Low, perMetre.Range.High);
        Assert.Equal(Samples.Depth.Range!.Meaning, perMetre.Range.Meaning);
    }

    [Fact]
    public void Select_WithoutRange_InventsNone() =>
        Assert.Null(new Estimate<int>(2, Samples.Method).Select(count => count * 2).Range);

    [Fact]
    public void Select_WithoutArithmetic_IsRefused() =>
        Assert.Equal("convert", Assert.Throws<ArgumentNullException>(() => Samples.Depth.Select<int>(null!)).ParamName);

    [Fact]
    public void Select_RangeOfAnUnorderedType_IsRefused() =>
        Assert.ThrowsAny<Exception>(() => Samples.Depth.Select(_ => new object()));

    [Fact]
    public void AdjustedBy_Rule_IsRecordedInOrderAndApplied()
    {
        Estimate<Length> halved = Samples.Depth.AdjustedBy(Samples.Rule, depth => depth / 2);
        Assert.Equal(0.0762, halved.Value.Meters, 1e-12);
        Assert.Equal([Samples.Rule], halved.Adjustments);
        Assert.Equal([Samples.Rule, Samples.Method], halved.AdjustedBy(Samples.Method, depth => depth).Adjustments);
        Assert.Equal(Samples.Depth.Method, halved.Method);
        Assert.Equal("rule", Assert.Throws<ArgumentNullException>(() => Samples.Depth.AdjustedBy(null!, depth => depth)).ParamName);
    }

    [Fact]
    public void WithCautions_OneThatIsThere_IsNotRepeated()
    {
        Estimate<Length> more = Samples.Depth.WithCautions(Samples.Danger, Samples.Note, Samples.Danger);
        Assert.Equal([Samples.Note, Samples.Danger], more.Cautions);
        Assert.Equal(Samples.Depth, Samples.Depth.WithCautions(Samples.Note));
    }

    [Fact]
    public void ToString_Metric_IsOneHonestLine() => Assert.Equal(
        "15.2 cm (10.2 cm to 20.3 cm, range printed by the source); sample table [Sample Extension, Sample Bulletin 7 (1999)]; 1 caution",
        Samples.Depth.ToString());

    [Fact]
    public void ToString_UsCustomary_UsesItsUnits() =>
        Assert.StartsWith("6 in (4 in to 8 in, ", Samples.Depth.ToString("U", null), StringComparison.Ordinal);

    [Fact]
    public void ToString_CommaCulture_WritesCommas() =>
        Assert.StartsWith("15,2 cm (10,2 cm to 20,3 cm, ", Samples.Depth.ToString("M", CultureScope.German), StringComparison.Ordinal);

    [Fact]
    public void ToString_OnACommaMachine_WritesPoints()
    {
        using CultureScope german = new("de-DE");
        Assert.StartsWith("15.2 cm", Samples.Depth.ToString(), StringComparison.Ordinal);
        Assert.StartsWith("15.2 cm", $"{Samples.Depth:M}".Replace(',', ';'), StringComparison.Ordinal);
    }

    [Fact]
    public void ToString_AdjustmentsAndSeveralCautions_AreCounted() => Assert.Equal(
        "3; sample table, scaled to depth [Sample Extension, Sample Bulletin 7 (1999)]; 2 cautions",
        new Estimate<int>(3, Samples.Method, null, [Samples.Rule], [Samples.Note, Samples.Danger]).ToString());

    [Fact]
    public void ToString_UnknownFormat_IsRefused() =>
        Assert.Contains("'X'", Assert.Throws<FormatException>(() => Samples.Depth.ToString("X", null)).Message, StringComparison.Ordinal);

    [Fact]
    public void ToString_OwnQuantitiesAndDates_Read()
    {
        Assert.StartsWith("pH 6.5; ", new Estimate<Ph>(new Ph(6.5), Samples.Method).ToString(), StringComparison.Ordinal);
        Assert.StartsWith("2700 °F·d; ", new Estimate<ThermalTime>(ThermalTime.FromCelsiusDays(1500), Samples.Method).ToString("U", CultureInfo.InvariantCulture), StringComparison.Ordinal);
        Assert.StartsWith("2024-02-29; ", new Estimate<DateOnly>(new DateOnly(2024, 2, 29), Samples.Method).ToString(), StringComparison.Ordinal);
    }
}
