using HortiCalc.Containers;
using HortiCalc.Units;
using UnitsNet;

namespace HortiCalc.Season;

/// <summary>A number of like pots, the crop they are to carry, and what fills them.</summary>
public sealed record PotPlan
{
    /// <summary>Describes a number of like pots, one plant in each.</summary>
    /// <param name="name">The name, unique in the garden.</param>
    /// <param name="crop">The name of the crop.</param>
    /// <param name="container">The shape and size of one pot.</param>
    /// <param name="count">How many pots, 1 or more.</param>
    /// <param name="headspace">What is left free below the rim; less than the height of the pot.</param>
    /// <param name="compactionAllowance">The medium to add because it packs when it is watered; zero or more.</param>
    /// <param name="medium">The name of the medium.</param>
    /// <param name="bag">The volume of one bag of it, or <see langword="null"/> where it comes loose.</param>
    /// <param name="wintersIndoors">Whether the pots come indoors for the winter.</param>
    /// <exception cref="ArgumentException">A name is empty.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    public PotPlan(
        string name,
        string crop,
        Container container,
        int count,
        Length headspace,
        Ratio compactionAllowance,
        string medium,
        Volume? bag = null,
        bool wintersIndoors = false)
    {
        Name = Guard.NotBlank(name);
        Crop = Guard.NotBlank(crop);
        Container = Guard.NotNull(container);
        Count = Guard.AtLeast(count, 1);
        double heightMetres = Boundary.Metres(container.Height);
        double headspaceMetres = Boundary.Metres(headspace);
        if (!(headspaceMetres >= 0 && headspaceMetres < heightMetres))
            throw Guard.Refused(nameof(headspace), headspaceMetres, "m", $"0 m or more, less than the height of the pot, {Guard.Number(heightMetres)} m");
        Headspace = HouseUnits.Normalise(headspace);
        Guard.NotNegative(Boundary.Fraction(compactionAllowance) * 100, "%", nameof(compactionAllowance));
        CompactionAllowance = HouseUnits.Normalise(compactionAllowance);
        Medium = Guard.NotBlank(medium);
        if (bag is Volume volume)
        {
            Guard.Positive(Boundary.Litres(volume), "L", nameof(bag));
            Bag = HouseUnits.Normalise(volume);
        }

        WintersIndoors = wintersIndoors;
    }

    /// <summary>The name, unique in the garden.</summary>
    public string Name { get; }

    /// <summary>The name of the crop.</summary>
    public string Crop { get; }

    /// <summary>The shape and size of one pot.</summary>
    public Container Container { get; }

    /// <summary>How many pots.</summary>
    public int Count { get; }

    /// <summary>What is left free below the rim.</summary>
    public Length Headspace { get; }

    /// <summary>The medium to add because it packs when it is watered.</summary>
    public Ratio CompactionAllowance { get; }

    /// <summary>The name of the medium.</summary>
    public string Medium { get; }

    /// <summary>The volume of one bag of it, or <see langword="null"/> where it comes loose.</summary>
    public Volume? Bag { get; }

    /// <summary>Whether the pots come indoors for the winter.</summary>
    public bool WintersIndoors { get; }

    /// <summary>The pots, their number and their crop.</summary>
    /// <returns>For instance <c>terrace pots: 6 of lemon verbena</c>.</returns>
    public override string ToString() => $"{Name}: {Guard.Number(Count)} of {Crop}";
}
