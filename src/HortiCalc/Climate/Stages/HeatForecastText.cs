using HortiCalc.Display;

namespace HortiCalc.Climate;

/// <summary>The words for dates that may not come.</summary>
internal static class HeatForecastText
{
    public static string Of(DateOnly? date, TextStyle style) => date is DateOnly day ? QuantityText.Of(day, style) : "not reached";
}
