using HortiCalc.Beds;
using HortiCalc.Evidence;
using UnitsNet;

namespace HortiCalc.Reference;

internal static class BedCalculations
{
    private const double PoundsPerShortTon = 2000;

    private const double CubicInchesPerUsBushel = 2150.42;

    public static Dictionary<string, Func<Inputs, Computed>> All { get; } = new(StringComparer.Ordinal)
    {
        ["rectangle_area_ft2"] = inputs => Rectangle(inputs).Area.SquareFeet,
        ["circle_area_ft2"] = inputs => Bed.Circle(Length.FromFeet(2 * inputs.Number("radius_ft"))).Area.SquareFeet,
        ["rectangle_volume_L"] = inputs => Rectangle(inputs).FillVolume(Size(inputs, "depth")).Liters,
        ["circle_volume_ft3"] = inputs => Bed.Circle(Size(inputs, "diameter")).FillVolume(Size(inputs, "depth")).CubicFeet,
        ["circle_volume_yd3"] = inputs => Bed.Circle(Size(inputs, "diameter")).FillVolume(Size(inputs, "depth")).CubicYards,
        ["sector_area_ft2"] = inputs => Slice(inputs).Area.SquareFeet,
        ["sector_area_m2"] = inputs => Slice(inputs).Area.SquareMeters,
        ["sector_perimeter_m"] = inputs => Slice(inputs).Perimeter.Meters,
        ["rounded_ends_area_m2"] = inputs => RoundedEnds(inputs).Area.SquareMeters,
        ["rounded_ends_perimeter_m"] = inputs => RoundedEnds(inputs).Perimeter.Meters,
        ["triangle_over_base_ft2"] = inputs => Bed.TriangleOverBase(Size(inputs, "base"), Size(inputs, "height")).Area.SquareFeet,
        ["border_round_circle_ft2"] = inputs => Bed.Border(Bed.Circle(Size(inputs, "diameter")), Size(inputs, "border")).Area.SquareFeet,
        ["border_round_circle_ft3"] = inputs =>
            Bed.Border(Bed.Circle(Size(inputs, "diameter")), Size(inputs, "border")).FillVolume(Size(inputs, "depth")).CubicFeet,
        ["offset_places_m2"] = inputs => ByPlaces(inputs).Area.SquareMeters,
        ["heap_ft3"] = inputs => RoundHeap(inputs).Volume.CubicFeet,
        ["heap_yd3"] = inputs => RoundHeap(inputs).Volume.CubicYards,
        ["bank_ground_acres"] = inputs => Mound.FlatTopped(
            Size(inputs, "top") + 2 * inputs.Number("slope") * Size(inputs, "height"), Size(inputs, "top"), Size(inputs, "height"), Size(inputs, "length"))
            .Ground.Area.Acres,
        ["windrows_of_acre_yd3"] = inputs => HalfRoundWindrows(inputs).Volume.CubicYards,
        ["own_load_t_ha"] = inputs => Own(inputs).LoadOf(Size(inputs, "depth")).Value.KilogramsPerSquareMeter * 10,
        ["plant_available_kg_m3"] = inputs => 1000 * CompostNitrogen.PlantAvailable(
            MassFraction.FromDecimalFractions(inputs.Number("organic_kg_m3") / 1000),
            MassFraction.Zero,
            MassFraction.Zero,
            Percent(inputs, "mineralised_pct"),
            Ratio.Zero).DecimalFractions,
        ["bed_volume_ft3"] = inputs => Rectangle(inputs).FillVolume(Size(inputs, "depth")).CubicFeet,
        ["bed_volume_yd3"] = inputs => Rectangle(inputs).FillVolume(Size(inputs, "depth")).CubicYards,
        ["bed_volume_m3"] = inputs => Rectangle(inputs).FillVolume(Size(inputs, "depth")).CubicMeters,
        ["layer_volume_yd3"] = inputs => Amendment.VolumeFor(GroundOf(inputs), Size(inputs, "depth")).CubicYards,
        ["layer_depth_in"] = inputs => Amendment.Depth(Amount(inputs, "volume"), GroundOf(inputs)).Inches,
        ["coverage_ft2"] = inputs => Amendment.Coverage(Expanded(inputs, "volume"), Size(inputs, "depth")).SquareFeet,
        ["settled_layer_volume_m3"] = inputs => AmendmentLayer
            .LooseOnTop(Size(inputs, "depth"), Ratio.FromPercent(inputs.Number("allowance_pct")))
            .VolumeOver(Area.FromSquareMeters(inputs.Number("area_m2"))).CubicMeters,
        ["mixed_depth_in"] = inputs => Worked(inputs).MixedDepth!.Value.Inches,
        ["soil_share_pct"] = inputs => 100 - Worked(inputs).ShareOfMix!.Value.Percent,
        ["bags_to_buy"] = inputs => Purchase(inputs).Count,
        ["bags_exact"] = inputs => Purchase(inputs) is BagPurchase bags ? bags.Count - bags.LeftOver / bags.Bag : 0,
        ["mass_of_cubic_yard_lb"] = inputs => MassOf(inputs, Volume.FromCubicYards(1)).Pounds,
        ["mass_of_cubic_metre_t"] = inputs => MassOf(inputs, Volume.FromCubicMeters(1)).Tonnes,
        ["mass_of_us_bushel_lb"] = inputs => MassOf(inputs, Volume.FromCubicInches(CubicInchesPerUsBushel)).Pounds,
        ["volume_of_short_ton_yd3"] = inputs => Density(inputs).VolumeOf(Mass.FromShortTons(1)).Value.CubicYards,
        ["mass_of_cubic_yard_kg"] = inputs => MassOf(inputs, Volume.FromCubicYards(1)).Kilograms,
        ["mass_of_cubic_yard_short_tons"] = inputs => MassOf(inputs, Volume.FromCubicYards(1)).ShortTons,
        ["mass_of_cubic_foot_lb"] = inputs => MassOf(inputs, Volume.FromCubicFeet(1)).Pounds,
        ["mass_of_cubic_foot_end_lb"] = inputs => MassOf(inputs, Volume.FromCubicFeet(1)).Pounds,
        ["mass_of_cubic_foot_kg"] = inputs => MassOf(inputs, Volume.FromCubicFeet(1)).Kilograms,
        ["own_density_mass_g"] = inputs => Own(inputs).MassOf(Volume.FromCubicCentimeters(inputs.Number("volume_cm3"))).Value.Grams,
        ["load_kg_m2"] = inputs => Density(inputs).LoadOf(Size(inputs, "depth")).Value.KilogramsPerSquareMeter,
        ["load_kN_m2"] = inputs => BedLoads.PressureOf(Density(inputs).LoadOf(Size(inputs, "depth")).Value).Kilopascals,
        ["coverage_of_short_ton_ft2"] = inputs =>
            Amendment.Coverage(Density(inputs).VolumeOf(Mass.FromShortTons(1)).Value, Size(inputs, "depth")).SquareFeet,
        ["coverage_of_bale_ft2"] = inputs => Amendment.Coverage(
            new CompressedBale(Amount(inputs, "label"), Expansion(inputs)).Loose.Value, Size(inputs, "depth")).SquareFeet,
        ["coverage_m2"] = inputs => Amendment.Coverage(Amount(inputs, "volume"), Size(inputs, "depth")).SquareMeters,
        ["layer_volume_L"] = inputs => Amendment.VolumeFor(GroundOf(inputs), Size(inputs, "depth")).Liters,
        ["layer_volume_ft3"] = inputs => Amendment.VolumeFor(GroundOf(inputs), Size(inputs, "depth")).CubicFeet,
        ["filled_L"] = inputs => PackedVolume.Filled(Amount(inputs, "delivered"), Percent(inputs, "reference_pct")).Liters,
        ["density_in_pots_pct"] = inputs => PackedVolume.DensityInPots(UnitsNet.Density.FromKilogramsPerCubicMeter(100)).Range is { } pots
            ? inputs["end"] == "low" ? pots.Low.KilogramsPerCubicMeter : pots.High.KilogramsPerCubicMeter
            : double.NaN,

        ["rectangle_area_m2"] = inputs => Rectangle(inputs).Area.SquareMeters,
        ["triangle_area_ft2"] = inputs => RightTriangle(inputs).Area.SquareFeet,
        ["border_round_rectangle_m2"] = inputs => Bed.Border(Rectangle(inputs), Size(inputs, "border")).Area.SquareMeters,
        ["border_round_circle_m2"] = inputs => Bed.Border(Bed.Circle(Size(inputs, "diameter")), Size(inputs, "border")).Area.SquareMeters,
        ["ring_area_m2"] = inputs => Bed.Ring(Size(inputs, "outer"), Size(inputs, "inner"), Length.Zero).Area.SquareMeters,
        ["cross_paths_m2"] = inputs => CrossPaths(inputs).Area.SquareMeters,
        ["ellipse_area_m2"] = inputs => Bed.Ellipse(Size(inputs, "length"), Size(inputs, "width")).Area.SquareMeters,
        ["ellipse_perimeter_m"] = inputs => Bed.Ellipse(Size(inputs, "length"), Size(inputs, "width")).Perimeter.Meters,
        ["offset_area_m2"] = inputs => ByOffsets(inputs).Area.SquareMeters,
        ["mound_section_m2"] = inputs => Mound.Rounded(Size(inputs, "width"), Size(inputs, "height"), Length.FromMeters(1)).Section.SquareMeters,
        ["mound_girth_m"] = inputs => Mound.Rounded(Size(inputs, "width"), Size(inputs, "height"), Length.FromMeters(1)).Surface.SquareMeters,
        ["circle_less_segment_m2"] = inputs => Bed.Circle(Length.FromMeters(1)).Area.SquareMeters - Missing(inputs).Section.SquareMeters,
        ["circle_less_segment_girth_m"] = inputs => Bed.Circle(Length.FromMeters(1)).Perimeter.Meters - Missing(inputs).Surface.SquareMeters,

        ["dry_density_lb_yd3"] = inputs => WaterContent.DryDensity(
            UnitsNet.Density.FromPoundsPerCubicYard(inputs.Number("density_lb_yd3")), Percent(inputs, "water_pct"), Basis(inputs)).PoundsPerCubicYard,
        ["dry_density_g_cm3"] = inputs => DryDensity(inputs).GramsPerCubicCentimeter,
        ["water_pct"] = inputs => WaterContent.FromMasses(Grams(inputs, "wet_g"), Grams(inputs, "dry_g"), Basis(inputs)).Percent,
        ["organic_matter_of_yard_lb"] = inputs => OrganicMatterOfYard(inputs).Pounds,
        ["plant_available_lb_ton"] = inputs => PoundsPerShortTon * CompostNitrogen.PlantAvailable(
            OfTon(inputs, "organic_lb_ton"),
            OfTon(inputs, "ammonium_lb_ton"),
            OfTon(inputs, "nitrate_lb_ton"),
            Percent(inputs, "mineralised_pct"),
            Percent(inputs, "kept_pct")).DecimalFractions,
        ["dose_by_nitrogen_tons_acre"] = inputs => ShortTonsPerAcre(CompostDose.ForNitrogen(
            Analysis(nitrogen: OfTon(inputs, "nitrogen_lb_ton"), phosphorus: MassFraction.Zero), PoundsPerAcre(inputs.Number("need_lb_acre")))),
        ["dose_by_phosphate_tons_acre"] = inputs => DoseByPhosphate(inputs),

        ["soil_depth_low_in"] = inputs => Depth(inputs).Low.Inches,
        ["soil_depth_high_in"] = inputs => Depth(inputs).High!.Value.Inches,
        ["advice_low_in"] = inputs => Advice(inputs).Low.Inches,
        ["advice_high_in"] = inputs => Advice(inputs).High.Inches,
        ["worked_in_low_in"] = inputs => Advice(inputs).WorkedInLow!.Value.Inches,
        ["worked_in_high_in"] = inputs => Advice(inputs).WorkedInHigh!.Value.Inches,
        ["advice_low_cm"] = inputs => Advice(inputs).Low.Centimeters,
        ["advice_high_cm"] = inputs => Advice(inputs).High.Centimeters,
        ["worked_in_low_cm"] = inputs => Advice(inputs).WorkedInLow!.Value.Centimeters,
        ["worked_in_high_cm"] = inputs => Advice(inputs).WorkedInHigh!.Value.Centimeters,
        ["salt_limit_low"] = inputs => Salts(inputs).Low.MillisiemensPerCentimeter,
        ["salt_limit_high"] = inputs => Salts(inputs).High.MillisiemensPerCentimeter,
        ["compost_nutrient_pct"] = inputs => Nutrient(inputs).Percent,
        ["nitrogen_share_low"] = inputs => ShareOf(inputs).Low.Percent,
        ["nitrogen_share_high"] = inputs => ShareOf(inputs).High.Percent,
        ["nitrogen_in_year_low_pct"] = inputs => InYear(inputs).Low.GramsPerSquareMeter,
        ["nitrogen_in_year_high_pct"] = inputs => InYear(inputs).High.GramsPerSquareMeter,
        ["nitrogen_pool_mg_kg"] = inputs => Release(inputs).Pool.MilligramsPerKilogram,
        ["nitrogen_rate_per_day"] = inputs => Release(inputs).PerDay,
        ["nitrogen_released_pct"] = inputs => CompostNitrogen.After(
            AreaDensity.FromGramsPerSquareMeter(100), Duration.FromDays(inputs.Number("days")), Release(inputs)).Value.GramsPerSquareMeter,
        ["settling_low_pct"] = inputs => Settles(inputs).Low.Percent,
        ["settling_high_pct"] = inputs => Settles(inputs).High.Percent,
        ["settling_months"] = inputs => Settles(inputs).Over!.Value.Days / 365.25 * 12,
        ["bale_expansion_low"] = inputs => Expansion(inputs).Low.DecimalFractions,
        ["bale_expansion_high"] = inputs => Expansion(inputs).High.DecimalFractions,
    };

