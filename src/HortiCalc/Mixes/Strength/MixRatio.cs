using System.Globalization;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Mixes;

/// <summary>How much concentrate goes with how much water: a mix by volume.</summary>
/// <remarks>
/// <para>
/// "1:10" is read in two ways in print. Cleaning charts and garden recipes mean one part to ten parts of water, eleven
/// parts in all; injectors and safety sheets mean one part in ten of the finished mix. The two are made by two
/// methods, <see cref="PartsToParts"/> and <see cref="OneIn"/>, and nothing here takes a bare "1:N".
/// </para>
/// <para>
/// Two ratios are equal when they make the same mix, to twelve significant digits: one part to nine is one in ten.
/// The default value is the undiluted concentrate.
/// </para>
/// </remarks>
/// <example><code>
/// MixRatio garden = MixRatio.PartsToParts(concentrate: 1, diluent: 9);
/// MixRatio sheet = MixRatio.OneIn(10);
/// bool same = garden == sheet;                   // true
/// bool other = garden == MixRatio.OneIn(9);      // false
/// </code></example>
public readonly struct MixRatio : IEquatable<MixRatio>, IFormattable
{
    private MixRatio(double partsOfDiluent) => PartsOfDiluent = partsOfDiluent;

    /// <summary>The concentrate as it is, with no diluent.</summary>
    public static MixRatio Undiluted => default;

    /// <summary>Parts of diluent to one part of concentrate, by volume: 9 for "1 to 9". Not the parts of the whole.</summary>
    public double PartsOfDiluent { get; }

    /// <summary>How many times its own volume the concentrate becomes: 10 for "1 to 9" and for "one in 10".</summary>
    public double Factor => 1 + PartsOfDiluent;

    /// <summary>The share of concentrate in the finished mix: 10 % by volume for "1 to 9".</summary>
    public VolumeConcentration ShareOfConcentrate => VolumeConcentration.FromPercent(100 / Factor);

    /// <summary>"So much concentrate to so much water": parts beside parts. One to nine makes ten parts.</summary>
    /// <param name="concentrate">Parts of concentrate, by volume; more than 0.</param>
    /// <param name="diluent">Parts of water or another diluent, by the same measure; 0 or more.</param>
    /// <returns>The ratio.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number of parts is not finite, or is outside what is allowed.</exception>
    public static MixRatio PartsToParts(double concentrate, double diluent) =>
        Make(Guard.NotNegative(diluent, "parts") / Guard.Positive(concentrate, "parts"), nameof(diluent));

    /// <summary>
    /// "One in so many": one part of concentrate in that many parts of the finished mix. One in ten is one part and nine.
    /// </summary>
    /// <param name="total">Parts of the finished mix that hold one part of concentrate; 1 or more.</param>
    /// <returns>The ratio.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The number is below 1 or not finite.</exception>
    public static MixRatio OneIn(double total) => new(Guard.AtLeast(total, 1, "parts") - 1);

    /// <summary>The ratio whose finished mix holds this share of concentrate by volume.</summary>
    /// <param name="share">More than 0 and at most 100 % by volume.</param>
    /// <returns>The ratio; 10 % gives one in ten.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is 0 or less, or above 100 %.</exception>
    public static MixRatio FromShare(VolumeConcentration share)
    {
        double fraction = Boundary.VolumeFraction(share);
        Guard.Within(Guard.Positive(fraction * 100, "% by volume", nameof(share)), 0, 100, "% by volume", nameof(share));
        return Make((1 / fraction) - 1, nameof(share));
    }

    /// <summary>Dilutes the mix once more.</summary>
    /// <param name="next">How the finished mix is diluted in its turn.</param>
    /// <returns>The ratio of the first concentrate in the last mix: the factors multiply.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The factors multiply to more than a number holds.</exception>
    public MixRatio Then(MixRatio next) => Make((Factor * next.Factor) - 1, nameof(next));

    /// <summary>Whether two ratios make the same mix.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    /// <returns><see langword="true"/> when they agree to twelve significant digits.</returns>
    public static bool operator ==(MixRatio left, MixRatio right) => left.Equals(right);

    /// <summary>Whether two ratios make different mixes.</summary>
    /// <param name="left">The first.</param>
    /// <param name="right">The second.</param>
    /// <returns><see langword="false"/> when they agree to twelve significant digits.</returns>
    public static bool operator !=(MixRatio left, MixRatio right) => !left.Equals(right);

    /// <inheritdoc/>
    public bool Equals(MixRatio other) => Digits(Factor) == Digits(other.Factor);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is MixRatio other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => Digits(Factor).GetHashCode();

    /// <summary>The ratio in both of its meanings, in invariant culture.</summary>
    /// <returns>For instance <c>1 part to 9 parts, one in 10 of the mix</c>.</returns>
    public override string ToString() => ToString(null, null);

    /// <summary>The ratio in both of its meanings.</summary>
    /// <param name="format">Not used: parts are the same in every system of units.</param>
    /// <param name="formatProvider">The culture, or <see langword="null"/> for the invariant one.</param>
    /// <returns>For instance <c>1 part to 9 parts, one in 10 of the mix</c>.</returns>
    public string ToString(string? format, IFormatProvider? formatProvider)
    {
        IFormatProvider culture = formatProvider ?? CultureInfo.InvariantCulture;
        string parts = PartsOfDiluent == 1 ? "part" : "parts";
        return $"1 part to {PartsOfDiluent.ToString("G6", culture)} {parts}, one in {Factor.ToString("G6", culture)} of the mix";
    }

    private static MixRatio Make(double partsOfDiluent, string parameter) => double.IsFinite(partsOfDiluent)
        ? new MixRatio(Math.Max(0, partsOfDiluent))
        : throw Guard.Refused(parameter, partsOfDiluent, "parts of diluent to one of concentrate", "a finite number");

    // A factor is 1 or more, so its logarithm is 0 or more.
    private static double Digits(double factor)
    {
        double scale = Math.Pow(10, 11 - Math.Floor(Math.Log10(factor)));
        return double.IsFinite(scale) && scale > 0 ? Math.Round(factor * scale, MidpointRounding.ToEven) / scale : factor;
    }
}
