namespace HortiCalc.Beds;

/// <summary>What a published figure of settling or shrinking is about.</summary>
public enum SettlingKind
{
    /// <summary>What is bought on top, as a share of the net volume.</summary>
    Allowance,

    /// <summary>The volume or depth lost by packing down and rotting.</summary>
    VolumeLoss,

    /// <summary>The depth lost on drying.</summary>
    DryingLoss,

    /// <summary>The mass lost by rotting.</summary>
    MassLoss,
}
