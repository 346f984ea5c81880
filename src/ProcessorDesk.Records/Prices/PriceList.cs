using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>A dated list of prices. Once a job points at it, it never changes; a new one is a copy.</summary>
public sealed class PriceList : IVersioned
{
    private readonly List<Price> _prices = [];

    private PriceList()
    {
    }

    public PriceList(string name, DateOnly startsOn, IEnumerable<Price> prices)
    {
        Name = name.Trim();
        StartsOn = startsOn;
        _prices.AddRange(prices);
    }

    public int Id { get; private set; }

    public string Name { get; private set; } = "";

    /// <summary>The list in force on a day is the one that started last.</summary>
    public DateOnly StartsOn { get; private set; }

    /// <summary>When the first job was taken at it.</summary>
    public DateTime? UsedAt { get; private set; }

    public int Version { get; private set; }

    public IReadOnlyCollection<Price> Prices => _prices;

    public void Use(DateTime at) => UsedAt ??= at;

    /// <summary>Replaces the prices; refused once the list was used. The prices must have been loaded.</summary>
    public Finding? Change(string name, DateOnly startsOn, IEnumerable<Price> prices)
    {
        if (UsedAt is not null)
            return new Finding("", "Jobs were taken at these prices, so the list stays as it is. Copy it to a new list that starts later.");
        Name = name.Trim();
        StartsOn = startsOn;
        _prices.Clear();
        _prices.AddRange(prices);
        return null;
    }
}
