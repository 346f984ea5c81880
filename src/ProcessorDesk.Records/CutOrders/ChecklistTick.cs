namespace ProcessorDesk.Records;

/// <summary>One thing the cutter looked to on an animal; <see cref="Item"/> is a code of <see cref="CutMenu"/>.</summary>
public sealed class ChecklistTick
{
    private ChecklistTick()
    {
    }

    public ChecklistTick(int animalId, string item, DateTime at, int byId) =>
        (AnimalId, Item, At, ById) = (animalId, item, at, byId);

    public int AnimalId { get; private set; }

    public string Item { get; private set; } = "";

    public DateTime At { get; private set; }

    public int ById { get; private set; }
}
