using System.Globalization;

namespace HortiCalc.Tests.Units;

/// <summary>Makes another culture the machine's for a while.</summary>
internal sealed class CultureScope : IDisposable
{
    private readonly CultureInfo before = CultureInfo.CurrentCulture;

    public CultureScope(string name) => CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(name);

    public static CultureInfo German { get; } = CultureInfo.GetCultureInfo("de-DE");

    public void Dispose() => CultureInfo.CurrentCulture = before;
}
