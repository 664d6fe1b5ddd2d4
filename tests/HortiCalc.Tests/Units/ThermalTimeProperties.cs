using System.Globalization;
using FsCheck.Xunit;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Tests.Units;

public class ThermalTimeProperties
{
    [Property]
    public bool FahrenheitDays_ThereAndBack_GiveTheSumBack(int a) =>
        Close.To(Of(a).CelsiusDays, ThermalTime.FromFahrenheitDays(Of(a).FahrenheitDays).CelsiusDays, 1e-15);

    [Property]
    public bool Addition_OfTwo_HasNoOrder(int a, int b) => Of(a) + Of(b) == Of(b) + Of(a);

    [Property]
    public bool Subtraction_UndoesAddition_Closely(short a, short b) =>
        Close.To(Of(a).CelsiusDays, (Of(a) + Of(b) - Of(b)).CelsiusDays, 1e-9);

    [Property]
    public bool Addition_InFahrenheitDays_GivesTheSameSum(short a, short b) =>
        Math.Abs(Of(a).FahrenheitDays + Of(b).FahrenheitDays - (Of(a) + Of(b)).FahrenheitDays) <= 1e-9;

    [Property]
    public bool Multiplication_ByAWholeNumber_IsRepeatedAddition(short a, byte times)
    {
        ThermalTime sum = ThermalTime.Zero;
        for (int i = 0; i < times; i++)
            sum += Of(a);
        return Close.To((Of(a) * times).CelsiusDays, sum.CelsiusDays, 1e-12);
    }

    [Property]
    public bool Division_OfAMultiple_GivesTheFactorBack(int a, short factor) =>
        a == 0 || Close.To(factor, Of(a) * factor / Of(a), 1e-14);

    [Property]
    public bool From_InFahrenheitAndHours_IsTheSameSum(short difference, ushort time) => Close.To(
        ThermalTime.From(TemperatureDelta.FromDegreesCelsius(difference), Duration.FromDays(time)).CelsiusDays,
        ThermalTime.From(TemperatureDelta.FromDegreesFahrenheit(difference * 1.8), Duration.FromHours(time * 24.0)).CelsiusDays);

    [Property]
    public bool Division_ByADifference_UndoesTheProduct(short difference, ushort days) =>
        difference == 0
        || Close.To(days, (ThermalTime.From(TemperatureDelta.FromDegreesCelsius(difference), Duration.FromDays(days)) / TemperatureDelta.FromDegreesCelsius(difference)).Days);

    [Property]
    public bool Parse_OfTheRoundTripText_GivesTheSumBackInAnyCulture(int a, bool german)
    {
        CultureInfo culture = german ? CultureScope.German : CultureInfo.InvariantCulture;
        return ThermalTime.Parse(Of(a).ToString("R", culture), culture) == Of(a);
    }

    [Property]
    public bool Parse_OfAReadersText_IsWithinItsRounding(int a, bool us) =>
        Math.Abs((ThermalTime.Parse(Of(a).ToString(us ? "U" : "M", null), null) - Of(a)).CelsiusDays) <= 0.05 + 1e-9;

    [Property]
    public bool Comparison_OfTwo_IsThatOfTheirNumbers(int a, int b) =>
        (Of(a) < Of(b)) == (a < b) && (Of(a) >= Of(b)) == (a >= b) && (Of(a) > Of(b)) == (a > b) && (Of(a) <= Of(b)) == (a <= b);

    private static ThermalTime Of(int a) => ThermalTime.FromCelsiusDays(a / 7.0);
}
