using HortiCalc.Evidence;

namespace HortiCalc.Climate;

/// <summary>A published way to reckon the length of the day: a formula for the sun's declination, and what counts as sunrise.</summary>
/// <remarks>
/// A day by <see cref="Almanac"/> is longer than one by <see cref="Geometric"/>: by 7 minutes at the equator, by 10 at 45°, and by
/// more than half an hour near the polar circles.
/// </remarks>
public sealed record DaylightMethod
{
    /// <summary>
    /// The centre of the sun when its upper limb seems to touch the horizon: 34' of refraction and 16' of radius, rounded up.
    /// </summary>
    private const double AlmanacSunriseDegrees = -50.0 / 60;

    private static readonly DateOnly Epoch = new(2000, 1, 1);

    private readonly Func<DateOnly, double> declinationRadians;
    private readonly double sineOfSunrise;

    private DaylightMethod(
        string key,
        string name,
        Source source,
        string conditions,
        Func<DateOnly, double> declinationRadians,
        double sunriseDegrees,
        params DomainLimit[] limits)
    {
        Evidence = new Method(key, name, source, new Domain(conditions, limits));
        this.declinationRadians = declinationRadians;
        sineOfSunrise = Math.Sin(double.DegreesToRadians(sunriseDegrees));
    }

    /// <summary>
    /// The centre of the sun on the horizon, without refraction; declination by one sine. FAO Irrigation and Drainage Paper 56,
    /// equations 24, 25 and 34. The definition of the crop water rules, of the day-length tables printed with them, and the default of
    /// <see cref="DiurnalCourse"/>.
    /// </summary>
    public static DaylightMethod Geometric { get; } = new(
        "geometric",
        "geometric day length",
        new Source(
            "fao-56",
            "Crop evapotranspiration, FAO Irrigation and Drainage Paper 56",
            "FAO, Rome",
            1998,
            "http://www.fao.org/docrep/X0490E/x0490e00.htm"),
        "centre of the sun on a level horizon, no refraction",
        date => 0.409 * Math.Sin(2 * Math.PI / 365 * date.DayOfYear - 1.39),
        0);

    /// <summary>
    /// The upper limb of the sun on the horizon, seen through 34' of refraction, as almanacs print; declination by the approximate
    /// coordinates of the U.S. Naval Observatory, for the year itself. Within half a minute of an ephemeris up to 65°.
    /// </summary>
    public static DaylightMethod Almanac { get; } = new(
        "almanac",
        "day length from upper limb to upper limb",
        new Source(
            "usno-approximate-sun",
            "Computing Approximate Solar Coordinates",
            "U.S. Naval Observatory, Astronomical Applications Department",
            null,
            "https://aa.usno.navy.mil/faq/sun_approx"),
        "upper limb of the sun on a level horizon, mean refraction of 34'",
        ApproximateDeclinationRadians,
        AlmanacSunriseDegrees,
        new DomainLimit("date", 1800, 2200, "year"));

    /// <summary>Every method there is.</summary>
    public static IReadOnlyList<DaylightMethod> All { get; } = ValueList<DaylightMethod>.Of([Geometric, Almanac]);

    /// <summary>The method's key, name and source.</summary>
    public Method Evidence { get; }

    /// <summary>Finds a method by its key.</summary>
    /// <param name="key">The <see cref="Method.Key"/> of its <see cref="Evidence"/>, for instance <c>almanac</c>.</param>
    /// <returns>The method.</returns>
    /// <exception cref="ArgumentException">There is no such method, or the key is empty.</exception>
    public static DaylightMethod FromKey(string key) => Keyed.Find(All, method => method.Evidence.Key, key);

    /// <summary>The method's name.</summary>
    /// <returns>For instance <c>geometric day length</c>.</returns>
    public override string ToString() => Evidence.Name;

    internal double DeclinationRadians(DateOnly date) => declinationRadians(date);

    internal void Require(DateOnly date, string parameter) => Evidence.Require(date.Year, "", parameter);

    /// <summary>From 0, the polar night, to 24, the polar day.</summary>
    internal double LengthHours(double latitudeDegrees, DateOnly date)
    {
        (double sineOfLatitude, double cosineOfLatitude) = Math.SinCos(double.DegreesToRadians(latitudeDegrees));
        (double sineOfDeclination, double cosineOfDeclination) = Math.SinCos(DeclinationRadians(date));

        // The cosine of the hour angle at sunrise, before the division that fails at a pole.
        double above = sineOfSunrise - sineOfLatitude * sineOfDeclination;
        double span = cosineOfLatitude * cosineOfDeclination;
        return above <= -span ? 24 : above >= span ? 0 : 24 / Math.PI * Math.Acos(above / span);
    }

    private static double ApproximateDeclinationRadians(DateOnly date)
    {
        // At noon of Greenwich: days from 1 January 2000, 12:00.
        int days = date.DayNumber - Epoch.DayNumber;
        double anomaly = double.DegreesToRadians(357.529 + 0.98560028 * days);
        double longitudeDegrees = 280.459 + 0.98564736 * days + 1.915 * Math.Sin(anomaly) + 0.020 * Math.Sin(2 * anomaly);
        double obliquityDegrees = 23.439 - 0.00000036 * days;
        return Math.Asin(Math.Sin(double.DegreesToRadians(obliquityDegrees)) * Math.Sin(double.DegreesToRadians(longitudeDegrees)));
    }
}
