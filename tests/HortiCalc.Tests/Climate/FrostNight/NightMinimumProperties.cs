using FsCheck.Xunit;
using HortiCalc.Climate;
using HortiCalc.Evidence;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearRegression;
using UnitsNet;

namespace HortiCalc.Tests.Climate;

[Properties(Arbitrary = [typeof(FrostNightArbitraries)], MaxTest = 100)]
public class NightMinimumProperties
{
    private static double SquaresLeft(NightMinimumModel model) =>
        Math.Pow(model.ResidualError.DegreesCelsius, 2) * (model.Nights.Count - (model.Fitting.UsesDewPoint ? 3 : 2));

    private static double Line(NightMinimumModel model, PastNight night) =>
        model.PerEveningTemperature * night.EveningTemperature.DegreesCelsius
        + model.PerDewPoint * night.EveningDewPoint.DegreesCelsius
        + model.Intercept.DegreesCelsius;

    [Property]
    public void Joint_NightsOnALine_FindsTheLineWithoutError(AnyNights any)
    {
        NightMinimumModel model = new(NightMinimumFitting.Joint, any.OnALine);

        Assert.Equal(any.PerEvening, model.PerEveningTemperature, 1e-9);
        Assert.Equal(any.PerDewPoint, model.PerDewPoint, 1e-9);
        Assert.Equal(any.Intercept, model.Intercept.DegreesCelsius, 1e-9);
        Assert.Equal(0, model.ResidualError.DegreesCelsius, 1e-9);
        Assert.Equal(0, model.LeaveOneOutError.DegreesCelsius, 1e-9);
    }

    [Property]
    public void Joint_AnyNights_IsTheLeastSquaresOfAGeneralSolver(AnyNights any)
    {
        NightMinimumModel model = new(NightMinimumFitting.Joint, any.Nights);
        double[] solved = MultipleRegression.QR(
            [.. any.Nights.Select(night => (double[])[night.EveningTemperature.DegreesCelsius, night.EveningDewPoint.DegreesCelsius])],
            [.. any.Nights.Select(night => night.Minimum.DegreesCelsius)],
            intercept: true);

        Assert.Equal(solved[0], model.Intercept.DegreesCelsius, 1e-8);
        Assert.Equal(solved[1], model.PerEveningTemperature, 1e-8);
        Assert.Equal(solved[2], model.PerDewPoint, 1e-8);
    }

    [Property]
    public void Errors_OfTheThreeFits_FallWithWhatTheFitMayUse(AnyNights any)
    {
        double joint = SquaresLeft(new NightMinimumModel(NightMinimumFitting.Joint, any.Nights));
        double twoStep = SquaresLeft(new NightMinimumModel(NightMinimumFitting.TwoStep, any.Nights));
        double temperature = SquaresLeft(new NightMinimumModel(NightMinimumFitting.TemperatureOnly, any.Nights));

        Assert.True(joint <= twoStep + 1e-9);
        Assert.True(twoStep <= temperature + 1e-9);
    }

    [Property]
    public void ResidualError_AnyFit_IsTheRootOfTheSquaresOverTheDegreesOfFreedom(AnyNights any)
    {
        foreach (NightMinimumFitting fitting in NightMinimumFitting.All)
        {
            NightMinimumModel model = new(fitting, any.Nights);
            double squares = any.Nights.Sum(night => Math.Pow(night.Minimum.DegreesCelsius - Line(model, night), 2));
            Assert.Equal(squares, SquaresLeft(model), 1e-8);
        }
    }

    [Property]
    public void LeaveOneOutError_Joint_IsThatOfTheLeverages(AnyNights any)
    {
        NightMinimumModel model = new(NightMinimumFitting.Joint, any.Nights);
        Matrix<double> design = Matrix<double>.Build.DenseOfRows(
            any.Nights.Select(night => (double[])[1, night.EveningTemperature.DegreesCelsius, night.EveningDewPoint.DegreesCelsius]));
        Vector<double> leverages = (design * (design.TransposeThisAndMultiply(design)).Inverse() * design.Transpose()).Diagonal();
        double squares = any.Nights.Select((night, index) =>
            Math.Pow((night.Minimum.DegreesCelsius - Line(model, night)) / (1 - leverages[index]), 2)).Average();

        Assert.Equal(Math.Sqrt(squares), model.LeaveOneOutError.DegreesCelsius, 1e-7);
    }

    [Property]
    public void LeaveOneOutError_LeastSquares_IsAtLeastThatOfTheFit(AnyNights any)
    {
        foreach (NightMinimumFitting fitting in new[] { NightMinimumFitting.Joint, NightMinimumFitting.TemperatureOnly })
        {
            NightMinimumModel model = new(fitting, any.Nights);
            Assert.True(model.LeaveOneOutError.DegreesCelsius >= Math.Sqrt(SquaresLeft(model) / any.Count) - 1e-9);
        }
    }

