using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Kitchen;

namespace ProcessorDesk.Records;

/// <summary>One filling of the mixer: what was planned for it, what was drawn and weighed in, when it was mixed.</summary>
public sealed class Load
{
    private readonly List<LoadPart> _parts = [];
    private readonly List<Draw> _draws = [];
    private readonly List<LoadIngredient> _ingredients = [];
    private readonly List<LotUse> _lotUses = [];

    private Load()
    {
    }

    internal Load(int number, MixerLoad plan, IReadOnlyList<BatchEntry> entries)
    {
        Number = number;
        Lean = plan.Lean;
        AddedFat = plan.AddedFat;
        Green = plan.Green;
        _parts.AddRange(plan.Pieces.Select(piece => new LoadPart(entries[piece.Part], piece)));
    }

    public int Id { get; private set; }

    public int BatchId { get; private set; }

    public Batch Batch { get; private set; } = null!;

    /// <summary>Its place in the batch, from one.</summary>
    public int Number { get; private set; }

    /// <summary>Planned, as are <see cref="AddedFat"/> and <see cref="Green"/>.</summary>
    public Weight Lean { get; private set; }

    public Weight AddedFat { get; private set; }

    public Weight Green { get; private set; }

    /// <summary>Added fat as weighed at the mixer; null until it was mixed.</summary>
    public Weight? FatWeighed { get; private set; }

    public DateTime? MixedAt { get; private set; }

    public int? MixedById { get; private set; }

    /// <summary>The manager's reason for less cure than product kept cold should have; null where there was no need.</summary>
    public string? LowCureBecause { get; private set; }

    /// <summary>What was wrong with a mix that was in before anybody could stop it; null where nothing was.</summary>
    public string? AlreadyInBecause { get; private set; }

    public IReadOnlyCollection<LoadPart> Parts => _parts;

    public IReadOnlyCollection<Draw> Draws => _draws;

    /// <summary>What was weighed in beside the meat, as it was; empty until it was mixed.</summary>
    public IReadOnlyCollection<LoadIngredient> Ingredients => _ingredients;

    /// <summary>Out of which lots it came, those struck among them.</summary>
    public IReadOnlyCollection<LotUse> LotUses => _lotUses;

    public Weight PlannedBlock => Lean + AddedFat;

    /// <summary>Meat drawn and not struck. The draws must have been loaded.</summary>
    public Weight Drawn => _draws.Where(draw => draw.StruckAt is null).Aggregate(Weight.Zero, (sum, draw) => sum + draw.Weighed);

    /// <summary>The meat block as weighed; zero before anything was drawn. The draws must have been loaded.</summary>
    public Weight WeighedBlock => Drawn + (FatWeighed ?? Weight.Zero);

    /// <summary>Meat drawn in an entry's place; null is meat without a place. The draws must have been loaded.</summary>
    public Weight DrawnOf(int? entryId) =>
        _draws.Where(draw => draw.StruckAt is null && draw.EntryId == entryId).Aggregate(Weight.Zero, (sum, draw) => sum + draw.Weighed);

    /// <summary>Lean planned of an entry and not drawn yet; below zero where more was drawn. Parts and draws must have been loaded.</summary>
    public Weight WantedOf(int entryId) =>
        _parts.Where(part => part.EntryId == entryId).Aggregate(Weight.Zero, (sum, part) => sum + part.Lean) - DrawnOf(entryId);

    internal void Mix(
        Weight fat, IEnumerable<LoadIngredient> ingredients, string? lowCureBecause, string? alreadyInBecause, DateTime at, int byId)
    {
        FatWeighed = fat;
        _ingredients.AddRange(ingredients);
        LowCureBecause = Texts.OrNull(lowCureBecause);
        AlreadyInBecause = Texts.OrNull(alreadyInBecause);
        (MixedAt, MixedById) = (at, byId);
    }
}
