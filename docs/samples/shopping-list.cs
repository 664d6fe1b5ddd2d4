#!/usr/bin/env dotnet
#:project ../../src/HortiCalc/HortiCalc.csproj
#:project HortiCalc.Samples/HortiCalc.Samples.csproj
#:property PublishAot=false

// A shopping list for three beds and forty pots: what to buy, what it weighs, and how often the car has to go.
//
//     dotnet run docs/samples/shopping-list.cs
//     dotnet run docs/samples/shopping-list.cs -- --pots 60 --payload 900 --space 30 --units us
//
// The beds, the pots and the prices are invented; they belong to the garden of shared/demo.

using System.Globalization;
using HortiCalc.Beds;
using HortiCalc.Containers;
using HortiCalc.Display;
using HortiCalc.Evidence;
using HortiCalc.Json;
using HortiCalc.Samples;
using HortiCalc.Units;
using UnitsNet;

const string Help = """
    A shopping list for three beds and forty pots: what to buy, what it weighs, and how often the car has to go.

    dotnet run docs/samples/shopping-list.cs -- [options]

      --pots N           how many pots                                  (40)
      --payload N        what the car may carry, kg or lb               (400 kg)
      --space N          what it holds, litres or cubic feet            (900 L)
      --units UNITS      metric or us, for what is read and printed     (metric)
      --json             the haul as JSON instead of the list
      --help             this text

    Beds, pots and prices are invented, for the garden of shared/demo.
    """;