    private static SectorBed Slice(Inputs inputs) => Bed.Sector(Size(inputs, "radius"), Angle.FromDegrees(inputs.Number("angle_deg")));

    /// <summary>A rectangle with half a circle at each end.</summary>
    private static CompositeBed RoundedEnds(Inputs inputs)
    {
        Length width = Size(inputs, "width");
        SectorBed end = Bed.Sector(width / 2, Angle.FromDegrees(180));
        return Bed.Composite([Bed.Rectangle(width, Size(inputs, "length") - width), end, end], joins: 2 * width);
    }

    private static Heap RoundHeap(Inputs inputs) => new(Size(inputs, "diameter"), Length.Zero, Size(inputs, "height"));

    /// <summary>Windrows of half a circle side by side over an acre, as one: as long as the acre divided by the width of one and its aisle.</summary>
    private static RoundedMound HalfRoundWindrows(Inputs inputs)
    {
        Length width = 2 * Size(inputs, "height");
        return Mound.Rounded(width, Size(inputs, "height"), Area.FromAcres(1) / (width + Size(inputs, "aisle")));
    }

    private static TriangleBed RightTriangle(Inputs inputs)
    {
        double leg = inputs.Number("leg_ft");
        double other = inputs.Number("other_leg_ft");
        return Bed.Triangle(Length.FromFeet(leg), Length.FromFeet(other), Length.FromFeet(double.Hypot(leg, other)));
    }

