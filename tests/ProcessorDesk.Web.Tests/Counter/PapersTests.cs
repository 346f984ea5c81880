using System.Globalization;
using System.Text;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Counter;

public sealed class PapersTests(CounterShop shop) : IClassFixture<CounterShop>
{
    [Theory]
    [InlineData("Tickets", 3)]
    [InlineData("Claim", 1)]
    public async Task A_job_prints_as_one_pdf(string paper, int leastPages)
    {
        using var desk = await shop.SignIn(StaffRole.Clerk);
        var page = await desk.Open("/Counter/DropOff");
        await page.Send("Take it in",
            ("Input.Owner.Name", $"Paper {paper}"), ("Input.Owner.Phone", "715 555 0123"), ("Input.Animals[0].Tag", "P-1"),
            ("Input.Animals[0].State", "FieldDressed"), ("Input.Animals[0].Weight", "100"), ("Input.Animals[0].Parts", "Antlers"), ("Input.Animals[0].Parts", "Cape"));
        var id = shop.Read(records => records.Jobs.Single(job => job.Owner.Name == $"Paper {paper}").Id);

        using var answer = await desk.Client.GetAsync(new Uri($"/Counter/{paper}/{id.ToString(CultureInfo.InvariantCulture)}", UriKind.Relative));
        var bytes = await answer.Content.ReadAsByteArrayAsync();

        Assert.Equal("application/pdf", answer.Content.Headers.ContentType?.MediaType);
        Assert.Equal("%PDF-", Encoding.ASCII.GetString(bytes, 0, 5));
        Assert.True(Encoding.Latin1.GetString(bytes).Split("/Type/Page/", StringSplitOptions.None).Length - 1 >= leastPages
            || Encoding.Latin1.GetString(bytes).Split("/MediaBox", StringSplitOptions.None).Length - 1 >= leastPages);
    }

    [Theory]
    [InlineData("/Counter/Tickets/99999")]
    [InlineData("/Counter/Claim/99999")]
    [InlineData("/Counter/Order/99999")]
    [InlineData("/Counter/Animal/99999")]
    [InlineData("/Counter/Shares/99999")]
    [InlineData("/Counter/Owner/99999")]
    [InlineData("/Counter/TakenIn/99999")]
    [InlineData("/Counter/OwnersPage/99999")]
    public async Task What_is_not_there_is_said_to_be_not_there(string address)
    {
        using var desk = await shop.SignIn(StaffRole.Clerk);

        Assert.Equal(System.Net.HttpStatusCode.NotFound, (await desk.Open(address)).Status);
    }

    [Fact]
    public async Task The_start_page_lists_what_is_to_complete_and_what_came_in_last()
    {
        using var desk = await shop.SignIn(StaffRole.Clerk);
        var page = await desk.Open("/Counter/DropOff");
        await page.Send("Ticket now, details after", ("Input.Owner.Name", "Index Ida"), ("Input.Owner.Phone", "715 555 0123"));

        page = await desk.Open("/Counter");

        page.Expect("To complete", "Index Ida", "Complete the order", "Put the tag in: White-tail deer", "Came in last", "On hold: tag missing");
    }

    [Fact]
    public async Task An_owner_is_put_right_and_a_stale_form_shows_both()
    {
        using var one = await shop.SignIn(StaffRole.Clerk);
        using var two = await shop.SignIn(StaffRole.Manager);
        var address = $"/Counter/Owner/{shop.OwnerId("Ben Cole")}";
        var mine = await one.Open(address);
        (await (await two.Open(address)).Send("Save the owner", ("Input.Address", "1 New Street"))).Expect("The owner is saved.");

        var both = await mine.Send("Save the owner", ("Input.Email", "ben@example.test"));
        both.Expect("What somebody else saved meanwhile", "1 New Street");
        var saved = await both.Send("Save the owner", ("Input.Address", "1 New Street"));

        saved.Expect("The owner is saved.");
        var owner = shop.Read(records => records.Owners.Single(owner => owner.Name == "Ben Cole"));
        Assert.Equal(("1 New Street", "ben@example.test"), (owner.PostalAddress, owner.Email));
    }
}
