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
        Set(fraction, portion);
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

    /// <summary>The name of a fraction: the half of an animal is a side, a quarter of it a quarter.</summary>
    public static Portion PortionOf(Ratio fraction) =>
        fraction == Ratio.One ? Portion.Whole
        : fraction == Ratio.Of(1, 2) ? Portion.Side
        : fraction == Ratio.Of(1, 4) ? Portion.Quarter
        : Portion.Part;

    internal void Set(Ratio fraction, Portion portion)
    {
        Numerator = (int)fraction.Numerator;
        Denominator = (int)fraction.Denominator;
        Portion = portion;
    }
}