    /// <summary>Two paths across one another in the middle of a rectangle: the one along it whole, the other in two halves.</summary>
    private static CompositeBed CrossPaths(Inputs inputs)
    {
        Length path = Size(inputs, "path");
        RectangleBed half = Bed.Rectangle(path, (Size(inputs, "width") - path) / 2);
        return Bed.Composite([Bed.Rectangle(path, Size(inputs, "length")), half, half], joins: 2 * path);
    }

    private static Bed ByOffsets(Inputs inputs)
    {
        Length[] offsets = [.. inputs.Numbers("offsets_m").Select(metres => Length.FromMeters(metres))];
        Length interval = Size(inputs, "interval");
        if (inputs["rule"] == "simpson")
            return Bed.FromOffsets(offsets, interval, OffsetRule.Simpson);
        return inputs["rule"] == "trapezoid"
            ? Bed.FromOffsets(offsets, interval)
            : Bed.Composite([Bed.FromOffsets(offsets[..^1], interval, OffsetRule.Simpson), Bed.FromOffsets(offsets[^2..], interval)], joins: offsets[^2]);
    }

    /// <summary>Offsets at places that are not evenly apart: one bed for each stretch that is.</summary>
    private static CompositeBed ByPlaces(Inputs inputs)
    {
        Length[] offsets = [.. inputs.Numbers("offsets_m").Select(metres => Length.FromMeters(metres))];
        double[] places = inputs.Numbers("places_m");
        OffsetRule rule = inputs["rule"] == "simpson" ? OffsetRule.Simpson : OffsetRule.Trapezoid;
        List<Bed> stretches = [];
        Length joins = Length.Zero;
        int start = 0;
        for (int end = 1; end < places.Length; end++)
        {
            bool isLast = end == places.Length - 1;
            if (!isLast && places[end + 1] - places[end] == places[end] - places[end - 1])
                continue;
            stretches.Add(Bed.FromOffsets(offsets[start..(end + 1)], Length.FromMeters(places[end] - places[end - 1]), rule));
            joins += isLast ? Length.Zero : offsets[end];
            start = end;
        }

        return Bed.Composite(stretches, joins);
    }

