namespace HortiCalc.Climate;

/// <summary>
/// The day round one solar noon: when the sun passes an altitude on its way up and on its way down. Moments are days from 1 January
/// 2000, 12:00 universal time; a side on which the sun does not pass has none.
/// </summary>
internal readonly record struct SolarDay(double NoonDays, double? RiseDays, double? SetDays, double LengthHours)
{
    private const int Halvings = 36; // Half a day halved to less than a microsecond.

    public static SolarDay Around(int noonDays, double latitudeDegrees, double longitudeDegrees, double altitudeDegrees)
    {
        (double sineOfLatitude, double cosineOfLatitude) = Math.SinCos(double.DegreesToRadians(latitudeDegrees));
        double sineOfAltitude = Math.Sin(double.DegreesToRadians(altitudeDegrees));
        double noon = SolarPosition.MeridianDays(noonDays, longitudeDegrees);
        bool isUpAtNoon = IsUp(noon);
        double? rise = isUpAtNoon == IsUp(noon - 0.5) ? null : Passing(noon - 0.5, noon);
        double? set = isUpAtNoon == IsUp(noon + 0.5) ? null : Passing(noon + 0.5, noon);

        // A half without a passing is all day or all night; near a pole one half can be either while the other has its passing.
        double morning = HalfLength(rise is double up ? noon - up : 0.5);
        double evening = HalfLength(set is double down ? down - noon : 0.5);

        // Where the sun is down at noon but up at a midnight, within half a degree of a pole, it sets before noon or rises after it.
        return new SolarDay(noon, isUpAtNoon ? rise : null, isUpAtNoon ? set : null, Math.Min(24, 24 * (morning + evening)));

        bool IsUp(double days)
        {
            (double declination, double equationOfTime) = SolarPosition.At(days);
            (double sine, double cosine) = Math.SinCos(declination);
            double turns = SolarPosition.HourAngleTurns(days, equationOfTime, longitudeDegrees);
            return sineOfLatitude * sine + cosineOfLatitude * cosine * Math.Cos(2 * Math.PI * (turns - Math.Round(turns, MidpointRounding.ToEven)))
                >= sineOfAltitude;
        }

        // Between midnight and noon the sun climbs all the time, but for the last fractions of a degree round the poles.
        double Passing(double midnight, double noonOf)
        {
            (double down, double up) = (midnight, noonOf);
            for (int halving = 0; halving < Halvings; halving++)
            {
                double middle = (down + up) / 2;
                if (IsUp(middle) == isUpAtNoon)
                    up = middle;
                else
                    down = middle;
            }

            return (down + up) / 2;
        }

        double HalfLength(double days) => isUpAtNoon ? days : 0.5 - days;
    }
}
