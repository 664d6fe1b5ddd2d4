using System.Runtime.CompilerServices;

namespace HortiCalc.Climate;

/// <summary>
/// The dynamic model: cold forms an intermediate product and warmth destroys it, dx/dt = a0 exp(-e0/K) - a1 exp(-e1/K) x, solved
/// exactly over each hour of one temperature. Once there is one unit of it, a share that falls with cold and rises with warmth is
/// fixed for good as a portion.
/// </summary>
internal readonly struct DynamicRule : IHourlyRule
{
    // Constants of the model: Fishman, Erez and Couvillon 1987; Erez, Fishman, Linsley-Noakes and Allan 1990. Activation energies over the gas
    // constant (K), rates (1/h), slope and transition temperature (K) of the share that is fixed.
    public const double FormationEnergyKelvin = 4153.5;
    public const double DestructionEnergyKelvin = 12888.8;
    public const double FormationRate = 139_500;
    public const double DestructionRate = 2.567e18;
    public const double Slope = 1.6;
    public const double TransitionKelvin = 277;

    /// <summary>Zero Celsius as the model was fitted with: 273 K, not 273.15.</summary>
    public const double KelvinAtZeroCelsius = 273;

    public static bool KeepsState => true;

    public static bool WaitsForMemory => false;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public TLanes Add<TLanes>(TLanes celsius, ref TLanes state)
        where TLanes : struct, IStationLanes<TLanes>
    {
        TLanes one = TLanes.All(1);
        TLanes perKelvin = one / (celsius + TLanes.All(KelvinAtZeroCelsius));
        TLanes balance = TLanes.All(FormationRate / DestructionRate)
            * TLanes.Exp(TLanes.All(DestructionEnergyKelvin - FormationEnergyKelvin) * perKelvin);
        TLanes destruction = TLanes.All(DestructionRate) * TLanes.Exp(TLanes.All(-DestructionEnergyKelvin) * perKelvin);
        TLanes product = balance - (balance - state) * TLanes.Exp(TLanes.All(0) - destruction);
        state = product;
        if (!TLanes.AnyAtLeast(product, one))
            return TLanes.All(0);

        // 1 / (1 + exp(-slope T* (K - T*) / K)).
        TLanes share = one / (one + TLanes.Exp(
            TLanes.All(Slope * TransitionKelvin * TransitionKelvin) * perKelvin - TLanes.All(Slope * TransitionKelvin)));
        TLanes below = TLanes.All(BelowOne);
        TLanes portion = TLanes.WhereAbove(product, below, product * share, TLanes.All(0));
        state = product - portion;
        return portion;
    }

    /// <summary>The number before one: above it is one and more.</summary>
    private static readonly double BelowOne = Math.BitDecrement(1.0);
}