    /// <summary>What a circle one metre across lacks above a share of its height.</summary>
    private static RoundedMound Missing(Inputs inputs)
    {
        double height = 1 - inputs.Number("filled");
        return Mound.Rounded(Length.FromMeters(2 * Math.Sqrt(height * (1 - height))), Length.FromMeters(height), Length.FromMeters(1));
    }

    private static Density DryDensity(Inputs inputs)
    {
        Mass wet = Grams(inputs, "wet_g");
        Density density = wet / Volume.FromCubicCentimeters(inputs.Number("volume_cm3"));
        return inputs.Has("dry_g")
            ? WaterContent.DryDensity(density, WaterContent.FromMasses(wet, Grams(inputs, "dry_g"), MoistureBasis.OfWetMass), MoistureBasis.OfWetMass)
            : WaterContent.DryDensity(density, Percent(inputs, "water_pct"), Basis(inputs));
    }

    private static Mass OrganicMatterOfYard(Inputs inputs)
    {
        CompostAnalysis analysis = new(
            UnitsNet.Density.FromPoundsPerCubicYard(inputs.Number("density_lb_yd3")),
            Percent(inputs, "water_pct"),
            MassFraction.FromPercent(inputs.Number("organic_pct")),
            MassFraction.Zero,
            MassFraction.Zero);
        return new CompostDose(analysis, Length.FromYards(1)).OrganicMatter * Area.FromSquareYards(1);
    }

