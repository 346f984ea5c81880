using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>How much of an animal belongs to a job: an exact fraction and what it is called.</summary>
public sealed class Share
{
    private Share()
    {
    }

    internal Share(Animal animal, Job job, Ratio fraction, Portion portion)
    {
        Animal = animal;
        Job = job;
        Numerator = (int)fraction.Numerator;
        Denominator = (int)fraction.Denominator;
        Portion = portion;
    }

    public int Id { get; private set; }

    public int AnimalId { get; private set; }

    public Animal Animal { get; private set; } = null!;

    public int JobId { get; private set; }

    public Job Job { get; private set; } = null!;

    public int Numerator { get; private set; }

    public int Denominator { get; private set; }

    public Portion Portion { get; private set; }

    public Ratio Fraction => Ratio.Of(Numerator, Denominator);
}
