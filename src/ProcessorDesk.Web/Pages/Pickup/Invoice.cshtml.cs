using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Paper;

namespace ProcessorDesk.Web.Pages.Pickup;

/// <summary>An issued invoice or credit as a PDF, with every figure as it was kept.</summary>
public sealed class InvoiceModel(RecordsContext records, ShopDay day) : StationPage
{
    public IActionResult OnGet(int id)
    {
        var invoice = records.Invoices.AsNoTracking()
            .Include(one => one.Lines)
            .Include(one => one.Credits)
            .Include(one => one.Job)
            .SingleOrDefault(one => one.Id == id);
        if (invoice is null)
            return NotFound();
        // Payments booked up to the moment the invoice was issued stand on it; a later one does not change it.
        var payments = invoice.IsCredit
            ? []
            : records.Payments.AsNoTracking().Where(payment => payment.JobId == invoice.JobId && payment.At <= invoice.IssuedAt)
                .OrderBy(payment => payment.Id).ToList();
        return File(Paper.Invoice.Draw([Content(invoice, payments)]), "application/pdf");
    }

    private Paper.Invoice Content(Records.Invoice invoice, IReadOnlyList<Payment> payments)
    {
        var shop = invoice.ShopHeading.Split('\n');
        var owner = invoice.OwnerHeading.Split('\n');
        var balance = invoice.Total - Money.Sum(payments.Select(payment => payment.Amount));
        return new Paper.Invoice(
            new ShopHeader(shop[0], shop[1..]),
            invoice.Number.ToString(System.Globalization.CultureInfo.InvariantCulture),
            day.DayOf(invoice.IssuedAt),
            invoice.Job.Number.ToString(System.Globalization.CultureInfo.InvariantCulture),
            invoice.Credits?.Number.ToString(System.Globalization.CultureInfo.InvariantCulture),
            owner[0],
            owner[1..],
            [.. invoice.Lines.OrderBy(line => line.Position).Select(line => new Paper.InvoiceLine(line.Text, line.Quantity, line.Rate, line.Amount.Print(), line.Taxed ? line.Tax.Print() : ""))],
            [new Fact("Subtotal", invoice.Net.Print()), new Fact(invoice.TaxWording, invoice.Tax.Print())],
            invoice.Total.Print(),
            [.. payments.Select(payment => new Fact($"{(payment.IsDeposit ? "Deposit" : "Paid")}, {PrintedDate.Of(day.DayOf(payment.At))}, {Wording.Of(payment.Method)}", (-payment.Amount).Print()))],
            balance.Print(),
            invoice.Lines.Any(line => line.Taxed) ? "The tax of each line is rounded to the cent; the tax below is their sum." : "",
            "",
            invoice.IsCredit ? null : YieldAccounts.Kept(invoice.Statement));
    }
}