    private static double DoseByPhosphate(Inputs inputs)
    {
        CompostDose unit = new(Analysis(MassFraction.Zero, MassFraction.FromPercent(1)), Length.FromMeters(1));
        double phosphatePerPhosphorus = unit.Phosphate / unit.Phosphorus;
        MassFraction phosphorus = OfTon(inputs, "phosphate_lb_ton") / phosphatePerPhosphorus;
        return ShortTonsPerAcre(CompostDose.ForPhosphorus(
            Analysis(MassFraction.Zero, phosphorus), PoundsPerAcre(inputs.Number("need_lb_acre") / phosphatePerPhosphorus)));
    }

    private static CompostAnalysis Analysis(MassFraction nitrogen, MassFraction phosphorus) => new(
        UnitsNet.Density.FromKilogramsPerCubicMeter(500), Ratio.Zero, MassFraction.Zero, nitrogen, phosphorus);

    private static MassFraction OfTon(Inputs inputs, string name) => MassFraction.FromDecimalFractions(inputs.Number(name) / PoundsPerShortTon);

    private static AreaDensity PoundsPerAcre(double pounds) =>
        AreaDensity.FromKilogramsPerSquareMeter(Mass.FromPounds(pounds).Kilograms / Area.FromAcres(1).SquareMeters);

    private static double ShortTonsPerAcre(CompostDose dose) => (dose.Wet * Area.FromAcres(1)).ShortTons;

    private static BulkDensity Own(Inputs inputs) => new(
        "given", BulkMaterial.Soil, MoistureState.Dry, UnitsNet.Density.FromGramsPerCubicCentimeter(inputs.Number("density_g_cm3")), Source.CommonPractice("given", "given"));

    private static CropSoilDepth Depth(Inputs inputs) =>
        SoilDepths.Published.Single(depth => depth.Source.Key == inputs["source"] && depth.Crop == inputs["crop"]);

    private static LayerAdvice Advice(Inputs inputs) =>
        LayerAdvices.Published.Single(advice => advice.Source.Key == inputs["source"] && advice.Use == inputs["use"]);

    private static SaltLimit Salts(Inputs inputs) => SaltLimits.Published.Single(limit =>
        limit.Source.Key == inputs["source"] && limit.Subject == inputs["subject"] && limit.Extract == inputs["extract"]);

