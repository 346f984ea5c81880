using ProcessorDesk.Records.Tests.Cast;

namespace ProcessorDesk.Records.Tests.Owners;

/// <summary>A shop with a few owners whose names try the index.</summary>
public sealed class OwnersOnFile : IDisposable
{
    public OwnersOnFile() => Shop.Do((records, _) =>
    {
        records.Owners.AddRange(
            new Owner("Anna Kowalczyk", "(555) 014-7788"),
            new Owner("Jürgen Müller", "555-0111"),
            new Owner("Inés Núñez", "555-0112"),
            new Owner("Pat O'Dell", "555-0113"),
            new Owner("Kim Reed-Marsh", "555-0114"));
        return 5;
    });

    public ShopFile Shop { get; } = new();

    public void Dispose() => Shop.Dispose();
}
