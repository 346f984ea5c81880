using ProcessorDesk.Records.Tests.Cast;

namespace ProcessorDesk.Records.Tests.Owners;

/// <summary>A shop with twenty thousand owners.</summary>
public sealed class ManyOwners : IDisposable
{
    public ManyOwners() => Shop.Execute(
        """
        WITH RECURSIVE n(i) AS (SELECT 0 UNION ALL SELECT i + 1 FROM n WHERE i < 19999)
        INSERT INTO Owners (Name, Phone, PhoneDigits, NameOnPacks, Version)
        SELECT 'Family ' || i, printf('555-01%05d', i), printf('55501%05d', i), 0, 0 FROM n
        """);

    public ShopFile Shop { get; } = new();

    public void Dispose() => Shop.Dispose();
}
