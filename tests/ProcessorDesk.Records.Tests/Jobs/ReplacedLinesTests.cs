using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records.Tests.Cast;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Grinding;
using Xunit;

namespace ProcessorDesk.Records.Tests.Jobs;

/// <summary>The order is saved as a whole: lines replace those at the same place, as often as the clerk saves.</summary>
public sealed class ReplacedLinesTests(ShopFile shop) : IClassFixture<ShopFile>
{
    [Fact]
    public void A_cut_order_is_replaced_line_for_line()
    {
        var id = NewJob();

        foreach (var cut in (string[])["steak", "whole", "whole", "grind"])
        {
            Edit(id, job => job.OrderCuts([new(1, "loin", cut, null, 2), new(2, "haunch", cut, null, 2)]));
            Assert.Equal([cut, cut], Read(id, job => job.CutOrder.OrderBy(line => line.Position).Select(line => line.Cut)));
        }

        Edit(id, job => job.OrderCuts([new(2, "neck", "roast", null, null)]));
        Assert.Equal(["2 neck"], Read(id, job => job.CutOrder.Select(line => $"{line.Position} {line.Group}")));
    }

    [Fact]
    public void A_grind_order_is_replaced_ask_for_ask()
    {
        var id = NewJob();
        var product = shop.Do((records, _) => Sample.PlainGround(records).Id);

        foreach (var pounds in (decimal[])[10m, 12m, 12m])
        {
            Edit(id, job => job.OrderGrind(
            [
                new(1, product, AskKind.OwnLean, Weight.FromPounds(pounds), Proportion.Zero),
                new(2, product, AskKind.Rest, Weight.Zero, Proportion.Zero),
            ]));
            Assert.Equal([Weight.FromPounds(pounds), Weight.Zero], Read(id, job => job.Asks.OrderBy(ask => ask.Position).Select(ask => ask.Amount)));
        }
    }

    [Fact]
    public void People_are_replaced_in_the_same_roles()
    {
        var id = NewJob();

        foreach (var name in (string[])["Sample Hunter", "Other Hunter", "Other Hunter"])
        {
            Edit(id, job => job.PutPeople([new(PersonRole.Hunter, name, null, null), new(PersonRole.Collector, name, "555-0102", null)]));
            Assert.Equal([name, name], Read(id, job => job.People.OrderBy(person => person.Role).Select(person => person.Name)));
        }

        Edit(id, job => job.PutPeople([]));
        Assert.Empty(Read(id, job => job.People.Select(person => person.Name)));
    }

    [Fact]
    public void Lines_replaced_twice_within_one_act_are_those_of_the_second_time()
    {
        var id = NewJob();

        Edit(id, job =>
        {
            job.OrderCuts([new(1, "loin", "steak", null, 2), new(2, "rib", "rack", null, null)]);
            job.OrderCuts([new(1, "loin", "whole", null, null)]);
        });

        Assert.Equal(["whole"], Read(id, job => job.CutOrder.Select(line => line.Cut)));
    }

    private int NewJob() => shop.Do((records, act) => Sample.Job(records, act).Id);

    private void Edit(int id, Action<Job> edit) => shop.Do((records, _) =>
    {
        edit(Whole(records, id));
        return id;
    });

    private List<T> Read<T>(int id, Func<Job, IEnumerable<T>> read)
    {
        using var records = shop.Open();
        return [.. read(Whole(records, id))];
    }

    private static Job Whole(RecordsContext records, int id) => records.Jobs
        .Include(job => job.CutOrder).Include(job => job.Asks).Include(job => job.People).Single(job => job.Id == id);
}
