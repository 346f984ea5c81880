using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records.Tests.Cast;
using ProcessorDesk.Trade;
using Xunit;

namespace ProcessorDesk.Records.Tests.Weighing;

public sealed class FillingTests(ShopFile shop) : IClassFixture<ShopFile>
{
    [Fact]
    public void A_filling_keeps_the_tare_the_lug_had()
    {
        var id = Filled();
        shop.Do((records, act) =>
        {
            var lug = Kept(records, id).Lug;
            lug.CheckTare(Weight.FromPounds(3m), act.Now);
            return lug;
        });
        using var records = shop.Open();

        var filling = Kept(records, id);

        Assert.Equal((Weight.FromPounds(2.5m), Weight.FromPounds(3m)), (filling.Tare, filling.Lug.Tare));
    }

    [Fact]
    public void A_lug_has_at_most_one_open_filling()
    {
        var id = Filled();

        Assert.Throws<DbUpdateException>(() => shop.Do((records, act) => Again(records, id, act)));

        shop.Do((records, act) =>
        {
            Kept(records, id).Empty(act.Now);
            return id;
        });
        shop.Do((records, act) => Again(records, id, act));
        Assert.Equal(["2"], shop.Column($"SELECT COUNT(*) FROM Fillings WHERE LugId = (SELECT LugId FROM Fillings WHERE Id = {id})"));
    }

    [Fact]
    public void A_filling_names_its_animals() =>
        Assert.Throws<ArgumentException>(() => new Filling(new Lug(1, Weight.Zero, shop.Now), 1, [], shop.Now));

    [Fact]
    public void A_filling_is_emptied_once()
    {
        var filling = new Filling(new Lug(1, Weight.Zero, shop.Now), 1, [1], shop.Now);

        filling.Empty(shop.Now);
        filling.Empty(shop.Now.AddHours(1));

        Assert.Equal(shop.Now, filling.EmptiedAt);
    }

    [Fact]
    public void A_tare_is_never_less_than_zero() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new Lug(1, Weight.FromMilligrams(-1), shop.Now));

    private int Filled() => shop.Do((records, act) =>
    {
        var job = Sample.Job(records, act);
        return Sample.Lug(records, job, Sample.Deer(records, job, act), act).Id;
    });

    private static Filling Kept(RecordsContext records, int id) => records.Fillings.Include(filling => filling.Lug).Include(filling => filling.Animals).Single(filling => filling.Id == id);

    private static Filling Again(RecordsContext records, int id, Act act)
    {
        var before = Kept(records, id);
        var filling = new Filling(before.Lug, before.JobId, [.. before.Animals.Select(one => one.AnimalId)], act.Now);
        records.Fillings.Add(filling);
        return filling;
    }
}
