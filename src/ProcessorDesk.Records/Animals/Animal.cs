using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>One carcass, or one delivery of loose meat, with its official tag.</summary>
public sealed partial class Animal : IVersioned
{
    private readonly List<Share> _shares = [];
    private readonly List<Hold> _holds = [];
    private readonly List<Part> _parts = [];

    private Animal()
    {
    }

    public Animal(Species species, ArrivalState arrivalState, DateTime arrivedAt)
    {
        Species = species;
        ArrivalState = arrivalState;
        ArrivedAt = arrivedAt;
        Sex = Sex.Unknown;
        DiseaseTest = DiseaseTest.NotRequired;
    }

    public int Id { get; private set; }

    public Species Species { get; private set; }

    public Sex Sex { get; private set; }

    public string? Tag { get; private set; }

    /// <summary>The tag's letters and digits alone, upper case, for finding.</summary>
    public string? TagKey { get; private set; }

    public string? LicenceNumber { get; private set; }

    public string? HarvestConfirmation { get; private set; }

    public DateOnly? HarvestedOn { get; private set; }

    /// <summary>State, county or unit, as the agency wants it.</summary>
    public string? HarvestArea { get; private set; }

    public ArrivalState ArrivalState { get; private set; }

    public DateTime ArrivedAt { get; private set; }

    public Temperature? SurfaceTemperature { get; private set; }

    public string? Condition { get; private set; }

    public DiseaseTest DiseaseTest { get; private set; }

    public string? SampleNumber { get; private set; }

    public string? Laboratory { get; private set; }

    public DateOnly? ResultOn { get; private set; }

    /// <summary>For cattle alone; unknown counts as thirty months and over.</summary>
    public CattleAge? CattleAge { get; private set; }

    public string? Rail { get; private set; }

    /// <summary>When it was hung in the cooler.</summary>
    public DateTime? HungAt { get; private set; }

    public int Version { get; private set; }

    public IReadOnlyCollection<Share> Shares => _shares;

    public IReadOnlyCollection<Hold> Holds => _holds;

    public IReadOnlyCollection<Part> Parts => _parts;

    public void Describe(Species species, Sex sex, ArrivalState arrivalState, Temperature? surface, string? condition, CattleAge? cattleAge)
    {
        Species = species;
        Sex = sex;
        ArrivalState = arrivalState;
        SurfaceTemperature = surface;
        Condition = Texts.OrNull(condition);
        CattleAge = species == Species.Beef ? cattleAge ?? Records.CattleAge.Unknown : null;
    }

    public void Identify(string? tag, string? licenceNumber, string? harvestConfirmation, DateOnly? harvestedOn, string? harvestArea)
    {
        Tag = Texts.OrNull(tag);
        TagKey = Texts.Key(tag);
        LicenceNumber = Texts.OrNull(licenceNumber);
        HarvestConfirmation = Texts.OrNull(harvestConfirmation);
        HarvestedOn = harvestedOn;
        HarvestArea = Texts.OrNull(harvestArea);
    }

    /// <summary>The standing of the disease test. Putting on and releasing the hold is the caller's act of the same verb.</summary>
    public void RecordDiseaseTest(DiseaseTest standing, string? sampleNumber, string? laboratory, DateOnly? resultOn)
    {
        DiseaseTest = standing;
        SampleNumber = Texts.OrNull(sampleNumber);
        Laboratory = Texts.OrNull(laboratory);
        ResultOn = resultOn;
    }

    public void Hang(string? rail, DateTime at)
    {
        Rail = Texts.OrNull(rail);
        HungAt ??= at;
    }

    /// <summary>Gives a job its fraction of the animal; refused where the shares would pass one. All shares must have been loaded.</summary>
    public Finding? ShareWith(Job job, Ratio fraction, Portion portion)
    {
        if (fraction <= Ratio.Zero || fraction > Ratio.One)
            return new Finding("Fraction", "A share is more than 0 and at most 1. Type it as 1, 1/2 or 1/4.");
        if (TooFine(fraction) is { } refusal)
            return refusal;
        var sum = SharesSum + fraction;
        if (sum > Ratio.One)
            return new Finding("Fraction", $"The shares of this animal would come to {sum}. They must come to 1.", sum.ToString(), "1");
        _shares.Add(new Share(this, job, fraction, portion));
        return null;
    }

    public Ratio SharesSum => _shares.Aggregate(Ratio.Zero, (sum, share) => sum + share.Fraction);

    public Hold PutOnHold(HoldReason reason, string? note, DateTime at, int byId)
    {
        var hold = new Hold(reason, note, at, byId);
        _holds.Add(hold);
        return hold;
    }

    public Part KeepPart(PartKind kind, string? note)
    {
        var part = new Part(kind, note);
        _parts.Add(part);
        return part;
    }
}
