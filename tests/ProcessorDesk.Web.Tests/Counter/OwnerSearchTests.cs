using ProcessorDesk.Records;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Counter;

public sealed class OwnerSearchTests(CounterShop shop) : IClassFixture<CounterShop>
{
    [Theory]
    [InlineData("brandt")]
    [InlineData("ada")]
    [InlineData("0142")]
    [InlineData("555-0142")]
    public async Task Any_part_of_a_name_or_phone_finds_and_one_alone_is_chosen(string typed)
    {
        using var desk = await shop.SignIn(StaffRole.Clerk);
        var page = await desk.Open("/Counter/DropOff");

        page = await page.Send("Find owner", ("Input.Owner.Search", typed), ("Input.Animals[0].Tag", "KEEP-1"));

        page.Expect("Ada Brandt", "(608) 555-0142", "14 Mill Road");
        Assert.Equal("KEEP-1", page.Form("Take it in").Value("Input.Animals[0].Tag"));
    }

    [Fact]
    public async Task Several_are_listed_and_the_one_picked_carries_the_job()
    {
        using var desk = await shop.SignIn(StaffRole.Clerk);
        var page = await desk.Open("/Counter/DropOff");

        page = await page.Send("Find owner", ("Input.Owner.Search", "cole"));
        page.Expect("Ben Cole", "Benita Cole");
        page = await page.Press("Benita Cole");
        page = await page.Send("Take it in", ("Input.Animals[0].Tag", "BC-1"), ("Input.Animals[0].State", "Whole"));

        page.Expect("is taken in", "Benita Cole");
        Assert.Equal(shop.OwnerId("Benita Cole"), shop.Read(records => records.Jobs.OrderBy(job => job.Id).Last().OwnerId));
        Assert.Equal(1, shop.Read(records => records.Owners.Count(owner => owner.Name == "Benita Cole")));
    }

    [Fact]
    public async Task Enter_in_the_search_finds_and_saves_nothing()
    {
        using var desk = await shop.SignIn(StaffRole.Clerk);
        var page = await desk.Open("/Counter/DropOff");
        var before = shop.Jobs;

        page = await page.Send("Enter", ("Input.Owner.Search", "cole"));

        page.Expect("Ben Cole", "Benita Cole");
        Assert.Empty(page.Problems);
        Assert.Equal(before, shop.Jobs);
    }

    [Fact]
    public async Task Nobody_found_begins_a_new_owner_with_what_was_typed()
    {
        using var desk = await shop.SignIn(StaffRole.Clerk);
        var page = await desk.Open("/Counter/DropOff");

        page = await page.Send("Find owner", ("Input.Owner.Search", "Wilhelmina Zorn"));

        page.Expect("Nobody by “Wilhelmina Zorn” yet");
        Assert.Equal("Wilhelmina Zorn", page.Form("Take it in").Value("Input.Owner.Name"));
    }

    [Fact]
    public async Task The_live_list_answers_with_the_owners_alone()
    {
        using var desk = await shop.SignIn(StaffRole.Clerk);
        var page = await desk.Open("/Counter/DropOff");
        page.Form("Take it in").Fill("Input.Owner.Search", "cole");
        var request = page.Form("Take it in").Submission(page.Button("Find owner"));
        request.RequestUri = new Uri(shop.Address, "/Counter/DropOff?handler=Owners");
        request.Headers.Add("X-Desk-Live", "1");

        var list = await desk.Ask(request);

        list.Expect("Ben Cole", "Benita Cole");
        Assert.Null(list.Document.QuerySelector("header"));
    }
}
