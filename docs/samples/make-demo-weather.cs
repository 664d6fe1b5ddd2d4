#!/usr/bin/env dotnet
#:property PublishAot=false

// Writes the invented daily weather of the demo, shared/demo/weather.csv:
//
//     dotnet run docs/samples/make-demo-weather.cs > shared/demo/weather.csv
//
// Nothing here was measured. Each day's mean is the season's mean, plus the mood of that year, plus a run of warm and
// cold spells: tomorrow's departure is a share of today's and a fresh accident. Half the day's range, itself a little
// uneven, is then taken off for the lowest temperature and added for the highest.
//
// The file must come out the same on every machine. So chance comes from integer arithmetic (SplitMix64: Steele, Lea and
// Flood, "Fast splittable pseudorandom number generators", 2014), a bell curve from twelve throws added up, the season
// from straight lines between monthly figures, and nowhere from a sine, a logarithm or a library's random numbers.

using System.Globalization;

const int FirstYear = 1996;
const int LastYear = 2025;
const double Persistence = 0.7;

double[] monthlyMean = [0.4, 1.6, 5.1, 9.2, 13.8, 17.2, 19.4, 18.8, 15.0, 10.1, 5.0, 1.5];
double[] monthlyRange = [6.5, 7.5, 9.0, 10.5, 11.0, 11.5, 12.0, 11.5, 10.5, 8.5, 6.5, 6.0];
double[] monthlySpread = [3.7, 3.6, 3.3, 3.1, 2.8, 2.6, 2.3, 2.3, 2.6, 2.9, 3.3, 3.6];

// The instrument failed now and then; these runs of days have no reading.
(DateOnly First, int Days)[] gaps =
[
    (new DateOnly(2003, 2, 11), 4),
    (new DateOnly(2011, 7, 30), 1),
    (new DateOnly(2018, 11, 5), 2),
];

ulong state = 20_260_321;
double fresh = Math.Sqrt(1 - Persistence * Persistence);
double departure = 0;
TextWriter output = Console.Out;
output.NewLine = "\n";
output.WriteLine("# INVENTED weather of an invented place, Larkmere Halt: nothing here was measured.");
output.WriteLine("# Written by docs/samples/make-demo-weather.cs. Lowest and highest air temperature of each day in degrees Celsius.");
output.WriteLine("# An empty field is a missing reading.");
output.WriteLine("date,min_c,max_c");
for (int year = FirstYear; year <= LastYear; year++)
{
    double mood = 0.6 * Bell();
    for (DateOnly day = new(year, 1, 1); day.Year == year; day = day.AddDays(1))
    {
        departure = Persistence * departure + fresh * Season(monthlySpread, day) * Bell();
        double mean = Season(monthlyMean, day) + mood + departure;
        double range = Season(monthlyRange, day) * (1 + 0.25 * Math.Clamp(Bell(), -2.5, 2.5));
        output.WriteLine(gaps.Any(gap => day >= gap.First && day < gap.First.AddDays(gap.Days))
            ? $"{day:yyyy-MM-dd},,"
            : $"{day:yyyy-MM-dd},{Tenths(mean - range / 2)},{Tenths(mean + range / 2)}");
    }
}

// The figure of a day, on the straight line between the middles of two months.
static double Season(double[] monthly, DateOnly day)
{
    double position = day.Month - 1 + (day.Day - 0.5) / DateTime.DaysInMonth(day.Year, day.Month) - 0.5;
    int before = (int)Math.Floor(position);
    double share = position - before;
    return (1 - share) * monthly[(before + 12) % 12] + share * monthly[(before + 1) % 12];
}

// Rounded to a tenth of a degree; adding zero turns -0.0 into 0.0.
static string Tenths(double celsius) =>
    (Math.Round(celsius, 1, MidpointRounding.AwayFromZero) + 0).ToString("0.0", CultureInfo.InvariantCulture);

// Twelve even throws, less six: mean 0, standard deviation 1, and no more than 6 either way.
double Bell()
{
    double sum = -6;
    for (int i = 0; i < 12; i++)
        sum += (Next() >> 11) * (1.0 / (1UL << 53));
    return sum;
}

ulong Next()
{
    ulong z = state += 0x9E3779B97F4A7C15;
    z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
    z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
    return z ^ (z >> 31);
}
