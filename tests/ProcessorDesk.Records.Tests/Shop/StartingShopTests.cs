using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records.Tests.Cast;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Tickets;
using Xunit;

namespace ProcessorDesk.Records.Tests.Shop;

public sealed class StartingShopTests(ShopFile shop) : IClassFixture<ShopFile>
{
    [Fact]
    public void A_new_shop_can_take_in_a_job_at_once() => shop.Do((records, act) =>
    {
        var job = Sample.Job(records, act);

        Assert.True(job.Number >= 1001);
        Assert.Equal(TicketCode.First, act.NewTicket(TicketKind.Claim, job.Id).Code);
        Assert.Equal(1, act.NextInvoiceNumber());
        return job;
    });

    [Fact]
    public void It_has_its_settings_its_plain_ground_and_a_price_list_in_force()
    {
        using var records = shop.Open();

        var settings = records.Shop.Single();
        Assert.Equal(("Sample Meats", "America/Chicago", false), (settings.Name, settings.TimeZone, settings.IsDemo));
        Assert.Equal(ScaleDivision.HundredthPound, settings.BenchDivision);
        var blend = Assert.Single(Sample.PlainGround(records).Formulas).ToBlend();
        Assert.Equal(Trade.Grinding.GrindBlend.Plain, blend);
        Assert.Single(records.PriceLists.InForceOn(DateOnly.FromDateTime(shop.Now)));
    }

    [Fact]
    public void The_day_before_in_the_shop_s_zone_has_a_price_list_too()
    {
        using var records = shop.Open();

        Assert.Single(records.PriceLists.InForceOn(DateOnly.FromDateTime(shop.Now).AddDays(-1)));
    }

    [Fact]
    public void Laid_twice_it_is_the_same_shop()
    {
        var entries = shop.Column("SELECT COUNT(*) FROM Journal");
        using var records = shop.Open();

        StartingShop.Lay(records, shop.VerbsOn(records), "Another Name", "America/Denver", isDemo: true);

        Assert.Equal("Sample Meats", records.Shop.AsNoTracking().Single().Name);
        Assert.Equal(entries, shop.Column("SELECT COUNT(*) FROM Journal"));
    }

    [Fact]
    public void The_set_up_is_in_the_journal_without_a_hand()
    {
        using var records = shop.Open();

        var first = records.Journal.OrderBy(entry => entry.Id).First();

        Assert.Equal(("set up the shop", null, ""), (first.Verb, first.ById, first.PreviousHash));
        Assert.Throws<InvalidOperationException>(() => Hand.SetUp.Id);
    }

    [Fact]
    public void The_bench_scale_weighs_in_pounds()
    {
        using var records = shop.Open();
        var settings = records.Shop.Single();

        Assert.Throws<ArgumentException>(() => settings.SetScales(settings.RailDivision, ScaleDivision.TenthGram, settings.CureDivision));
    }
}
