using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records.Tests.Cast;
using Xunit;

namespace ProcessorDesk.Records.Tests.Jobs;

public sealed class JobPersonQueriesTests : IClassFixture<ShopFile>
{
    private readonly ShopFile _shop;
    private readonly int _job;

    public JobPersonQueriesTests(ShopFile shop)
    {
        _shop = shop;
        _job = shop.Do((records, act) =>
        {
            var job = Sample.Job(records, act);
            job.PutPeople([new(PersonRole.Hunter, "Zdeněk Álvarez", "(555) 014-7788", null), new(PersonRole.Payer, "Quill & Sons", null, null)]);
            records.SaveChanges();
            return job.Id;
        });
    }

    [Theory]
    [InlineData("alvarez", "Zdeněk Álvarez")]
    [InlineData("dene alva", "Zdeněk Álvarez")]
    [InlineData("QUILL", "Quill & Sons")]
    [InlineData("014-77", "Zdeněk Álvarez")]
    [InlineData("+1 555 014 7788", "Zdeněk Álvarez")]
    public void Somebody_around_a_job_is_found_by_any_part_of_name_or_phone(string typed, string name) =>
        Assert.Equal([name], Find(typed, _job));

    [Theory]
    [InlineData("alvarez quill")]
    [InlineData("qu")]
    [InlineData("")]
    [InlineData("%")]
    [InlineData("quill\" OR \"nobody")]
    public void A_wrong_or_short_word_finds_nobody(string typed) => Assert.Empty(Find(typed, _job));

    [Fact]
    public void Who_was_replaced_is_found_no_more()
    {
        _shop.Do((records, _) =>
        {
            var job = records.Jobs.Include(one => one.People).Single(one => one.Id == _job);
            job.PutPeople([new(PersonRole.Hunter, "Bertil Novak", "555 0199", null)]);
            return job;
        });

        Assert.Empty(Find("alvarez", _job));
        Assert.Empty(Find("quill", _job));
        Assert.Equal(["Bertil Novak"], Find("5550199", _job));
    }

    private List<string> Find(string typed, int job)
    {
        using var records = _shop.Open();
        return records.JobPeople.Found(typed).Where(person => person.JobId == job).Select(person => person.Name).ToList();
    }
}
