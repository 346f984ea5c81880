using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Counter;

public sealed class SharesTests(CounterShop shop) : IClassFixture<CounterShop>
{
    [Fact]
    public async Task Half_of_a_beef_goes_to_another_owner_with_a_job_of_his_own()
    {
        using var desk = await shop.SignIn(StaffRole.Clerk);
        var animal = await TakeIn(desk, "First Half");

        var page = await desk.Open($"/Counter/Shares/{animal}");
        page.Expect("All of it is shared out");
        page = await page.Send("Find owner", ("Input.Owner.Search", "brandt"));
        page = await page.Send("Save the shares", ("Input.Shares[0].Fraction", "1/2"), ("Input.Fraction", "1/2"));

        page.Expect("The other owner's job is opened", "Ada Brandt");
        Assert.StartsWith("/Counter/Order/", page.Path, StringComparison.Ordinal);
        Assert.Equal(
            [("First Half", 1, 2, Portion.Side), ("Ada Brandt", 1, 2, Portion.Side)],
            Shares(animal).Select(share => (share.Job.Owner.Name, share.Numerator, share.Denominator, share.Portion)));
        page = await page.Press("Save the order");
        page.Expect("The order is complete.");
    }

    [Fact]
    public async Task Shares_that_pass_one_are_refused_and_nothing_is_saved()
    {
        using var desk = await shop.SignIn(StaffRole.Clerk);
        var animal = await TakeIn(desk, "Too Much");
        var before = shop.Jobs;

        var page = await desk.Open($"/Counter/Shares/{animal}");
        page = await page.Send("Save the shares",
            ("Input.Shares[0].Fraction", "3/4"), ("Input.Owner.Name", "Other"), ("Input.Owner.Phone", "715 555 0000"), ("Input.Fraction", "1/2"));

        Assert.Equal(["The shares of this animal would come to 5/4. They must come to 1."], page.Problems);
        Assert.Equal("1/2", page.Form("Save the shares").Value("Input.Fraction"));
        Assert.Equal(before, shop.Jobs);
        Assert.Equal((1, 1), Shares(animal).Select(share => (share.Numerator, share.Denominator)).Single());
    }

    [Fact]
    public async Task Shares_short_of_one_are_kept_and_the_knife_waits()
    {
        using var desk = await shop.SignIn(StaffRole.Clerk);
        var animal = await TakeIn(desk, "Quarter Left");

        var page = await (await desk.Open($"/Counter/Shares/{animal}")).Send("Save the shares", ("Input.Shares[0].Fraction", "3/4"));

        page.Expect("They come to 3/4 until now");
        var job = Shares(animal).Single().JobId;
        Assert.NotEmpty(shop.Read(records => records.StoppingKnife(job)));
    }

    private List<Share> Shares(int animal) => shop.Read(records =>
        records.Shares.Include(share => share.Job).ThenInclude(job => job.Owner).Where(share => share.AnimalId == animal).OrderBy(share => share.Id).ToList());

    private async Task<int> TakeIn(Desk desk, string owner)
    {
        var page = await desk.Open("/Counter/DropOff");
        await page.Send("Take it in",
            ("Input.Owner.Name", owner), ("Input.Owner.Phone", "715 555 0123"), ("Input.Animals[0].Species", "Beef"), ("Input.Animals[0].Tag", "B-1"),
            ("Input.Animals[0].State", "Skinned"), ("Input.Animals[0].Weight", "700"));
        return shop.Read(records => records.Shares.Single(share => share.Job.Owner.Name == owner).AnimalId);
    }
}
