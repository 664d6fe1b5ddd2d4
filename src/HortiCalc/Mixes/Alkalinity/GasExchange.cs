namespace HortiCalc.Mixes;

/// <summary>What becomes of the carbon dioxide that acid sets free from a water.</summary>
public enum GasExchange
{
    /// <summary>It stays, as in a pipe or just after mixing: what a meter shows at the injector.</summary>
    Closed,

    /// <summary>It leaves until water and air balance, as in a bucket over night: the pH is higher then.</summary>
    OpenToAir,
}
