using System.Globalization;
using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Plants;

/// <summary>Reads rows typed as they are printed: nine columns from 32 to 104 °F, which are 0 to 40 °C by fives.</summary>
internal static class EmergencePrint
{
    private const double CelsiusPerColumn = 5;

    /// <summary>Days, a range of days, NG for no germination, or a dash for not tested.</summary>
    public static EmergenceTable Row(string crop, string printedCrop, string columns, Source source) => new(
        crop, printedCrop, [.. columns.Split(' ').Select((text, column) => Cell(text, At(column)))], source);

    public static Temperature At(int column) => Temperature.FromDegreesCelsius(column * CelsiusPerColumn);

    private static EmergenceCell Cell(string text, Temperature soil)
    {
        if (text == "NG")
            return new EmergenceCell(soil, EmergenceFinding.NoGermination);
        if (text == "-")
            return new EmergenceCell(soil, EmergenceFinding.NotTested);
        string[] ends = text.Split('-');
        return new EmergenceCell(soil, EmergenceFinding.Emerges, Days(ends[0]), Days(ends[^1]));
    }

    private static Duration Days(string text) => Duration.FromDays(double.Parse(text, CultureInfo.InvariantCulture));
}
