namespace HortiCalc.Climate;

/// <summary>The course of a day between its extremes, as far as counting needs it.</summary>
/// <remarks>
/// <para>
/// For every course that is its own mirror image, the area of a day above a temperature K is
/// <c>max(0, M - K) + e · w(t)</c>, with M the mean of the extremes, A half their difference, e how far K is inside the nearer extreme
/// (0 where it is outside both), and t = e / A. Only the weight w differs:
/// </para>
/// <list type="table">
/// <item><term>the mean alone</term><description>0</description></item>
/// <item><term>four cases</term><description>1/4</description></item>
/// <item><term>triangle</term><description>t/4</description></item>
/// <item><term>sine</term><description>√t times a polynomial in t (docs/tools/fit-sine-day.cs derives it)</description></item>
/// </list>
/// <para>
/// The area below is the same with K - M. No case is distinguished, so that lanes of different cases go together; a constant day has
/// A = 0 and e = 0; and near a graze, where the printed forms subtract nearly equal numbers, no digit is lost.
/// </para>
/// </remarks>
internal interface ICurve<TLanes>
    where TLanes : struct, ILanes<TLanes>
{
    /// <summary>e · w(t), t given as e times one over A.</summary>
    static abstract TLanes Part(TLanes inside, TLanes perAmplitude);

    /// <summary>The share of the day beyond K, on the side of the nearer extreme: 0 where K is outside, 1/2 where it is the mean.</summary>
    static abstract TLanes Share(TLanes inside, TLanes perAmplitude);
}
