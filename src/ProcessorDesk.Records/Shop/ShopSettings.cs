using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Process;

namespace ProcessorDesk.Records;

/// <summary>The shop itself: one row.</summary>
public sealed class ShopSettings : IVersioned
{
    private ShopSettings()
    {
    }

    public ShopSettings(string name, string timeZone, bool isDemo)
    {
        Id = 1;
        Name = name;
        TimeZone = timeZone;
        IsDemo = isDemo;
        TagRule = TagRule.Hold;
        TaxWording = "Sales tax";
        RailDivision = ScaleDivision.Of(WeightUnit.Pound, 0.5m);
        BenchDivision = ScaleDivision.HundredthPound;
        CureDivision = ScaleDivision.TenthGram;
        Tolerance = Proportion.FromPercent(5m);
        PromiseDays = 14;
        MixerCapacity = Weight.FromPounds(25m);
        UnclaimedAfterDays = 30;
    }

    public int Id { get; private set; }

    public string Name { get; private set; } = "";

    public string? Address { get; private set; }

    public string? Phone { get; private set; }

    /// <summary>IANA name of the zone the shop's clock shows.</summary>
    public string TimeZone { get; private set; } = "";

    public bool IsDemo { get; private set; }

    public TagRule TagRule { get; private set; }

    public Proportion TaxRate { get; private set; }

    public string TaxWording { get; private set; } = "";

    /// <summary>What the claim ticket says.</summary>
    public string? Terms { get; private set; }

    public ScaleDivision RailDivision { get; private set; }

    /// <summary>The division every printed weight and every charge is made in; in pounds.</summary>
    public ScaleDivision BenchDivision { get; private set; }

    public ScaleDivision CureDivision { get; private set; }

    /// <summary>How much of an animal may be unaccounted for before the cut sheet says so.</summary>
    public Proportion Tolerance { get; private set; }

    /// <summary>Days from drop-off to the promise offered.</summary>
    public int PromiseDays { get; private set; }

    /// <summary>The green weight one filling of the mixer holds; more than zero.</summary>
    public Weight MixerCapacity { get; private set; }

    /// <summary>The id of the cooling option the shop chills by; null for the published one that a record comes closest to.</summary>
    public string? CoolingOption { get; private set; }

    /// <summary>Between two cooking readings, at the most; never more than the published figure.</summary>
    public int CookingGapMinutes { get; private set; } = BatchRules.Minutes(LongestGap.Cooking);

    /// <summary>The same between two chilling readings.</summary>
    public int ChillingGapMinutes { get; private set; } = BatchRules.Minutes(LongestGap.Cooling);

    /// <summary>How far the smokehouse's thermometer may be off; zero or more.</summary>
    public Temperature ThermometerAccuracy { get; private set; }
    /// <summary>The least green weight the mixer mixes well; zero where the shop sets none.</summary>
    public Weight SmallestFill { get; private set; }

    /// <summary>Green weight the smokehouse takes in a day; zero where the shop sets none.</summary>
    public Weight SmokehouseHolds { get; private set; }

    /// <summary>Green weight the kitchen gets done in a day; zero where the shop sets none.</summary>
    public Weight DayHolds { get; private set; }

    /// <summary>Days in boxes after which a job counts as unclaimed and its owner is chased, by the shop's own written policy.</summary>
    public int UnclaimedAfterDays { get; private set; }

    /// <summary>Mustard and celery are asked for and shown beside the nine allergens of United States law.</summary>
    public bool MoreAllergens { get; private set; }

    /// <summary>Where owners reach the shop's pages from home; null where they can't.</summary>
    public string? PublicAddress { get; private set; }

    /// <summary>When the public address was tried and led here; null where it was not, and then no owner's link is given out.</summary>
    public DateTime? PublicAddressTestedAt { get; private set; }

    /// <summary>The public address while links may be given out under it: once it was tried; null before.</summary>
    public string? OpenAddress => PublicAddressTestedAt is null ? null : PublicAddress;

    public int Version { get; private set; }

    public void Describe(string name, string? address, string? phone, string timeZone, string? terms, int promiseDays)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        Name = name.Trim();
        Address = Texts.OrNull(address);
        Phone = Texts.OrNull(phone);
        TimeZone = timeZone;
        Terms = Texts.OrNull(terms);
        PromiseDays = promiseDays;
    }

    public void SetRules(TagRule tagRule, Proportion taxRate, string taxWording, Proportion tolerance)
    {
        TagRule = tagRule;
        TaxRate = taxRate;
        TaxWording = taxWording.Trim();
        Tolerance = tolerance;
    }

    /// <exception cref="ArgumentOutOfRangeException">The mixer holds nothing.</exception>
    public void SetMixer(Weight capacity) =>
        MixerCapacity = capacity.IsPositive ? capacity : throw new ArgumentOutOfRangeException(nameof(capacity), "A mixer holds more than nothing.");

    /// <summary>Zero for each that is not set.</summary>
    public void SetDay(Weight smallestFill, Weight smokehouse, Weight day) => (SmallestFill, SmokehouseHolds, DayHolds) = (smallestFill, smokehouse, day);

    public void SetMoreAllergens(bool shown) => MoreAllergens = shown;

    /// <summary>What batches mixed from now on are held against. The shop may ask for more than was published, never for less.</summary>
    /// <param name="cooling">Null for the published option that a record comes closest to.</param>
    public IReadOnlyList<Finding> SetProcess(CoolingOption? cooling, int cookingGapMinutes, int chillingGapMinutes, Temperature accuracy)
    {
        List<Finding> findings =
        [
            .. cooling is { OffUntilConfirmed: true } ? [new Finding("Cooling", $"Cooling {cooling.Name} is off until it is confirmed against the published guideline.", "", "", cooling.Source)] : Array.Empty<Finding>(),
            .. TooLong("CookingGap", cookingGapMinutes, LongestGap.Cooking), .. TooLong("ChillingGap", chillingGapMinutes, LongestGap.Cooling),
            .. accuracy < Temperature.FromHundredthsFahrenheit(0) ? [new Finding("Accuracy", "Type how far it may be off, zero or more.")] : Array.Empty<Finding>(),
        ];
        if (findings.Count == 0)
            (CoolingOption, CookingGapMinutes, ChillingGapMinutes, ThermometerAccuracy) = (cooling?.Id, cookingGapMinutes, chillingGapMinutes, accuracy);
        return findings;
    }

    private static IEnumerable<Finding> TooLong(string field, int minutes, TimeSpan longest) => minutes < 1 || minutes > BatchRules.Minutes(longest)
        ? [new Finding(field, $"Type 1 to {BatchRules.Minutes(longest)} minutes: what lies further apart counts for nothing, and the shop may set less but not more.")]
        : [];

    public void SetUnclaimedAfter(int days)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(days, 1);
        UnclaimedAfterDays = days;
    }

    /// <summary>A new address has to be tried before it is used.</summary>
    public void SetPublicAddress(string? address)
    {
        var given = Texts.OrNull(address)?.TrimEnd('/');
        if (given != PublicAddress)
            (PublicAddress, PublicAddressTestedAt) = (given, null);
    }

    public void PublicAddressLedHere(DateTime at) => PublicAddressTestedAt = at;

    /// <param name="bench">In pounds: charges are by the pound.</param>
    public void SetScales(ScaleDivision rail, ScaleDivision bench, ScaleDivision cure)
    {
        if (bench.Unit != WeightUnit.Pound)
            throw new ArgumentException("The bench scale weighs in pounds.", nameof(bench));
        RailDivision = rail;
        BenchDivision = bench;
        CureDivision = cure;
    }
}
