using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Trade;
using Xunit;

namespace ProcessorDesk.Records.Tests.SeedDemo;

/// <summary>Boxes, hand-overs and money of the demo.</summary>
[Collection(DemoShelf.Name)]
public sealed class DemoFreezerTests(DemoFile demo)
{
    [Fact]
    public void Boxes_lie_at_several_places_and_some_jobs_are_still_to_box()
    {
        using var records = demo.Open();

        Assert.True(records.Boxes.Here().Select(box => box.Place).Distinct().Count() >= 4);
        Assert.Contains(records.Jobs.Where(job => job.MadeAt != null && job.BoxedAt == null), job => !records.Boxes.Any(box => box.JobId == job.Id));
        Assert.Contains(records.Jobs.Where(job => job.MadeAt != null && job.BoxedAt == null), job => records.Boxes.Any(box => box.JobId == job.Id));
    }

    [Fact]
    public void Nothing_goes_into_boxes_that_was_not_made()
    {
        using var records = demo.Open();

        Assert.All(records.Jobs.Where(job => job.BoxedAt != null).Select(job => job.Id).ToList(), job =>
        {
            var made = records.MadeOf(job).Sum(product => product.Finished!.Value.Milligrams) + records.WeightsOf(job, ScaleDivision.HundredthPound).Cuts.Milligrams;
            var boxed = records.Boxes.Include(box => box.Weighed).Where(box => box.JobId == job && box.UnpackedAt == null).AsEnumerable().Sum(box => box.Weighed.Net.Milligrams);
            Assert.InRange(boxed, made - 1000, made + 1000);
        });
    }

    [Fact]
    public void One_job_is_unclaimed()
    {
        using var records = demo.Open();
        var before = demo.Now.UtcDateTime.AddDays(-records.Shop.Single().UnclaimedAfterDays);

        Assert.Single(records.Jobs.Where(job => job.BoxedAt < before && job.HandedOverAt == null));
    }

    [Fact]
    public void One_is_ready_and_paid_and_others_are_ready_and_owe()
    {
        using var records = demo.Open();
        var ready = records.Jobs.Where(job => job.BoxedAt != null && job.HandedOverAt == null && records.Boxes.Here().Any(box => box.JobId == job.Id) && !records.HandOvers.Any(one => one.JobId == job.Id))
            .Select(job => job.Id).AsEnumerable().Select(job => records.BalanceOf(job)).ToList();

        Assert.Single(ready, balance => balance.IsZero);
        Assert.Contains(ready, balance => balance > Money.Zero);
    }

    [Fact]
    public void Of_one_job_the_cuts_are_gone_and_the_sausage_is_on_an_invoice_of_its_own()
    {
        using var records = demo.Open();
        var partly = records.Jobs.Where(job => job.HandedOverAt == null && records.HandOvers.Any(one => one.JobId == job.Id)).Select(job => job.Id).ToList();
        var twice = Assert.Single(partly, job => records.Invoices.Count(invoice => invoice.JobId == job) == 2);
        var invoices = records.Invoices.Include(invoice => invoice.Lines).Where(invoice => invoice.JobId == twice).OrderBy(invoice => invoice.Number).ToList();

        Assert.Contains(invoices[0].Lines, line => line.For == PriceFor.Animal);
        Assert.DoesNotContain(invoices[1].Lines, line => line.For == PriceFor.Animal);
        Assert.True(records.Payments.Single(payment => payment.JobId == twice && payment.IsDeposit).At < invoices[0].IssuedAt);
        Assert.Equal(invoices[1].Total, records.BalanceOf(twice));
        Assert.NotEmpty(records.Boxes.Here().Where(box => box.JobId == twice));
        Assert.NotEmpty(records.Boxes.Where(box => box.JobId == twice && box.HandOverId != null));
        Assert.Contains(partly, job => records.MadeOf(job).Any(product => !product.IsReleased));
    }

    [Fact]
    public void Of_one_job_only_a_part_was_left_behind()
    {
        using var records = demo.Open();

        Assert.Single(records.Parts.Where(part => part.GivenAt == null
            && part.Animal.Shares.Any(share => share.Job.BoxedAt != null && records.HandOvers.Any(one => one.JobId == share.JobId) && !records.Boxes.Here().Any(box => box.JobId == share.JobId))));
        Assert.Contains(records.Parts, part => part.GivenAt != null);
    }

    [Fact]
    public void What_is_gone_was_paid_and_a_credited_invoice_was_issued_again()
    {
        using var records = demo.Open();
        var gone = records.Jobs.Where(job => job.HandedOverAt != null).Select(job => job.Id).ToList();

        Assert.True(gone.Count >= 6);
        Assert.All(gone, job => Assert.Equal(Money.Zero, records.BalanceOf(job)));
        var credit = Assert.Single(records.Invoices, invoice => invoice.CreditsInvoiceId != null);
        Assert.Single(records.Invoices.Standing().Where(invoice => invoice.JobId == credit.JobId));
    }
}
