using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Paper;

namespace ProcessorDesk.Web.Pages.Pickup;

/// <summary>An issued invoice or credit as a PDF, with every figure as it was kept and the account as it stood then.</summary>
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
        return File(Paper.Invoice.Draw([Content(invoice, records.MoneyOf(invoice.JobId).AccountOn(id))]), "application/pdf");
    }

    /// <summary>A payment booked after the invoice was issued does not change it.</summary>
    private Paper.Invoice Content(Records.Invoice invoice, JobMoney.OnBill account)
    {
        var shop = invoice.ShopHeading.Split('\n');
        var owner = invoice.OwnerHeading.Split('\n');
        var payments = account.Since.Select(payment => new Fact($"{payment.Words}, {PrintedDate.Of(day.DayOf(payment.At))}, {Wording.Of(payment.Method).ToLowerInvariant()}", (-payment.Amount).Print())).ToList();
        return new Paper.Invoice(
            new ShopHeader(shop[0], shop[1..]),
            invoice.Number.ToString(CultureInfo.InvariantCulture),
            day.DayOf(invoice.IssuedAt),
            invoice.Job.Number.ToString(CultureInfo.InvariantCulture),
            invoice.Credits?.Number.ToString(CultureInfo.InvariantCulture),
            owner[0],
            owner[1..],
            [.. invoice.Lines.OrderBy(line => line.Position).Select(line => new Paper.InvoiceLine(line.Text, line.Quantity, line.Rate, line.Amount.Print(), line.Taxed ? line.Tax.Print() : ""))],
            [new Fact("Subtotal", invoice.Net.Print()), new Fact(invoice.TaxWording, invoice.Tax.Print())],
            invoice.Total.Print(),
            invoice.IsCredit ? [] : payments,
            (invoice.IsCredit ? invoice.Total : account.Balance).Print(),
            invoice.Lines.Any(line => line.Taxed) ? "The tax of each line is rounded to the cent; the tax below is their sum." : "",
            "",
            invoice.IsCredit ? null : YieldAccounts.Kept(invoice.Statement),
            invoice.IsCredit || account.Before is not { } before ? null : new JobAccount(
                new Fact($"Brought forward: {(before.CreditsId is null ? "invoice" : "credit")} {before.Number}, {PrintedDate.Of(day.DayOf(before.At))}", account.Forward.Print()),
                payments,
                account.Balance < Money.Zero ? new Fact("In your favour", (-account.Balance).Print()) : new Fact("To pay", account.Balance.Print())));
    }
}