    [Property]
    public void Model_NightsInFahrenheitAndAnotherOrder_IsTheSame(AnyNights any)
    {
        IReadOnlyList<PastNight> other =
        [
            .. any.Nights.Reverse().Select(night => new PastNight(
                night.EveningTemperature.ToUnit(UnitsNet.Units.TemperatureUnit.DegreeFahrenheit),
                night.EveningDewPoint.ToUnit(UnitsNet.Units.TemperatureUnit.DegreeFahrenheit),
                night.Minimum.ToUnit(UnitsNet.Units.TemperatureUnit.DegreeFahrenheit))),
        ];
        foreach (NightMinimumFitting fitting in NightMinimumFitting.All)
        {
            NightMinimumModel one = new(fitting, any.Nights);
            NightMinimumModel two = new(fitting, other);
            Assert.Equal(one.PerEveningTemperature, two.PerEveningTemperature, 1e-9);
            Assert.Equal(one.PerDewPoint, two.PerDewPoint, 1e-9);
            Assert.Equal(one.LeaveOneOutError.DegreesCelsius, two.LeaveOneOutError.DegreesCelsius, 1e-9);
        }
    }

    [Property]
    public void Minimum_AFittedEvening_LiesInItsRangeOnTheLineAndNotAboveTheEvening(AnyNights any)
    {
        foreach (NightMinimumFitting fitting in NightMinimumFitting.All)
        {
            NightMinimumModel model = new(fitting, any.Nights);
            foreach (PastNight night in any.Nights)
            {
                Estimate<Temperature> minimum = model.Minimum(night.EveningTemperature, night.EveningDewPoint);
                double evening = night.EveningTemperature.DegreesCelsius;
                Assert.Equal(Math.Min(evening, Line(model, night)), minimum.Value.DegreesCelsius, 1e-9);
                Assert.InRange(minimum.Value.DegreesCelsius, minimum.Range!.Low.DegreesCelsius, minimum.Range.High.DegreesCelsius);
                Assert.True(minimum.Range.High.DegreesCelsius <= evening);
                Assert.DoesNotContain(minimum.Cautions, caution => caution.Code == "frost-night.outside-fit");
            }
        }
    }

    [Property]
    public void ChanceOfMinimum_FallingThresholds_FallsAndIsHalfAtTheForecast(AnyNights any)
    {
        NightMinimumModel model = new(NightMinimumFitting.TwoStep, any.Nights);
        PastNight night = any.Nights[0];
        double Chance(double celsius) => model.ChanceOfMinimumAtOrBelow(
            night.EveningTemperature, night.EveningDewPoint, Temperature.FromDegreesCelsius(celsius)).Value.DecimalFractions;
        double forecast = Line(model, night);
        double evening = night.EveningTemperature.DegreesCelsius;

        Assert.Equal(1, Chance(evening));
        if (forecast < evening)
            Assert.Equal(0.5, Chance(forecast), 1e-9);
        for (double celsius = evening; celsius > -20; celsius -= 0.5)
            Assert.True(Chance(celsius - 0.5) <= Chance(celsius));
    }

    [Fact]
    public void ChanceOfMinimum_TenNights_IsStudentsT()
    {
        // Seven degrees of freedom: 5 % lie beyond 1.894578605 standard errors to one side (printed tables of t: 1.895).
        NightMinimumModel model = FrostNightSamples.Model;
        Temperature evening = FrostNightSamples.C(4);
        Temperature dewPoint = FrostNightSamples.C(-3);
        double threshold = model.Minimum(evening, dewPoint).Value.DegreesCelsius - 1.894578605 * model.LeaveOneOutError.DegreesCelsius;

        Assert.Equal(5, model.ChanceOfMinimumAtOrBelow(evening, dewPoint, FrostNightSamples.C(threshold)).Value.Percent, 1e-6);
    }

    [Fact]
    public void Minimum_OutsideTheFittedNights_HasACautionAndFurtherOutIsRefused()
    {
        NightMinimumModel model = FrostNightSamples.Model;
        Estimate<Temperature> outside = model.Minimum(FrostNightSamples.C(10), FrostNightSamples.C(2));

        Assert.Contains(outside.Cautions, caution => caution.Code == "frost-night.outside-fit");
        Assert.Equal(-0.7409, outside.Value.DegreesCelsius, 0.00005);
        FrostNightSamples.AssertRefused<ArgumentOutOfRangeException>(
            () => model.Minimum(FrostNightSamples.C(11.1), FrostNightSamples.C(2)), "eveningTemperature", "was 11.1 °C", "from -5.2 to 11 °C", "from 0.2 to 5.6 °C");
        FrostNightSamples.AssertRefused<ArgumentOutOfRangeException>(
            () => model.Minimum(FrostNightSamples.C(4), FrostNightSamples.C(-25)), "eveningDewPoint", "was -25 °C", "from -20.2 to 14 °C");
        Assert.NotNull(new NightMinimumModel(NightMinimumFitting.TemperatureOnly, FrostNightSamples.TenNights)
            .Minimum(FrostNightSamples.C(4), FrostNightSamples.C(-25)));
    }
}
