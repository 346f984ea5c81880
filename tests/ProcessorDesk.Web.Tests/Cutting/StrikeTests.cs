using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Cutting;

public sealed class StrikeTests(ShopUnderTest shop) : IClassFixture<ShopUnderTest>
{
    [Fact]
    public async Task A_struck_weight_leaves_every_sum_and_stays_to_be_seen()
    {
        var (desk, job, weighIn) = await Weighed("20.10");
        using var _ = desk;

        var page = await (await desk.Open($"/Cutting/Strike/{weighIn}")).Send("Strike it out", ("Input.Because", "Typed wrong"));

        Assert.Equal($"/Cutting/Sheet/{job}", page.Path);
        page.Expect("17.00 lb is struck out: Typed wrong.", "Struck out by");
        Assert.Equal("17.00 lb", page.Document.QuerySelector("tr.struck s")!.TextContent);
        Assert.Equal(Weight.Zero, shop.WeightsOf(job).Lean);
    }

    [Fact]
    public async Task A_strike_needs_its_reason()
    {
        var (desk, job, weighIn) = await Weighed("20.10");
        using var _ = desk;

        var page = await (await desk.Open($"/Cutting/Strike/{weighIn}")).Send("Strike it out", ("Input.Because", "other"));

        Assert.Equal(["Choose or type why the weight is wrong."], page.Problems);
        Assert.Equal(Weight.FromPounds(20.10m - 3.10m), shop.WeightsOf(job).Lean);
    }

    [Fact]
    public async Task Struck_once_is_struck_for_good()
    {
        var (desk, _, weighIn) = await Weighed("20.10");
        using var __ = desk;
        var form = await desk.Open($"/Cutting/Strike/{weighIn}");
        await (await desk.Open($"/Cutting/Strike/{weighIn}")).Send("Strike it out", ("Input.Because", "Wrong lug"));

        var late = await form.Send("Strike it out", ("Input.Because", "Typed wrong"));

        Assert.Equal(["This weight was struck out before."], late.Problems);
        late.Expect("Wrong lug");
    }

    [Fact]
    public async Task The_lug_of_the_only_weight_can_be_freed_with_it()
    {
        var (desk, job, weighIn) = await Weighed("20.10");
        using var _ = desk;

        await (await desk.Open($"/Cutting/Strike/{weighIn}")).Send("Strike it out", ("Input.Because", "Wrong animal or job"), ("Input.Empties", "true"));

        Assert.NotNull(shop.Read(records => records.Fillings.Single(filling => filling.JobId == job).EmptiedAt));
    }

    [Fact]
    public async Task Lean_that_a_split_was_agreed_on_is_not_struck()
    {
        var (desk, job, weighIn) = await Weighed("20.10");
        using var _ = desk;
        shop.Write((records, act) =>
        {
            records.Jobs.Single(one => one.Id == job).AgreeSplit(act.Now);
            return Outcome.Done();
        });

        var page = await (await desk.Open($"/Cutting/Strike/{weighIn}")).Send("Strike it out", ("Input.Because", "Typed wrong"));

        Assert.Equal(["The split of this job is agreed on this weight. Withdraw the split at the grind first."], page.Problems);
        Assert.Equal(Weight.FromPounds(20.10m - 3.10m), shop.WeightsOf(job).Lean);
    }

    private async Task<(Desk Desk, int Job, int WeighIn)> Weighed(string gross)
    {
        var (job, _) = shop.TakeIn("Ada Fenn", 128.5m);
        var lug = shop.AddLug(3.10m);
        shop.StartCutting(job);
        var desk = await shop.SignIn(StaffRole.Cutter, "Cutting");
        await (await desk.Open($"/Cutting/WeighIn/{job}")).Send("Save the weight", ("Input.Lug", lug), ("Input.Gross", gross));
        return (desk, job, shop.Read(records => records.WeighIns.Single(one => one.JobId == job).Id));
    }
}
