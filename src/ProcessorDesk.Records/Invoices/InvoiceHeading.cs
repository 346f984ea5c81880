namespace ProcessorDesk.Records;

/// <summary>What stands over an invoice, kept with it: the shop's and the owner's lines, and the words for tax.</summary>
public sealed record InvoiceHeading(string Shop, string Owner, string TaxWording);
