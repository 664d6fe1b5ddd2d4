#!/usr/bin/env dotnet
#:property PublishAot=false

// Derives the two polynomials that the sine of a day is counted by, and says how far off they are. Run it to see both again:
//     dotnet run docs/tools/fit-sine-day.cs
//
// A sine between a minimum and a maximum, of amplitude A, passes a threshold K. Let t be how far K is from the nearer extreme, over A:
// t = 0 where the wave only touches K, 1 where K is its middle. Then, with x = 1 - t,
//
//     share of the day beyond K      arccos(x) / π                      = √t · Share(t)
//     area beyond K, over A          (√(1 - x²) - x · arccos(x)) / π    = t·√t · Area(t)
//
// and both Share and Area are smooth from 0 to 1, so that one square root and one polynomial replace arc sine and cosine. Their series at
// t = 0 follow from that of the arc sine, whose terms are (2k)! / (4^k k!² (2k + 1)):
//
//     Share(t) = √2/π · Σ a(k) t^k,   Area(t) = √2/π · Σ a(k)/(k + 3/2) t^k,   a(k) = (2k)! / (8^k k!² (2k + 1))
//
// They converge as (t/2)^k. The polynomials are the best ones by the greatest relative error over 0 to 1, found by the exchange
// algorithm of Remez in numbers of 28 digits; the coefficients are then rounded to doubles.

using System.Globalization;

const int Terms = 100;
const decimal SqrtTwoOverPi = 0.4501581580785530347775995955m;
CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;

decimal[] share = new decimal[Terms];
decimal[] area = new decimal[Terms];
decimal central = 1;
for (int k = 0; k < Terms; k++)
{
    share[k] = SqrtTwoOverPi * central / (2 * k + 1);
    area[k] = share[k] / (k + 1.5m);
    central = central * (2 * k + 1) / (4 * (k + 1));
}

Report("Area", area, [15, 16, 17]);
Report("Share", share, [17, 18, 19]);

void Report(string name, decimal[] series, int[] degrees)
{
    foreach (int degree in degrees)
    {
        (decimal[] fitted, decimal error) = Remez(series, degree);
        double[] rounded = [.. fitted.Select(coefficient => (double)coefficient)];
        (double worstUlp, double at) = WorstUlp(series, rounded);
        Console.WriteLine($"{name}, degree {degree}: greatest relative error {(double)error:E2}; in doubles at most {worstUlp:F2} ulp, at t = {at:R}");
        if (degree == degrees[^1])
            Console.WriteLine(string.Join(",\n", rounded.Select(coefficient => $"    {coefficient:R}")));
    }
}

// Evaluated as the kernels do: even and odd powers apart, every operation rounded, no fused multiply-add.
static double Evaluate(double[] coefficients, double t)
{
    double square = t * t;
    int last = coefficients.Length - 1;
    double even = coefficients[last - last % 2];
    for (int k = last - last % 2 - 2; k >= 0; k -= 2)
        even = even * square + coefficients[k];
    int odds = last % 2 == 1 ? last : last - 1;
    double odd = coefficients[odds];
    for (int k = odds - 2; k >= 1; k -= 2)
        odd = odd * square + coefficients[k];
    return odd * t + even;
}

static decimal Sum(decimal[] coefficients, decimal t)
{
    decimal sum = 0;
    for (int k = coefficients.Length - 1; k >= 0; k--)
        sum = sum * t + coefficients[k];
    return sum;
}

// Both functions lie from 1/4 to 1/2, where the last place of a double is worth 2^-54. A cast between double and decimal keeps
// 15 digits only, so that the points are exact fractions and the doubles are taken as whole numbers of last places.
static (double Ulp, double At) WorstUlp(decimal[] series, double[] rounded)
{
    const long LastPlaces = 1L << 54;
    const int Points = 1 << 16;
    double worst = 0, at = 0;
    for (int point = 0; point <= Points; point++)
    {
        double t = (double)point / Points;
        long evaluated = (long)(Evaluate(rounded, t) * LastPlaces);
        double off = (double)Math.Abs(evaluated - Sum(series, point / (decimal)Points) * LastPlaces);
        if (off > worst)
            (worst, at) = (off, t);
    }

    return (worst, at);
}

static (decimal[] Coefficients, decimal Error) Remez(decimal[] series, int degree)
{
    int count = degree + 2;
    decimal[] nodes = [.. Enumerable.Range(0, count).Select(i => (decimal)(0.5 - 0.5 * Math.Cos(Math.PI * i / (count - 1))))];
    decimal[] coefficients = [];
    decimal error = 0;
    for (int round = 0; round < 8; round++)
    {
        decimal[,] system = new decimal[count, count + 1];
        for (int i = 0; i < count; i++)
        {
            decimal value = Sum(series, nodes[i]);
            decimal power = 1;
            for (int j = 0; j <= degree; j++, power *= nodes[i])
                system[i, j] = power;
            system[i, degree + 1] = (i % 2 == 0 ? 1 : -1) * value;
            system[i, count] = value;
        }

        decimal[] solved = Solve(system);
        coefficients = solved[..(degree + 1)];
        error = solved[degree + 1];

        // The new nodes are where the error is greatest between two changes of its sign.
        const int Points = 3000;
        List<(decimal At, decimal Off)> extremes = [];
        for (int point = 0; point <= Points; point++)
        {
            decimal t = (decimal)(0.5 - 0.5 * Math.Cos(Math.PI * point / Points));
            decimal exact = Sum(series, t);
            decimal off = (Sum(coefficients, t) - exact) / exact;
            if (extremes.Count > 0 && Math.Sign(extremes[^1].Off) == Math.Sign(off))
            {
                if (Math.Abs(off) > Math.Abs(extremes[^1].Off))
                    extremes[^1] = (t, off);
            }
            else
            {
                extremes.Add((t, off));
            }
        }

        if (extremes.Count != count)
            break;
        nodes = [.. extremes.Select(extreme => extreme.At)];
        error = extremes.Max(extreme => Math.Abs(extreme.Off));
    }

    return (coefficients, Math.Abs(error));
}

static decimal[] Solve(decimal[,] system)
{
    int count = system.GetLength(0);
    for (int column = 0; column < count; column++)
    {
        int pivot = column;
        for (int row = column + 1; row < count; row++)
            pivot = Math.Abs(system[row, column]) > Math.Abs(system[pivot, column]) ? row : pivot;
        for (int j = 0; j <= count; j++)
            (system[column, j], system[pivot, j]) = (system[pivot, j], system[column, j]);
        for (int row = column + 1; row < count; row++)
        {
            decimal factor = system[row, column] / system[column, column];
            for (int j = column; j <= count; j++)
                system[row, j] -= factor * system[column, j];
        }
    }

    decimal[] solution = new decimal[count];
    for (int row = count - 1; row >= 0; row--)
    {
        decimal value = system[row, count];
        for (int j = row + 1; j < count; j++)
            value -= system[row, j] * solution[j];
        solution[row] = value / system[row, row];
    }

    return solution;
}
