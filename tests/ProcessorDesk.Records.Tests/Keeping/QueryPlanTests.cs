using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records.Tests.Cast;
using ProcessorDesk.Records.Tests.Plans;
using ProcessorDesk.Trade;
using Xunit;

namespace ProcessorDesk.Records.Tests.Keeping;

/// <summary>The queries that pages share find their rows by an index, however long the season was.</summary>
public sealed class QueryPlanTests(ShopFile shop) : IClassFixture<ShopFile>
{
    public static TheoryData<string> Names => [.. _queries.Keys];

    private static readonly Dictionary<string, Action<RecordsContext>> _queries = new()
    {
        ["owners by part of a name"] = records => records.Owners.Found("owal").OrderBy(owner => owner.Name).Take(20).Load(),
        ["owners by two words"] = records => records.Owners.Found("ann 0101").Take(20).Load(),
        ["owners by a short beginning"] = records => records.Owners.Found("ko").Take(20).Load(),
        ["holds on a job"] = records => records.Holds.Standing().OnJob(records, 7).Load(),
        ["holds that stop a job"] = records => records.Stopping(7, HeldAct.Cut),
        ["holds that stop an animal"] = records => records.StoppingAnimal(7, HeldAct.Cut),
        ["lean of a job"] = records => records.LeanOf(7, ScaleDivision.HundredthPound),
        ["weigh-ins of an animal"] = records => records.WeighIns.Standing().Where(one => one.AnimalId == 7).Load(),
        ["price list in force"] = records => records.PriceLists.InForceOn(new DateOnly(2026, 11, 25)).Load(),
        ["why a job may not be cut"] = records => records.StoppingKnife(7),
        ["jobs to cut"] = records => records.Jobs.ToCut().OrderBy(job => job.PromisedFor).Load(),
        ["what a job owes"] = records => records.BalanceOf(7),
        ["weights of a job and its animals"] = records => records.WeightsOf(7, ScaleDivision.HundredthPound),
        ["a job by its number"] = records => records.Jobs.Where(job => job.Number == 1001).Load(),
        ["jobs of an owner"] = records => records.Jobs.Where(job => job.OwnerId == 7).OrderByDescending(job => job.TakenAt).Load(),
        ["jobs taken last"] = records => records.Jobs.OrderByDescending(job => job.TakenAt).Where(job => job.TakenAt > DateTime.UnixEpoch).Take(20).Load(),
        ["animals by their tag"] = records => records.Animals.Where(animal => animal.TagKey == "WT12").Load(),
        ["tickets of a thing"] = records => records.Tickets.Where(ticket => ticket.Kind == TicketKind.Claim && ticket.TargetId == 7).Load(),
        ["a lug that is full"] = records => records.Fillings.Where(filling => filling.LugId == 7 && filling.EmptiedAt == null).Load(),
        ["the split that stands"] = records => records.AgreedSplits.Where(split => split.JobId == 7 && split.WithdrawnAt == null).Load(),
        ["the bill of a job"] = records => records.Invoices.Include(invoice => invoice.Lines).Where(invoice => invoice.JobId == 7).Load(),
        ["money of a job"] = records => records.Payments.Where(payment => payment.JobId == 7).Load(),
        ["formulas of a product"] = records => records.FormulaVersions.Include(one => one.Ingredients).Where(one => one.ProductId == 7).Load(),
        ["a form key"] = records => records.FormKeys.Where(key => key.Key == "k").Load(),
    };

    [Theory]
    [MemberData(nameof(Names))]
    public void A_shared_query_reads_no_whole_table(string query)
    {
        var plans = shop.PlansOf(_queries[query]);

        Assert.NotEmpty(plans.SelectMany(plan => plan.Steps));
        Assert.Empty(plans.SelectMany(plan => plan.Scans));
    }

    [Fact]
    public void A_query_without_an_index_is_seen() =>
        Assert.NotEmpty(shop.PlansOf(records => records.Jobs.Where(job => job.Notes == "soon").Load()).SelectMany(plan => plan.Scans));

    [Fact]
    public void An_index_read_from_end_to_end_is_seen() =>
        Assert.NotEmpty(shop.PlansOf(records => records.Jobs.Select(job => job.Number).OrderBy(number => number).Load()).SelectMany(plan => plan.Scans));

    [Fact]
    public void An_index_made_for_one_query_is_seen() =>
        Assert.NotEmpty(shop.PlansOf(records => records.Owners.Where(owner => records.JobPeople.Any(person => person.Name == owner.Name && person.Phone == owner.Phone)).Load()).SelectMany(plan => plan.Scans));

    [Fact]
    public void The_first_rows_of_an_index_are_not_a_scan() =>
        Assert.Empty(shop.PlansOf(records => records.Jobs.OrderByDescending(job => job.TakenAt).Take(20).Load()).SelectMany(plan => plan.Scans));
}
