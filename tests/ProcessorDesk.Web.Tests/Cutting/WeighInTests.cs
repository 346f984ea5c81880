using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Cutting;

public sealed class WeighInTests(ShopUnderTest shop) : IClassFixture<ShopUnderTest>
{
    [Fact]
    public async Task Lug_and_gross_book_the_net_and_open_a_filling_with_its_ticket()
    {
        var (job, animals) = shop.TakeIn("Ada Fenn", 128.5m);
        var lug = shop.AddLug(3.10m);
        shop.StartCutting(job);
        using var desk = await shop.SignIn(StaffRole.Cutter, "Cutting");

        var page = await (await desk.Open($"/Cutting/WeighIn/{job}")).Send("Save the weight", ("Input.Lug", lug), ("Input.Gross", "34.62"));

        // 34.62 gross less 3.10 tare.
        page.Expect($"Lean trim, lug {lug}: 31.52 lb saved.", "34.62 lb less 3.10 lb");
        Assert.Equal(Weight.FromPounds(34.62m - 3.10m), shop.WeightsOf(job).Lean);
        var filling = shop.Read(records => records.Fillings.Where(one => one.JobId == job).Select(one => new { one.Id, Animals = one.Animals.Select(a => a.AnimalId).ToList() }).Single());
        Assert.Equal(animals, filling.Animals);
        Assert.Single(shop.Read(records => records.Tickets.Where(ticket => ticket.Kind == TicketKind.Filling && ticket.TargetId == filling.Id).ToList()));
    }

    [Fact]
    public async Task A_second_press_books_nothing_twice()
    {
        var (job, _) = shop.TakeIn("Ada Fenn", 128.5m);
        var lug = shop.AddLug(3.10m);
        shop.StartCutting(job);
        using var desk = await shop.SignIn(StaffRole.Cutter, "Cutting");
        var form = await desk.Open($"/Cutting/WeighIn/{job}");

        await form.Send("Save the weight", ("Input.Lug", lug), ("Input.Gross", "20"));
        var again = await form.Press("Save the weight");

        Assert.Equal(Weight.FromPounds(20m - 3.10m), shop.WeightsOf(job).Lean);
        // What the first press put into the lug is not held against the second.
        Assert.Empty(again.Problems);
        again.Expect("This weight was saved already");
    }

    [Fact]
    public async Task A_press_without_script_shows_the_net_and_keeps_what_was_typed()
    {
        var (job, _) = shop.TakeIn("Ada Fenn", 128.5m);
        var lug = shop.AddLug(2.86m);
        shop.StartCutting(job);
        using var desk = await shop.SignIn(StaffRole.Cutter, "Cutting");

        var page = await (await desk.Open($"/Cutting/WeighIn/{job}")).Send("Show the net", ("Input.Lug", lug), ("Input.Gross", "22 lb 1 oz"));

        // 22 1/16 lb is 22.06 on a scale of 0.01 lb; less 2.86.
        Assert.Contains("19.20 lb", page.Document.QuerySelector("#net")!.TextContent, StringComparison.Ordinal);
        Assert.Equal("22 lb 1 oz", page.Form("Save the weight").Value("Input.Gross"));
        Assert.Empty(page.Problems);
        Assert.Equal(Weight.Zero, shop.WeightsOf(job).Lean);
    }

    [Theory]
    [InlineData("2.50", "is less than the empty lug's 3.10 lb")]
    [InlineData("131.70", "is more than the animal's 128.50 lb")]
    [InlineData("3.10", "Nothing lies on the scale")]
    [InlineData("twelve", "does not read as a weight")]
    [InlineData("", "Type a weight")]
    public async Task A_weight_that_cannot_be_is_refused_beside_its_field(string gross, string words)
    {
        var (job, _) = shop.TakeIn("Ada Fenn", 128.5m);
        var lug = shop.AddLug(3.10m);
        shop.StartCutting(job);
        using var desk = await shop.SignIn(StaffRole.Cutter, "Cutting");

        var page = await (await desk.Open($"/Cutting/WeighIn/{job}")).Send("Save the weight", ("Input.Lug", lug), ("Input.Gross", gross));

        Assert.Contains(words, Assert.Single(page.Problems), StringComparison.Ordinal);
        Assert.Contains(words, page.Document.QuerySelector("#Input_Gross-problem")!.TextContent, StringComparison.Ordinal);
        Assert.Equal((lug, gross), (page.Form("Save the weight").Value("Input.Lug"), page.Form("Save the weight").Value("Input.Gross")));
    }

