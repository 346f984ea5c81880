using System.Text;
using AngleSharp.Dom;
using Microsoft.Extensions.DependencyInjection;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Door;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.OwnersPage;

/// <summary>The page of every job of the demo, whatever its state.</summary>
public sealed class EveryOwnersPageTests(DemoUnderTest shop) : IClassFixture<DemoUnderTest>
{
    /// <summary>What a page may weigh over a bad telephone connection, in bytes.</summary>
    private const int Heaviest = 60_000;

    [Fact]
    public async Task Every_job_has_a_page_of_its_own_that_is_light_and_names_nobody()
    {
        using var home = shop.Stranger();
        var jobs = Jobs();
        var people = shop.Read(records => records.Owners.Select(owner => owner.Name)
            .Concat(records.JobPeople.Select(person => person.Name)).Concat(records.Staff.Select(staff => staff.Name)).ToList());
        var numbers = shop.Read(records => records.Owners.Select(owner => owner.Phone).Concat(records.Owners.Select(owner => owner.PostalAddress)).ToList())
            .OfType<string>().Where(text => text != "").ToList();
        var faults = new List<string>();

        foreach (var (number, link, _) in jobs)
        {
            var html = await home.Client.GetStringAsync(new Uri(link, UriKind.Relative));
            if (Encoding.UTF8.GetByteCount(html) > Heaviest)
                faults.Add($"{number} weighs {Encoding.UTF8.GetByteCount(html)} bytes");
            if (!html.Contains($"Job {number}", StringComparison.Ordinal) || !html.Contains("(262) 555-0100", StringComparison.Ordinal))
                faults.Add($"{number} says neither which job nor whom to call");
            faults.AddRange(people.Concat(numbers).Where(word => html.Contains(word, StringComparison.OrdinalIgnoreCase)).Select(word => $"{number} names {word}"));
        }

        Assert.Empty(faults);
        Assert.True(people.Count >= 10 && numbers.Count >= 10, "There was nobody to be named.");
        JobStage[] seen = [.. jobs.Select(job => job.Stage).Distinct().Order()];
        Assert.Equal([.. Enum.GetValues<JobStage>().Order()], seen);
    }

    [Fact]
    public async Task The_pictures_figures_are_the_tables()
    {
        using var home = shop.Stranger();
        var drawn = 0;

        foreach (var (_, link, _) in Jobs())
        {
            var page = await home.Open(link);
            if (page.Document.QuerySelector("#weight") is not { } head)
                continue;
            var picture = head.ParentElement!.QuerySelectorAll("svg.way text").Select(text => text.TextContent).ToList();
            var table = head.ParentElement!.QuerySelectorAll("tbody th, tbody td").Select(cell => cell.TextContent.Trim()).ToList();
            if (picture.Count == 0)
            {
                Assert.Equal(2, table.Count);
                continue;
            }

            Assert.Equal(table, picture);
            drawn++;
        }

        Assert.True(drawn >= 10, $"Only {drawn} pictures were drawn.");
    }

    private List<(int Number, string Link, JobStage Stage)> Jobs()
    {
        var links = shop.Services.GetRequiredService<OwnerLinks>();
        return shop.Read(records => records.Jobs.ToList()).ConvertAll(job => (job.Number, "/Owner/" + links.Of(job.Number, job.LinkGeneration), job.Stage));
    }
}
