using HortiCalc.Evidence;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Soil;

/// <summary>What the methods by texture and pH have in common.</summary>
internal abstract record TextureLiming : LimingMethod
{
    /// <summary>The heading of the column for a texture class, or nothing where the table has no column for it.</summary>
    internal abstract string? Heading(SoilTexture texture);

    /// <summary>Whether the table names the texture class itself, so that nothing of ours is read into it.</summary>
    internal virtual bool IsNamed(SoilTexture texture, string heading) => LimeRules.Words(texture) == heading;

    internal sealed override IEnumerable<string> Absent(SoilReport soil)
    {
        if (soil.PhInWater is null)
            yield return nameof(SoilReport.PhInWater);
        if (soil.Texture is null)
            yield return nameof(SoilReport.Texture);
    }

    internal sealed override ArgumentException? Outside(SoilReport soil, Ph target)
    {
        SoilTexture texture = soil.Texture!.Value;
        if (Heading(texture) is null)
        {
            IEnumerable<SoilTexture> known = Enum.GetValues<SoilTexture>().Where(other => Heading(other) is not null);
            return Refused(
                nameof(SoilReport.Texture),
                $"{nameof(SoilReport.Texture)} was {texture}; allowed: {string.Join(", ", known)}, for which '{Method.Name}' has a column.");
        }

        return OutsideLimit(soil.PhInWater!.Value.Value, "pH", nameof(SoilReport.PhInWater)) ?? OutsideLimit(target.Value, "pH", nameof(target));
    }

    internal sealed override Estimate<AreaDensity> Rate(SoilReport soil, Ph target)
    {
        SoilTexture texture = soil.Texture!.Value;
        string heading = Heading(texture)!;
        (double gramsPerSquareMetre, Method? reading) = Read(heading, soil.PhInWater!.Value.Value, target.Value);
        List<Method> adjustments = [];
        if (!IsNamed(texture, heading))
            adjustments.Add(LimeRules.Column(texture, heading));
        if (reading is not null)
            adjustments.Add(reading);
        return Answer(gramsPerSquareMetre, adjustments);
    }

    /// <summary>The rate in a column, and the rule of reading where the value is not printed as such.</summary>
    private protected abstract (double GramsPerSquareMetre, Method? Reading) Read(string heading, double currentPh, double targetPh);
}