return CommandLine.Answer(args, Help, options =>
{
    MeasurementSystem units = options.Units;
    bool us = options.Us;
    string format = options.Format;
    int pots = options.Number("--pots", "40") switch
    {
        null => 40,
        double count when count == Math.Floor(count) && count is > 0 and <= 10_000 => (int)count,
        _ => throw new ArgumentException($"--pots: expected a whole number above zero, up to 10000, found {options.Text("--pots", "")}"),
    };
    Vehicle car = new(
        options.Number("--payload", "400") is double payload ? us ? Mass.FromPounds(payload) : Mass.FromKilograms(payload) : Mass.FromKilograms(400),
        options.Number("--space", "900") is double space ? us ? Volume.FromCubicFeet(space) : Volume.FromLiters(space) : Volume.FromLiters(900));

    // Three beds. The ridge is heaped up from soil of the plot and needs a mulch on all of its surface.
    Ratio settling = Ratio.FromPercent(10);
    AmendmentLayer Layer(double centimetres) => AmendmentLayer.LooseOnTop(Length.FromCentimeters(centimetres), settling);
    LayeredBed kitchen = new(
        Bed.Rectangle(Length.FromMeters(1.2), Length.FromMeters(3)),
        rim: Length.FromCentimeters(30),
        existing: Length.FromCentimeters(12),
        [new BedLayer("topsoil", BulkMaterial.Soil, Layer(12)), new BedLayer("compost", BulkMaterial.Compost, Layer(5))],
        BedEdging.Timber);
    LayeredBed keyhole = new(
        Bed.Ring(Length.FromMeters(2), Length.FromMeters(0.5), entrance: Length.FromMeters(0.45)),
        rim: Length.FromCentimeters(40),
        existing: Length.FromCentimeters(30),
        [new BedLayer("compost", BulkMaterial.Compost, Layer(8))],
        BedEdging.Masonry);
    Mound ridge = Mound.Rounded(Length.FromMeters(1.2), Length.FromCentimeters(35), Length.FromMeters(4));

    // And the pots.
    Container pot = Container.RoundTapered(Length.FromCentimeters(17), Length.FromCentimeters(12), Length.FromCentimeters(13));
    Volume medium = PottingMedium.ForPots(pot, Length.FromCentimeters(1.5), pots, Ratio.FromPercent(15));

    BulkDensity soilWeight = BulkDensities.Named("uk-landscape-supplier", "soil");
    BulkDensity compostWeight = BulkDensities.Named("oregon-compost-yard", "compost");
    BulkDensity barkWeight = BulkDensities.Named("texas-yard-saturated", "pine bark mulch");
    BulkDensity mediumWeight = BulkDensities.Named("arkansas-substrates", "peat and peat-bark substrate")
        .WithWater(Ratio.FromPercent(60), MoistureBasis.OfWetMass, MoistureState.Moist);

    // Each in the cheapest choice of what the shop has.
    (string Name, BulkDensity Weight, BagSelection Choice)[] purchases =
    [
        ("topsoil", soilWeight, Bags.ToBuy(kitchen.ToBuy[0], [Offer(25, 4.20m)], BagAim.LeastCost)),
        ("compost", compostWeight, Bags.ToBuy(kitchen.ToBuy[1] + keyhole.ToBuy[0], [Offer(50, 8.50m), Offer(40, 7.20m), Offer(20, 4.40m)], BagAim.LeastCost)),
        ("bark", barkWeight, Bags.ToBuy(Layer(5).VolumeOver(ridge.Surface), [Offer(60, 7.90m), Offer(40, 6.10m)], BagAim.LeastCost)),
        ("potting medium", mediumWeight, Bags.ToBuy(medium, [Offer(70, 15.50m), Offer(20, 5.60m)], BagAim.LeastCost)),
    ];
    HaulPlan haul = new(
        [.. purchases.SelectMany(purchase => purchase.Choice.Bags.Select(bag =>
        {
            Estimate<Mass> mass = purchase.Weight.MassOf(bag.Offer.Volume);
            return new HaulItem($"{purchase.Name} {Show(bag.Offer.Volume)}", bag.Count, mass.Range?.High ?? mass.Value, bag.Offer.Volume);
        }))],
        car);

    if (options.Has("--json"))
    {
        Console.WriteLine(HortiCalcJson.Serialize(haul));
        return;
    }

    string Show(IQuantity quantity) => QuantityText.Format(quantity, units);
    void Line(string label, string text) => Console.WriteLine($"{label,-16}{text}");

    Console.WriteLine("INVENTED beds, pots and prices: the garden of shared/demo.");
    Line("Kitchen bed", kitchen.ToString(format, CultureInfo.InvariantCulture));
    Line("Keyhole bed", $"{keyhole.ToString(format, CultureInfo.InvariantCulture)}; edging {Show(keyhole.Ground.Perimeter)}");
    Line("Ridge", $"{ridge.ToString(format, CultureInfo.InvariantCulture)}; surface {Show(ridge.Surface)}");
    Line("Pots", $"{pots} of {Show(pot.FillVolume(Length.FromCentimeters(1.5)))} filled");
    Console.WriteLine();
    foreach ((string name, BulkDensity weight, BagSelection choice) in purchases)
    {
        Estimate<Mass> mass = weight.MassOf(choice.Bought);
        string span = mass.Range is EstimateRange<Mass> range ? $" ({range.ToString(format, CultureInfo.InvariantCulture)})" : "";
        Line(name, choice.ToString(format, CultureInfo.InvariantCulture));
        Line("", $"weighs {Show(mass.Value)}{span}, {weight.Name} [{weight.Source}]");
    }

    Line("To pay", purchases.Sum(purchase => purchase.Choice.Cost!.Value).ToString("0.00", CultureInfo.InvariantCulture));
    Console.WriteLine();
    Line("The car", $"{Show(car.Payload)}, {Show(car.Space!.Value)}: {haul.ToString(format, CultureInfo.InvariantCulture)} at the heavy end; no packing can do with fewer than {haul.FewestPossible}");
    foreach ((Trip trip, int index) in haul.Trips.Select((trip, index) => (trip, index)))
        Line($"Trip {index + 1}", $"{string.Join(", ", trip.Items.Select(item => $"{item.Count} × {item.Name}"))}: {Show(trip.Mass)}, {Show(trip.Volume)}");
    Console.WriteLine();
    foreach (Caution caution in kitchen.Cautions.Concat(keyhole.Cautions).Concat(PottingMedium.Cautions).Concat(haul.Cautions).DistinctBy(caution => caution.Code))
        Line(caution.Level.ToString(), caution.Sentence);

    BagOffer Offer(double litres, decimal price) => new(Show(Volume.FromLiters(litres)), Volume.FromLiters(litres), price);
});
