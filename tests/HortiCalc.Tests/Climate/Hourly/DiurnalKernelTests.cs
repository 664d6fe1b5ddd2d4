using HortiCalc.Climate;

namespace HortiCalc.Tests.Climate;

public class DiurnalKernelTests
{
    /// <summary>
    /// Sunrise at 6, sunset at 18, 30 °C down to 12 °C the next morning: printed to five places as the course of Cesaraccio and others, 2001, in
    /// https://rdrr.io/cran/TrenchR/src/tests/testthat/test-22-DTRFunctions.R. Hour 26 is there hour 2, after the same day.
    /// </summary>
    [Theory]
    [InlineData(8, 17.65367)]
    [InlineData(16, 27.94389)]
    [InlineData(20, 18.49743)]
    [InlineData(26, 14.01487)]
    public void SineSineSquareRoot_HoursPrintedElsewhere_AreFound(double hour, double celsius)
    {
        DiurnalDay today = new(10, 30, 12);
        DiurnalDay tomorrow = new(12, 30, 12);

        Assert.Equal(celsius, DiurnalKernels.SineSineSquareRoot(today, today, tomorrow, hour), 0.000005);
    }
}
