using HortiCalc.Climate;
using HortiCalc.Season;

namespace HortiCalc.Tests.Season;

public sealed class WeatherCsvTests
{
    private const string Header = "date,min_c,max_c\n";

    [Fact]
    public void Read_DaysInOrder_GivesTheSeries()
    {
        DailyTemperatures days = Read("# a remark\n" + Header + "2024-02-28,-1.5,4\n2024-02-29,0.5,7.25\n");
        Assert.Equal(new DateOnly(2024, 2, 28), days.Start);
        Assert.Equal(2, days.Count);
        Assert.Equal(7.25, days[new DateOnly(2024, 2, 29)]!.Maximum.DegreesCelsius);
    }

    [Fact]
    public void Read_OtherOrderOtherColumnsBlanksAndLineEndings_ReadsTheNamedColumns()
    {
        DailyTemperatures days = Read("max_f, rain, min_f, date\r\n\r\n 50 , 3.2 , 32 , 2024-01-01 \r\n");
        DailyTemperature day = days[days.Start]!;
        Assert.Equal(0, day.Minimum.DegreesCelsius, 12);
        Assert.Equal(10, day.Maximum.DegreesCelsius, 12);
    }

    [Fact]
    public void Read_EmptyFieldsAndSkippedDays_AreMissing()
    {
        DailyTemperatures days = Read(Header + "2024-01-01,1,2\n2024-01-02,,3\n2024-01-05,1,2\n");
        Assert.Equal(5, days.Count);
        Assert.Equal([new DateOnly(2024, 1, 2), new DateOnly(2024, 1, 3), new DateOnly(2024, 1, 4)], days.Missing);
    }

    [Theory]
    [InlineData("date,min_c\n2024-01-01,-3.5\n2024-01-02,\n2024-01-03,1\n")]
    [InlineData("min_f,date\n25.7,2024-01-01\n,2024-01-02\n33.8,2024-01-03\n")]
    public void Read_MinimaAlone_AreARecordWithoutMaxima(string text)
    {
        DailyTemperatures days = WeatherCsv.Read(new StringReader(text));
        Assert.Equal((3, 1, 3), (days.Count, days.MissingMinimaCount, days.MissingMaximaCount));
        Assert.Equal(-3.5, days.MinimumOn(new DateOnly(2024, 1, 1))!.Value.DegreesCelsius, 1e-9);
        Assert.Null(days.MinimumOn(new DateOnly(2024, 1, 2)));
    }

    [Theory]
    [InlineData("", 1, 1, "expected a header with the columns date, min_c and max_c (or min_f and max_f), the minima alone where there are no more, found the end")]
    [InlineData("# only a remark\n", 2, 1, "expected a header with the columns date, min_c and max_c (or min_f and max_f), the minima alone where there are no more, found the end")]
    [InlineData("day,min_c,max_c\n", 1, 1, "expected a header with the columns date, min_c and max_c (or min_f and max_f), the minima alone where there are no more, found day,min_c,max_c")]
    [InlineData("date,min_c,max_f\n", 1, 1, "expected a header with the columns date, min_c and max_c (or min_f and max_f), the minima alone where there are no more, found date,min_c,max_f")]
    [InlineData(Header, 2, 1, "expected at least one day, found the end")]
    [InlineData(Header + "2024-01-01,1\n", 2, 12, "expected 3 fields as in the header, found 2")]
    [InlineData(Header + "2024-01-01,1,2,3\n", 2, 16, "expected 3 fields as in the header, found 4")]
    [InlineData(Header + "01.02.2024,1,2\n", 2, 1, "expected a date such as 2025-05-01, found \"01.02.2024\"")]
    [InlineData(Header + "2023-02-29,1,2\n", 2, 1, "expected a date such as 2025-05-01, found \"2023-02-29\"")]
    [InlineData(Header + ",1,2\n", 2, 1, "expected a date such as 2025-05-01, found nothing")]
    [InlineData(Header + "2024-01-02,1,2\n2024-01-02,1,2\n", 3, 1, "expected a day after 2024-01-02, found 2024-01-02")]
    [InlineData(Header + "2024-01-02,1,2\n2024-01-01,1,2\n", 3, 1, "expected a day after 2024-01-02, found 2024-01-01")]
    [InlineData(Header + "2024-01-01,1.2.3,2\n", 2, 12, "expected a temperature such as -3.5, or nothing where it is missing, found \"1.2.3\"")]
    [InlineData(Header + "2024-01-01, cold,2\n", 2, 13, "expected a temperature such as -3.5, or nothing where it is missing, found \"cold\"")]
    [InlineData(Header + "2024-01-01,1,NaN\n", 2, 14, "expected a temperature such as -3.5, or nothing where it is missing, found \"NaN\"")]
    [InlineData(Header + "2024-01-01,1,1e1\n", 2, 14, "expected a temperature such as -3.5, or nothing where it is missing, found \"1e1\"")]
    [InlineData(Header + "2024-01-01,1,61\n", 2, 14, "expected from -90 to 60 °C, found 61")]
    [InlineData("date,min_f,max_f\n2024-01-01,-131,3\n", 2, 12, "expected from -130 to 140 °F, found -131")]
    [InlineData(Header + "2024-01-01,5,4.9\n", 2, 14, "expected no less than the day's lowest, 5, found 4.9")]
    public void Read_NotAsDescribed_GivesLineColumnAndWhatWasExpected(string text, int line, int column, string problem)
    {
        MalformedInputException malformed = Assert.Throws<MalformedInputException>(() => Read(text));
        Assert.Equal((line, column, problem), (malformed.Line, malformed.Column, malformed.Problem));
        Assert.Equal($"line {line}, column {column}: {problem}", malformed.Message);
    }

    [Fact]
    public void Read_Null_IsRefused() => Assert.Throws<ArgumentNullException>("reader", () => WeatherCsv.Read(null!));

    [Fact]
    public void Read_CommaCulture_StillTakesAPoint()
    {
        System.Globalization.CultureInfo before = System.Globalization.CultureInfo.CurrentCulture;
        try
        {
            System.Globalization.CultureInfo.CurrentCulture = new System.Globalization.CultureInfo("de-DE");
            Assert.Equal(1.5, Read(Header + "2024-01-01,1.5,2\n")[new DateOnly(2024, 1, 1)]!.Minimum.DegreesCelsius);
        }
        finally
        {
            System.Globalization.CultureInfo.CurrentCulture = before;
        }
    }

    private static DailyTemperatures Read(string text) => WeatherCsv.Read(new StringReader(text));
}
