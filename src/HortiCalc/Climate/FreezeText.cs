using System.Globalization;

namespace HortiCalc.Climate;

internal static class FreezeText
{
    public static string Of(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
