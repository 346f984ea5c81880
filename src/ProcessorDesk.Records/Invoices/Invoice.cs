using ProcessorDesk.Trade;

namespace ProcessorDesk.Records;

/// <summary>
/// An issued invoice or credit, as it was printed. Never changed or deleted: the database refuses. A wrong one is credited
/// line by line and issued again.
/// </summary>
public sealed class Invoice
{
    private readonly List<InvoiceLine> _lines = [];

    private Invoice()
    {
    }

    public Invoice(int number, int jobId, DateTime issuedAt, int issuedById, InvoiceHeading heading, IEnumerable<InvoiceLine> lines, string statement)
    {
        Number = number;
        JobId = jobId;
        IssuedAt = issuedAt;
        IssuedById = issuedById;
        ShopHeading = heading.Shop;
        OwnerHeading = heading.Owner;
        TaxWording = heading.TaxWording;
        Statement = statement;
        _lines.AddRange(lines);
        Net = Money.Sum(_lines.Select(line => line.Amount));
        Tax = Money.Sum(_lines.Select(line => line.Tax));
        Total = Net + Tax;
    }

    public int Id { get; private set; }

    /// <summary>A series without gaps; credits are in it.</summary>
    public int Number { get; private set; }

    public int JobId { get; private set; }

    public Job Job { get; private set; } = null!;

    public DateTime IssuedAt { get; private set; }

    public int IssuedById { get; private set; }

    /// <summary>For a credit, the invoice it takes back.</summary>
    public int? CreditsInvoiceId { get; private set; }

    public Invoice? Credits { get; private set; }

    public string ShopHeading { get; private set; } = "";

    public string OwnerHeading { get; private set; } = "";

    public string TaxWording { get; private set; } = "";

    public Money Net { get; private set; }

    public Money Tax { get; private set; }

    public Money Total { get; private set; }

    /// <summary>The yield statement as it stood, as JSON.</summary>
    public string Statement { get; private set; } = "";

    public IReadOnlyCollection<InvoiceLine> Lines => _lines;

    public bool IsCredit => CreditsInvoiceId is not null || Credits is not null;

    /// <summary>A credit of this invoice: the same lines with the amounts turned. The lines must have been loaded.</summary>
    /// <exception cref="InvalidOperationException">This is a credit itself.</exception>
    public Invoice Credit(int number, DateTime at, int byId) => IsCredit
        ? throw new InvalidOperationException("A credit is not credited; issue the invoice anew.")
        : new(number, JobId, at, byId, new InvoiceHeading(ShopHeading, OwnerHeading, TaxWording), _lines.Select(line => line.Turned()), Statement)
        {
            Credits = this,
        };
}
