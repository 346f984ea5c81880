namespace ProcessorDesk.Records;

/// <summary>An animal whose meat is in a filling.</summary>
public sealed class FillingAnimal
{
    private FillingAnimal()
    {
    }

    internal FillingAnimal(int animalId) => AnimalId = animalId;

    public int FillingId { get; private set; }

    public int AnimalId { get; private set; }

    public Animal Animal { get; private set; } = null!;
}