    [Fact]
    public async Task A_figure_ten_times_the_last_is_asked_about_once()
    {
        var (job, _) = shop.TakeIn("Ada Fenn", 128.5m);
        var (first, second) = (shop.AddLug(3.00m), shop.AddLug(3.00m));
        shop.StartCutting(job);
        using var desk = await shop.SignIn(StaffRole.Cutter, "Cutting");
        await (await desk.Open($"/Cutting/WeighIn/{job}")).Send("Save the weight", ("Input.Lug", first), ("Input.Gross", "8.00"));

        var asked = await (await desk.Open($"/Cutting/WeighIn/{job}")).Send("Save the weight", ("Input.Lug", second), ("Input.Gross", "53.00"));

        Assert.Contains("50.00 lb net is many times the last one, 5.00 lb", Assert.Single(asked.Problems), StringComparison.Ordinal);
        var other = await asked.Send("Save the weight", ("Input.Gross", "54.00"), ("Input.Sure", "true"));
        Assert.Contains("51.00 lb net is many times", Assert.Single(other.Problems), StringComparison.Ordinal);
        (await other.Send("Save the weight", ("Input.Sure", "true"))).Expect("51.00 lb saved.");
    }

    [Fact]
    public async Task A_lug_open_for_another_job_is_refused_with_whose_it_is()
    {
        var (job, _) = shop.TakeIn("Ada Fenn", 128.5m);
        var (other, _) = shop.TakeIn("Bo Vance", 96m);
        var lug = shop.AddLug(3.10m);
        shop.StartCutting(job);
        shop.StartCutting(other);
        using var desk = await shop.SignIn(StaffRole.Cutter, "Cutting");
        await (await desk.Open($"/Cutting/WeighIn/{job}")).Send("Save the weight", ("Input.Lug", lug), ("Input.Gross", "20"));

        var page = await (await desk.Open($"/Cutting/WeighIn/{other}")).Send("Save the weight", ("Input.Lug", lug), ("Input.Gross", "21"));

        var number = shop.Read(records => records.Jobs.Single(one => one.Id == job).Number);
        Assert.Equal([$"Lug {lug} holds meat of Ada Fenn, job {number}. Take another lug, or empty that one first."], page.Problems);
        Assert.Equal(Weight.Zero, shop.WeightsOf(other).Lean);
    }

    [Fact]
    public async Task Weighing_a_lug_again_strikes_the_first_and_says_why()
    {
        var (job, _) = shop.TakeIn("Ada Fenn", 128.5m);
        var lug = shop.AddLug(3.10m);
        shop.StartCutting(job);
        using var desk = await shop.SignIn(StaffRole.Cutter, "Cutting");
        await (await desk.Open($"/Cutting/WeighIn/{job}")).Send("Save the weight", ("Input.Lug", lug), ("Input.Gross", "20.10"));

        var asked = await (await desk.Open($"/Cutting/WeighIn/{job}")).Send("Save the weight", ("Input.Lug", lug), ("Input.Gross", "30.10"));
        Assert.Contains($"Lug {lug} was weighed already: 17.00 lb", Assert.Single(asked.Problems), StringComparison.Ordinal);
        var page = await asked.Send("Save the weight", ("Input.Again", "true"), ("Input.AgainBecause", "more came in"));

        page.Expect("27.00 lb saved.", "weighed again: more came in");
        Assert.Equal(Weight.FromPounds(30.10m - 3.10m), shop.WeightsOf(job).Lean);
        Assert.Equal(1, shop.Read(records => records.Fillings.Count(one => one.JobId == job)));
    }

