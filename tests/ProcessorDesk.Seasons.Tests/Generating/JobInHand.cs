using ProcessorDesk.Records;
using ProcessorDesk.Trade;

namespace ProcessorDesk.Seasons.Tests.Generating;

/// <summary>A job on its way through the shop, with what its next steps need to know.</summary>
internal sealed class JobInHand(Job job, Owner owner, PriceList prices, Ratio fraction, IReadOnlyList<AnimalInHand> animals)
{
    public Job Job => job;

    public Owner Owner => owner;

    public PriceList Prices => prices;

    /// <summary>What of its animals is the job's.</summary>
    public Ratio Fraction => fraction;

    public IReadOnlyList<AnimalInHand> Animals => animals;

    /// <summary>What the owner asks for, in order; the rest is plain ground.</summary>
    public IReadOnlyList<PlannedAsk> Asks { get; set; } = [];

    /// <summary>Lugs of lean trim, in the order they were filled.</summary>
    public List<LugInHand> Lugs { get; } = [];

    public Weight Cuts { get; set; }

    /// <summary>Products agreed, with meat in them.</summary>
    public List<ProductInHand> Products { get; } = [];

    /// <summary>Boxes that are here.</summary>
    public List<Box> Boxes { get; } = [];

    public Money Paid { get; set; }
}
