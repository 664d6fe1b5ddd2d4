using HortiCalc.Evidence;
using HortiCalc.Units;

namespace HortiCalc.Climate;

/// <summary>A published way to reckon the length of the day: where the sun stands, and how low it may be for the day to count.</summary>
/// <remarks>
/// A day by <see cref="Almanac"/> is longer than one by <see cref="Geometric"/>: by 7 minutes at the equator, by 10 at 45°, and by
/// more than half an hour near the polar circles. <see cref="CivilTwilight"/> adds another 40 minutes at the equator and about an
/// hour at 45°; many plants that count hours of darkness still see it as day.
/// </remarks>
public sealed record DaylightMethod
{
    /// <summary>
    /// The centre of the sun when its upper limb seems to touch the horizon: 34' of refraction and 16' of radius, rounded up.
    /// </summary>
    private const double UpperLimbDegrees = -50.0 / 60;

    private const double CivilTwilightDegrees = -6;
    private const int FirstYear = 1900;
    private const int LastYear = 2100;

    private readonly bool isOneSine;
    private readonly double altitudeDegrees;

    private DaylightMethod(
        string key, string name, Source source, string conditions, double altitudeDegrees, bool isOneSine, params DomainLimit[] limits)
    {
        Evidence = new Method(key, name, source, new Domain(conditions, limits));
        this.altitudeDegrees = altitudeDegrees;
        this.isOneSine = isOneSine;
    }

    /// <summary>
    /// The centre of the sun on the horizon, without refraction; declination by one sine. FAO Irrigation and Drainage Paper 56,
    /// equations 24, 25 and 34. The definition of the crop water rules, of the day-length tables printed with them, and the default of
    /// <see cref="DiurnalCourse"/>.
    /// </summary>
    public static DaylightMethod Geometric { get; } = new(
        "geometric",
        "geometric day length",
        SunEvidence.Fao56,
        "centre of the sun on a level horizon, no refraction",
        0,
        isOneSine: true);

    /// <summary>
    /// The centre of the sun on the horizon, without refraction, with the position of the sun of the very year and hour. Differs from
    /// <see cref="Geometric"/> by up to some minutes, for that has one sine for every year.
    /// </summary>
    public static DaylightMethod CentreOnHorizon { get; } = ByPosition(
        "centre-on-horizon", "day length from centre to centre", "centre of the sun on a level horizon, no refraction", 0);

    /// <summary>
    /// The upper limb of the sun on the horizon, seen through 34' of refraction, as almanacs and weather services print. Within
    /// half a minute of an ephemeris up to 60° and a minute up to 65°. The default of <see cref="Daylight.On"/>.
    /// </summary>
    public static DaylightMethod Almanac { get; } = ByPosition(
        "almanac",
        "day length from upper limb to upper limb",
        "upper limb of the sun on a level horizon, mean refraction of 34'",
        UpperLimbDegrees);

    /// <summary>From the centre of the sun 6° below the horizon at dawn to the same at dusk.</summary>
    public static DaylightMethod CivilTwilight { get; } = ByPosition(
        "civil-twilight", "day length with civil twilight", "centre of the sun not more than 6° below a level horizon", CivilTwilightDegrees);

    /// <summary>Every method there is.</summary>
    public static IReadOnlyList<DaylightMethod> All { get; } =
        ValueList<DaylightMethod>.Of([Geometric, CentreOnHorizon, Almanac, CivilTwilight]);

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

    internal void Require(DateOnly date, string parameter)
    {
        // The limit is named for a date; the parameter may be a span or a series of them.
        foreach (DomainLimit limit in Evidence.Domain.Limits)
        {
            if (!limit.Contains(date.Year))
                throw Guard.Refused(parameter, date.Year, limit.Unit, $"{limit.Span}, which is what '{Evidence.Name}' was published for");
        }
    }

    /// <summary>Whether the method was published for the year of a date.</summary>
    internal bool Holds(DateOnly date) => Evidence.Domain.Contains("date", date.Year);

    /// <summary>At noon of Greenwich.</summary>
    internal double DeclinationRadians(DateOnly date) => isOneSine
        ? Fao56Sun.DeclinationRadians(date.DayOfYear)
        : SolarPosition.At(SolarPosition.NoonDays(date)).DeclinationRadians;

    /// <summary>From 0, the polar night, to 24, the polar day. At longitude 0 where the position of the sun decides.</summary>
    internal double LengthHours(double latitudeDegrees, DateOnly date) => isOneSine
        ? Fao56Sun.DayLengthHours(latitudeDegrees, date.DayOfYear)
        : SolarDay.Around(SolarPosition.NoonDays(date), latitudeDegrees, 0, altitudeDegrees).LengthHours;

    /// <summary>The day whose noon lies nearest to the mean solar noon that is so many days after 1 January 2000.</summary>
    internal SolarDay Around(int noonDays, double latitudeDegrees, double longitudeDegrees, DateOnly date)
    {
        if (!isOneSine)
            return SolarDay.Around(noonDays, latitudeDegrees, longitudeDegrees, altitudeDegrees);
        double noon = SolarPosition.MeridianDays(noonDays, longitudeDegrees);
        double hours = LengthHours(latitudeDegrees, date);
        return hours is 0 or 24
            ? new SolarDay(noon, null, null, hours)
            : new SolarDay(noon, noon - hours / 48, noon + hours / 48, hours);
    }

    private static DaylightMethod ByPosition(string key, string name, string conditions, double altitudeDegrees) => new(
        key, name, SunEvidence.Noaa, conditions, altitudeDegrees, false, new DomainLimit("date", FirstYear, LastYear, ""));
}