    [Fact]
    public async Task A_scan_of_the_lugs_ticket_does_for_its_number()
    {
        var (job, _) = shop.TakeIn("Ada Fenn", 128.5m);
        var lug = shop.AddLug(3.10m);
        shop.StartCutting(job);
        using var desk = await shop.SignIn(StaffRole.Cutter, "Cutting");
        var page = await (await desk.Open($"/Cutting/WeighIn/{job}")).Send("Save the weight", ("Input.Lug", lug), ("Input.Gross", "20.10"));
        var code = shop.Read(records => records.Tickets.Where(ticket => ticket.Kind == TicketKind.Filling).OrderBy(ticket => ticket.Number).Last().Code.Print());

        page = await page.Send("Show the net", ("Input.Lug", code), ("Input.Gross", "30.10"));

        Assert.Contains($"Lug {lug}, open for this job; tare 3.10 lb is taken off", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task With_two_deer_a_new_lug_asks_whose_meat_it_is()
    {
        var (job, animals) = shop.TakeIn("Ada Fenn", 128.5m, 96m);
        var lug = shop.AddLug(3.10m);
        shop.StartCutting(job);
        using var desk = await shop.SignIn(StaffRole.Cutter, "Cutting");

        var page = await (await desk.Open($"/Cutting/WeighIn/{job}")).Send("Save the weight", ("Input.Lug", lug), ("Input.Gross", "20"));
        Assert.Equal(["Every lug names its animals. Choose whose meat is in it."], page.Problems);
        await page.Send("Save the weight", ("Input.AnimalIds", $"{animals[1]}"));

        Assert.Equal([animals[1]], shop.Read(records => records.Fillings.Where(one => one.JobId == job).SelectMany(one => one.Animals).Select(one => one.AnimalId).ToList()));
    }

    [Fact]
    public async Task Packs_are_weighed_without_a_lug_and_counted()
    {
        var (job, _) = shop.TakeIn("Ada Fenn", 128.5m);
        shop.StartCutting(job);
        using var desk = await shop.SignIn(StaffRole.Cutter, "Cutting");
        var page = await desk.Open($"/Cutting/WeighIn/{job}");

        page = await page.Send("Save the weight", ("Input.Kind", "CutPack"), ("Input.Gross", "5.25"), ("Input.Packs", "6"), ("Input.Cut", "Backstrap (loin): Steaks"));

        page.Expect("Cuts, packed, 6 packs, Backstrap (loin): Steaks");
        Assert.Equal(Weight.FromPounds(5.25m), shop.WeightsOf(job).Cuts);
        Assert.Equal(6, shop.Read(records => records.WeighIns.Single(one => one.JobId == job).Packs));
    }

    [Fact]
    public async Task What_is_thrown_out_says_why_and_only_borrows_its_lug()
    {
        var (job, _) = shop.TakeIn("Ada Fenn", 128.5m);
        var lug = shop.AddLug(3.10m);
        shop.StartCutting(job);
        using var desk = await shop.SignIn(StaffRole.Cutter, "Cutting");

        var page = await (await desk.Open($"/Cutting/WeighIn/{job}")).Send("Save the weight", ("Input.Kind", "Discard"), ("Input.Lug", lug), ("Input.Gross", "4.60"));
        Assert.Equal(["Say why it is thrown out, for example: bloodshot."], page.Problems);
        await page.Send("Save the weight", ("Input.Why", "bloodshot shoulder"));

        Assert.Equal(Weight.FromPounds(4.60m - 3.10m), shop.WeightsOf(job).Discard);
        Assert.Equal(0, shop.Read(records => records.Fillings.Count(one => one.JobId == job)));
    }

    [Fact]
    public async Task Nothing_is_weighed_before_the_first_knife()
    {
        var (job, _) = shop.TakeIn("Ada Fenn", 128.5m);
        using var desk = await shop.SignIn(StaffRole.Cutter, "Cutting");

        var page = await desk.Open($"/Cutting/WeighIn/{job}");

        Assert.Equal($"/Cutting/Sheet/{job}", page.Path);
    }
}
