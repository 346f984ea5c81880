using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records.Tests.Cast;
using Xunit;

namespace ProcessorDesk.Records.Tests.Prices;

public sealed class PriceListTests(ShopFile shop) : IClassFixture<ShopFile>
{
    [Fact]
    public void The_list_in_force_is_the_one_that_started_last()
    {
        var (old, current, later) = shop.Do((records, _) =>
        {
            PriceList[] lists = [List("Old", new(2030, 1, 1)), List("Current", new(2030, 9, 1)), List("Later", new(2030, 12, 1))];
            records.PriceLists.AddRange(lists);
            records.SaveChanges();
            return (lists[0].Id, lists[1].Id, lists[2].Id);
        });
        using var records = shop.Open();

        Assert.Equal(old, records.PriceLists.InForceOn(new(2030, 8, 31)).Single().Id);
        Assert.Equal(current, records.PriceLists.InForceOn(new(2030, 9, 1)).Single().Id);
        Assert.Equal(current, records.PriceLists.InForceOn(new(2030, 11, 30)).Single().Id);
        Assert.Equal(later, records.PriceLists.InForceOn(new(2031, 1, 1)).Single().Id);
        Assert.Empty(records.PriceLists.InForceOn(new(2020, 1, 1)));
    }

    [Fact]
    public void Prices_are_replaced_as_often_as_one_likes_before_the_list_is_used()
    {
        var id = Kept(used: false);

        foreach (var cents in (int[])[8600, 8700])
        {
            shop.Do((records, _) => Loaded(records, id).Change("Prices", new(2026, 9, 1), [Cutting(cents), Cutting(cents + 1)]));
            using var records = shop.Open();
            Assert.Equal([cents, cents + 1], Loaded(records, id).Prices.Select(price => price.Cents));
        }

        Assert.Equal(["2"], shop.Column($"SELECT Version FROM PriceLists WHERE Id = {id}"));
    }

    [Fact]
    public void A_list_that_was_used_refuses_to_change()
    {
        var id = Kept(used: true);

        var refusal = shop.Do((records, _) => Loaded(records, id).Change("Cheaper", new(2026, 9, 1), []));

        Assert.Contains("Copy it to a new list", refusal!.Text, StringComparison.Ordinal);
        using var records = shop.Open();
        Assert.Equal(8500, Assert.Single(Loaded(records, id).Prices).Cents);
    }

    [Fact]
    public void The_file_refuses_every_change_to_a_list_in_use_and_its_prices()
    {
        var (used, free) = (Kept(used: true), Kept(used: false));
        const string columns = """INSERT INTO Prices (PriceListId, "For", Text, Basis, Cents, Taxed) VALUES""";

        foreach (var sql in (string[])
        [
            $"{columns} ({used}, 4, 'Rush', 1, 500, 0)",
            $"UPDATE Prices SET Cents = 1 WHERE PriceListId = {used}",
            $"UPDATE Prices SET PriceListId = {free} WHERE PriceListId = {used}",
            $"UPDATE Prices SET PriceListId = {used} WHERE PriceListId = {free}",
            $"DELETE FROM Prices WHERE PriceListId = {used}",
            $"UPDATE PriceLists SET StartsOn = '2020-01-01' WHERE Id = {used}",
            $"UPDATE PriceLists SET UsedAt = NULL WHERE Id = {used}",
            $"DELETE FROM PriceLists WHERE Id = {used}",
        ])
            Assert.Throws<SqliteException>(() => shop.Execute(sql));

        Assert.Equal(1, shop.Execute($"{columns} ({free}, 4, 'Rush', 1, 500, 0)"));
        Assert.Equal(2, shop.Execute($"UPDATE Prices SET Cents = 1 WHERE PriceListId = {free}"));
        Assert.Equal(["8500"], shop.Column($"SELECT Cents FROM Prices WHERE PriceListId = {used}"));
    }

    [Fact]
    public void The_entities_can_not_go_round_a_list_in_use()
    {
        var id = Kept(used: true);
        using var records = shop.Open();
        records.Remove(records.Prices.First(price => price.PriceListId == id));

        var refusal = Assert.Throws<DbUpdateException>(() => records.SaveChanges());

        Assert.Contains("PriceLists: in use", refusal.InnerException!.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_list_is_used_from_the_first_time_on()
    {
        var id = Kept(used: true);
        var first = shop.Now;
        shop.Clock.Advance(TimeSpan.FromHours(1));

        shop.Do((records, act) =>
        {
            Loaded(records, id).Use(act.Now);
            return id;
        });

        using var records = shop.Open();
        Assert.Equal(first, Loaded(records, id).UsedAt);
    }

    private int Kept(bool used) => shop.Do((records, act) =>
    {
        var list = List("Prices", new(2020, 9, 1));
        records.PriceLists.Add(list);
        records.SaveChanges();
        if (used)
            list.Use(act.Now);
        records.SaveChanges();
        return list.Id;
    });

    private static PriceList Loaded(RecordsContext records, int id) => records.PriceLists.Include(list => list.Prices).Single(list => list.Id == id);

    private static PriceList List(string name, DateOnly startsOn) => new(name, startsOn, [Cutting(8500)]);

    private static Price Cutting(int cents) => new(PriceFor.Animal, "Cutting", ChargeBasis.Each, cents, taxed: false);
}