    private static MassFraction Nutrient(Inputs inputs)
    {
        CompostNutrients nutrients = CompostNutrients.Published.Single(compost => compost.Feedstock == inputs["feedstock"]);
        bool low = inputs["end"] == "low";
        return inputs["nutrient"] switch
        {
            "nitrogen" => low ? nutrients.NitrogenLow : nutrients.NitrogenHigh,
            "phosphorus" => low ? nutrients.PhosphorusLow : nutrients.PhosphorusHigh,
            _ => low ? nutrients.PotassiumLow : nutrients.PotassiumHigh,
        };
    }

    private static NitrogenShare ShareOf(Inputs inputs) => NitrogenShares.Published.Single(share =>
        share.Source.Key == inputs["source"]
        && share.Material == inputs["material"]
        && (!inputs.Has("weeks") || (share.ShortestTime.Days / 7 == inputs.Number("weeks") && share.IsOfOrganic == (inputs["organic"] == "yes"))));

    private static EstimateRange<AreaDensity> InYear(Inputs inputs) =>
        CompostNitrogen.InYear(AreaDensity.FromGramsPerSquareMeter(100), (int)inputs.Number("year")).Range!;

    private static CompostRelease Release(Inputs inputs) => CompostReleases.Published.Single(release => release.Material == inputs["material"]);

    private static SettlingRange Settles(Inputs inputs) => SettlingRanges.Published.Single(range =>
        range.Source.Key == inputs["source"] && range.Material == inputs["material"] && range.Kind.ToString() == inputs["kind"]);

    private static BaleExpansion Expansion(Inputs inputs) =>
        BaleExpansions.Published.Single(expansion => expansion.Source.Key == inputs["source"]);

    private static Ratio Percent(Inputs inputs, string name) => Ratio.FromPercent(inputs.Number(name));

    private static MoistureBasis Basis(Inputs inputs) => inputs["basis"] == "dry" ? MoistureBasis.OfDryMass : MoistureBasis.OfWetMass;

    private static Mass Grams(Inputs inputs, string name) => Mass.FromGrams(inputs.Number(name));

    private static RectangleBed Rectangle(Inputs inputs) => Bed.Rectangle(Size(inputs, "width"), Size(inputs, "length"));

    private static Area GroundOf(Inputs inputs) =>
        inputs.Has("area_m2") ? Area.FromSquareMeters(inputs.Number("area_m2")) : Area.FromSquareFeet(inputs.Number("area_ft2"));

    private static AmendmentLayer Worked(Inputs inputs) => AmendmentLayer
        .LooseOnTop(Size(inputs, "layer"), Ratio.Zero)
        .WorkedIntoSoil(Size(inputs, "soil"));

    private static BagPurchase Purchase(Inputs inputs) => Bags.ToBuy(Amount(inputs, "volume"), Expanded(inputs, "bag"));

    private static BulkDensity Density(Inputs inputs) => BulkDensities.Named(inputs["source"], inputs["material"]);

    private static Mass MassOf(Inputs inputs, Volume volume)
    {
        Estimate<Mass> mass = Density(inputs).MassOf(volume);
        return !inputs.Has("end") ? mass.Value : inputs["end"] == "low" ? mass.Range!.Low : mass.Range!.High;
    }

    private static Length Size(Inputs inputs, string name) =>
        inputs.Has(name + "_in") ? Length.FromInches(inputs.Number(name + "_in"))
        : inputs.Has(name + "_ft") ? Length.FromFeet(inputs.Number(name + "_ft"))
        : Length.FromMeters(inputs.Number(name + "_m"));

    private static Volume Amount(Inputs inputs, string name) =>
        inputs.Has(name + "_yd3") ? Volume.FromCubicYards(inputs.Number(name + "_yd3"))
        : inputs.Has(name + "_ft3") ? Volume.FromCubicFeet(inputs.Number(name + "_ft3"))
        : inputs.Has(name + "_m3") ? Volume.FromCubicMeters(inputs.Number(name + "_m3"))
        : Volume.FromLiters(inputs.Number(name + "_L"));

    /// <summary>A volume on a label, times what it becomes when loosened.</summary>
    private static Volume Expanded(Inputs inputs, string name) =>
        Amount(inputs, name) * (inputs.Has("expansion") ? inputs.Number("expansion") : 1);
}
