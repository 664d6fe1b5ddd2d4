namespace HortiCalc.Soil;

/// <summary>Logarithm and exponential near zero with all their digits, which the library's own functions of that name lose.</summary>
internal static class NearZero
{
    /// <summary>ln(1 + x), by Kahan's correction of the rounding in 1 + x.</summary>
    public static double LogOfOnePlus(double x)
    {
        double sum = 1 + x;
        return sum == 1 || double.IsInfinity(sum) || sum <= 0 ? Math.Log(sum) + (sum == 1 ? x : 0) : Math.Log(sum) * (x / (sum - 1));
    }

    /// <summary>eˣ − 1, likewise.</summary>
    public static double ExponentialLessOne(double x)
    {
        double power = Math.Exp(x);
        double less = power - 1;
        return power == 1 ? x : less == -1 || double.IsInfinity(power) ? less : less * (x / Math.Log(power));
    }
}
