namespace HortiCalc.Climate;

/// <summary>What is taken from the area above the lower threshold, as constants that a loop is compiled with.</summary>
internal interface ICutoff
{
    /// <summary>How many times the area above the upper threshold is taken away.</summary>
    static abstract int Times { get; }

    /// <summary>Whether all is taken away for the time spent above the upper threshold.</summary>
    static virtual bool Vertical => false;

    /// <summary>Whether a day may count less than nothing.</summary>
    static virtual bool BelowZero => false;
}

internal readonly struct NoCutoff : ICutoff
{
    public static int Times => 0;
}

internal readonly struct HorizontalCutoff : ICutoff
{
    public static int Times => 1;
}

internal readonly struct IntermediateCutoff : ICutoff
{
    public static int Times => 2;
}

internal readonly struct IntermediateBelowZeroCutoff : ICutoff
{
    public static int Times => 2;

    public static bool BelowZero => true;
}

internal readonly struct VerticalCutoff : ICutoff
{
    public static int Times => 1;

    public static bool Vertical => true;
}
