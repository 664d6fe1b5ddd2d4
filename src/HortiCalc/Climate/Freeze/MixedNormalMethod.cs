namespace HortiCalc.Climate;

/// <summary>The mixed distribution: see <see cref="FreezeDateMethod.MixedNormal"/>.</summary>
public sealed record MixedNormalMethod : FreezeDateMethod
{
    /// <summary>The method.</summary>
    /// <returns>Its name.</returns>
    public override string ToString() => "mixed normal distribution";
}
