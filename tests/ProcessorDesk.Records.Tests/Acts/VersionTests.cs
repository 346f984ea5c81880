using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records.Tests.Cast;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;
using Xunit;

namespace ProcessorDesk.Records.Tests.Acts;

public sealed class VersionTests(ShopFile shop) : IClassFixture<ShopFile>
{
    [Fact]
    public void A_version_goes_up_by_one_with_every_save_that_changes_something()
    {
        var id = shop.Do((records, act) => Sample.Job(records, act).OwnerId);
        Assert.Equal(0, OwnerVersion(id));

        Describe(id, "Changed Once");
        Assert.Equal(1, OwnerVersion(id));

        Describe(id, "Changed Once");
        Assert.Equal(1, OwnerVersion(id));

        Describe(id, "Changed Twice");
        Assert.Equal(2, OwnerVersion(id));
    }

    [Fact]
    public async Task A_version_goes_up_with_an_asynchronous_save_too()
    {
        var id = shop.Do((records, act) => Sample.Job(records, act).OwnerId);
        await using var records = shop.Open();
        (await records.Owners.SingleAsync(owner => owner.Id == id)).Describe("Changed", "555-0100", null, null);

        await records.SaveChangesAsync();

        Assert.Equal(1, OwnerVersion(id));
    }

    [Fact]
    public void Lines_that_are_edited_with_a_job_raise_its_version()
    {
        var id = shop.Do((records, act) => Sample.Job(records, act).Id);
        Action<Job>[] edits =
        [
            job => job.OrderCuts([new CutOrderLine(1, "loin", "steak", null, 4)]),
            job => job.OrderCuts([new CutOrderLine(1, "loin", "whole", null, 4)]),
            job => job.OrderCuts([]),
            job => job.PutPeople([new JobPerson(PersonRole.Payer, "Sample Payer", null, null)]),
            job => job.OrderGrind([new GrindOrder(1, 1, AskKind.Rest, Weight.Zero, Proportion.Zero)]),
            job => job.OrderGrind([]),
        ];

        foreach (var (index, edit) in edits.Index())
        {
            shop.Do((records, _) =>
            {
                edit(Whole(records, id));
                return id;
            });
            using var records = shop.Open();
            Assert.Equal(index + 1, Whole(records, id).Version);
        }
    }

    [Fact]
    public void A_new_formula_raises_the_version_of_its_product()
    {
        var id = shop.Do((records, act) =>
        {
            var product = Sample.PlainGround(records);
            product.Reformulate(new FormulaVersion(
                act.Now, Proportion.Whole, null, false, (Proportion.Zero, Proportion.Zero, Proportion.Zero), Weight.Zero, Weight.Zero, []));
            return product.Id;
        });

        using var records = shop.Open();
        Assert.Equal(1, records.Products.Single(product => product.Id == id).Version);
    }

    [Fact]
    public void Two_who_hold_the_same_version_can_not_both_save()
    {
        var id = shop.Do((records, act) => Sample.Job(records, act).OwnerId);
        using var one = shop.Open();
        using var other = shop.Open();
        one.Owners.Single(owner => owner.Id == id).Describe("First", "555-0100", null, null);
        other.Owners.Single(owner => owner.Id == id).Describe("Second", "555-0100", null, null);

        one.SaveChanges();

        Assert.Throws<DbUpdateConcurrencyException>(() => other.SaveChanges());
        Assert.Equal(["First"], shop.Column($"SELECT Name FROM Owners WHERE Id = {id}"));
    }

    private void Describe(int id, string name) => shop.Do((records, _) =>
    {
        records.Owners.Single(owner => owner.Id == id).Describe(name, "555-0100", null, null);
        return id;
    });

    private int OwnerVersion(int id)
    {
        using var records = shop.Open();
        return records.Owners.Where(owner => owner.Id == id).Select(owner => owner.Version).Single();
    }

    private static Job Whole(RecordsContext records, int id) => records.Jobs
        .Include(job => job.CutOrder).Include(job => job.Asks).Include(job => job.People).Single(job => job.Id == id);
}
