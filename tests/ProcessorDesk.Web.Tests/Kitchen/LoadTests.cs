using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Kitchen;

/// <summary>Parts per million are worked beside each: grams × 6.25 % ÷ (pounds × 453.59237). The limit is 156.25 ppm (9 CFR 424.21(c)).</summary>
public sealed class LoadTests(KitchenFloor shop) : IClassFixture<KitchenFloor>
{
    [Fact]
    public async Task Meat_is_drawn_by_the_number_on_the_lug()
    {
        var (job, load) = Planned("Abe Lund");
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");
        var page = await desk.Open($"/Kitchen/Load/{load}");
        page.Expect("Lean for this load", "12.50 lb", $"lug {shop.Lugs(job)[0]}, 31.52 lb");

        var drawn = await page.Send("Save the draw", ("Draw.Lug", shop.Lugs(job)[0]), ("Draw.Weighed", "8"));

        drawn.Expect($"8.00 lb of lug {shop.Lugs(job)[0]} is in load 1.", "4.50 lb", "23.52 lb"); // 12.50 − 8.00; 31.52 − 8.00
    }

    [Fact]
    public async Task A_scan_of_the_lugs_ticket_does_as_well_and_an_empty_lug_is_free()
    {
        var (job, load) = Planned("Bea Todd");
        var code = shop.Read(records =>
        {
            var filling = records.Fillings.Where(one => one.JobId == job).OrderBy(one => one.Id).Select(one => one.Id).Last();
            return records.Tickets.Where(ticket => ticket.Kind == TicketKind.Filling && ticket.TargetId == filling).Select(ticket => (long?)ticket.Number).FirstOrDefault();
        }) ?? Ticket(job);
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");

        var drawn = await (await desk.Open($"/Kitchen/Load/{load}"))
            .Send("Save the draw", ("Draw.Lug", Trade.Tickets.TicketCode.FromNumber(code).Print()), ("Draw.Weighed", "12.50"), ("Draw.Empties", "true"));

        drawn.Expect("is free.");
        Assert.NotNull(shop.Read(records => records.Fillings.Where(one => one.JobId == job).OrderBy(one => one.Id).Last().EmptiedAt));
    }

    [Fact]
    public async Task Another_owners_lug_is_refused_with_what_was_typed_then_booked_as_already_in()
    {
        var (_, load) = Planned("Cal Nash");
        var other = shop.Job("Dan Frye");
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");

        var refused = await (await desk.Open($"/Kitchen/Load/{load}")).Send("Save the draw", ("Draw.Lug", shop.Lugs(other)[0]), ("Draw.Weighed", "3.1 lb"));
        refused.Expect($"is another owner's: nothing of job {shop.Number(other)} is planned for this batch. Set it aside.", "Is it in already?");
        Assert.Equal("3.1 lb", refused.Form("Save the draw").Value("Draw.Weighed"));
        var asked = await refused.Press("It is already in");
        Assert.Contains("Say how it came to be in.", asked.Problems);
        var booked = await asked.Send("It is already in", ("Draw.AlreadyInBecause", "two lugs stood side by side"));

        booked.Expect("The batch is on hold.", "On hold: wrong meat or amount is in", "No place in this batch", "Was in already: two lugs stood side by side");
        var batch = shop.Read(records => records.Loads.Single(one => one.Id == load).BatchId);
        (await desk.Open($"/Kitchen/Batch/{batch}")).Expect("Whose meat is touched", "Cal Nash", "Dan Frye", "no place in this batch", "What can be done", "Only the manager releases it.");
    }

    [Fact]
    public async Task A_lug_that_is_not_there_and_a_weight_that_is_none_are_said_beside_their_fields()
    {
        var (_, load) = Planned("Eve Holt");
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");

        var refused = await (await desk.Open($"/Kitchen/Load/{load}")).Send("Save the draw", ("Draw.Lug", "987"), ("Draw.Weighed", "much"));

        refused.Expect("No meat is in a lug 987.", "does not read as a weight");
        Assert.Equal("987", refused.Form("Save the draw").Value("Draw.Lug"));
    }

    [Fact]
    public async Task A_draw_is_struck_out_with_a_reason_and_stays_to_be_seen()
    {
        var (job, load) = Planned("Flo Gray");
        shop.Draw(load, job, 1.25m);
        var draw = shop.Read(records => records.Draws.Single(one => one.LoadId == load).Id);
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");
        var page = await desk.Open($"/Kitchen/Load/{load}");

        Assert.Contains("Say why it is struck out.", (await page.Send("Strike it out", ("Draw.StrikeId", $"{draw}"))).Problems);
        var struck = await page.Send("Strike it out", ("Draw.StrikeId", $"{draw}"), ("Draw.StrikeBecause", "typed 1.25 for 12.50"));

        struck.Expect("Struck out. The meat is in its lug again.", "typed 1.25 for 12.50");
        Assert.Equal(Trade.Weight.Zero, shop.Read(records => records.Loads.Include(one => one.Draws).Single(one => one.Id == load).Drawn));
    }

    [Fact]
    public async Task The_amounts_stand_on_the_meat_as_weighed_and_the_load_is_mixed()
    {
        var (job, load) = Planned("Gus Bell");
        shop.Draw(load, job, 12.50m);
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");
        var page = await desk.Open($"/Kitchen/Load/{load}");
        // 12.50 + 5.36 planned = 17.86 lb; seasoning 3.75 % of it = 303.8 g; cure 1/400 of it = 20.25 g, down to 20.2.
        page.Expect("17.86 lb", "303.8 g", "20.2 g", "156.25 ppm nitrite (1/4 oz per 100 lb)", "9 CFR 424.21(c)");

        var worked = await page.Send("Work the amounts out", ("Mix.Fat", "5.00"), ("Mix.Lines[1].Weighed", "19.8"), ("Mix.Lines[1].Again", "19.8"));
        worked.Expect("17.50 lb", "297.7 g", "19.8 g", "155.90 ppm"); // 17.50 lb × 3.75 %; ÷ 400 = 19.84 g; 19.8 × 6.25 % ÷ 17.50 lb
        Assert.Equal("5.00", worked.Form("Mixed").Value("Mix.Fat"));
        var asked = await worked.Press("Mixed");
        Assert.Contains(asked.Problems, problem => problem.StartsWith("Tick this, or type what was weighed in of seasoning", StringComparison.Ordinal));
        var mixed = await asked.Send("Mixed", ("Mix.AsAsked", "true"));

        mixed.Expect("Load 1 is mixed.", "Draw the meat for load 2", "155.90 ppm");
        var kept = shop.Read(records => records.LoadIngredients.Where(line => line.LoadId == load).OrderBy(line => line.Position).Select(line => line.Weighed).ToList());
        Assert.Equal([297.7m, 19.8m], kept.Select(weight => weight.Grams));
        (await desk.Open($"/Kitchen/Load/{load}")).Expect("As it was mixed", "19.8 g", "155.90 ppm");
    }

    [Fact]
    public async Task An_amount_typed_in_ounces_is_kept_as_it_was_keyed()
    {
        var (job, load) = Planned("Hope Vail");
        shop.Draw(load, job, 12.50m);
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");

        // 0.71 oz = 20.128 g; × 6.25 % ÷ 17.86 lb = 155.29 ppm
        var mixed = await (await desk.Open($"/Kitchen/Load/{load}")).Send("Mixed", ("Mix.Fat", "5.36"), ("Mix.Lines[1].Weighed", "0.71 oz"), ("Mix.Lines[1].Again", "0.71 oz"), ("Mix.AsAsked", "true"));

        mixed.Expect("Load 1 is mixed.", "155.29 ppm");
        Assert.Equal(Trade.WeightUnit.Ounce, shop.Read(records => records.LoadIngredients.Single(line => line.LoadId == load && line.Position == 1).KeyedIn));
        (await desk.Open($"/Kitchen/Load/{load}")).Expect("0.71 oz");
    }

    [Fact]
    public async Task Over_the_limit_is_refused_with_the_arithmetic_and_nobody_overrides_it()
    {
        var (job, load) = Planned("Ivy Sloan");
        shop.Draw(load, job, 12.50m);
        using var desk = await shop.SignIn(StaffRole.Manager, "Kitchen");

        var refused = await (await desk.Open($"/Kitchen/Load/{load}")).Send("Mixed", ("Mix.Fat", "5.36"), ("Mix.Lines[1].Weighed", "20.3"), ("Mix.Lines[1].Again", "20.3"), ("Mix.AsAsked", "true"));

        // 20.3 × 0.0625 ÷ (17.86 × 453.59237) = 156.61 ppm
        refused.Expect("Too much nitrite: 156.61 ppm, and the most is 156.25 ppm (1/4 oz per 100 lb)", "Does not meet", "20.3 g × 6.25 % = 1.2688 g nitrite", "Is it mixed already?");
        Assert.Equal("20.3", refused.Form("Mixed").Value("Mix.Lines[1].Weighed"));
        Assert.Null(shop.Read(records => records.Loads.Single(one => one.Id == load).MixedAt));
    }

    [Fact]
    public async Task No_cure_is_refused_and_a_blank_is_not_taken_for_none()
    {
        var (job, load) = Planned("Jeb Trent");
        shop.Draw(load, job, 12.50m);
        using var desk = await shop.SignIn(StaffRole.Manager, "Kitchen");
        var page = await desk.Open($"/Kitchen/Load/{load}");

        Assert.Contains((await page.Send("Mixed", ("Mix.Fat", "5.36"), ("Mix.AsAsked", "true"))).Problems, problem => problem.StartsWith("Weigh the pink curing salt", StringComparison.Ordinal));
        Assert.Contains((await page.Send("Mixed", ("Mix.Fat", "5.36"), ("Mix.Lines[1].Weighed", "0"), ("Mix.Lines[1].Again", "0"), ("Mix.AsAsked", "true"))).Problems, problem => problem.StartsWith("There is no cure in this mix.", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Less_than_the_minimum_is_the_managers_to_accept()
    {
        var (job, load) = Planned("Kim Ash");
        shop.Draw(load, job, 12.50m);
        (string, string)[] typed = [("Mix.Fat", "5.36"), ("Mix.Lines[1].Weighed", "15"), ("Mix.Lines[1].Again", "15"), ("Mix.AsAsked", "true")]; // 15 × 6.25 % ÷ 17.86 lb = 115.7 ppm, under 120
        using var kitchen = await shop.SignIn(StaffRole.Kitchen, "Kitchen");
        using var manager = await shop.SignIn(StaffRole.Manager, "Kitchen");

        var low = await (await kitchen.Open($"/Kitchen/Load/{load}")).Send("Mixed", typed);
        low.Expect("Too little nitrite for product that is kept cold", "Only the manager accepts it");
        (await low.Send("Mixed", ("Mix.LowCureBecause", "less salt"))).Expect("Only the manager accepts less cure than the minimum.");
        var accepted = await (await (await manager.Open($"/Kitchen/Load/{load}")).Send("Mixed", typed)).Send("Mixed", ("Mix.LowCureBecause", "eaten within the week"));

        accepted.Expect("Load 1 is mixed.", "Less cure than the minimum, accepted: eaten within the week");
    }

    [Fact]
    public async Task What_is_mixed_already_is_booked_with_a_hold()
    {
        var (job, load) = Planned("Lou Wynn");
        shop.Draw(load, job, 12.50m);
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");

        var refused = await (await desk.Open($"/Kitchen/Load/{load}")).Send("Mixed", ("Mix.Fat", "5.36"), ("Mix.Lines[1].Weighed", "40.4"), ("Mix.Lines[1].Again", "40.4"), ("Mix.AsAsked", "true"));
        Assert.Contains("Say how it came to be mixed.", (await refused.Press("It is already mixed")).Problems);
        var booked = await refused.Send("It is already mixed", ("Mix.AlreadyInBecause", "weighed for both loads at once"));

        booked.Expect("The batch is on hold.", "Mixed before it was checked: weighed for both loads at once", "Over the limit, or none");
    }

    [Fact]
    public async Task A_pooled_load_asks_about_an_owner_of_whom_nothing_is_in()
    {
        var one = shop.Job("May Ives", Pooling.Pooled);
        var two = shop.Job("Ned Ives", Pooling.Pooled);
        var (_, loads) = shop.Plan("Hot sausage", one, two); // 15.00 lb green each, in two loads of 15.00: one owner in each
        shop.Do((records, act) => records.TakeOffPlan(records.Loads.Single(load => load.Id == loads[0]).BatchId, "one load is enough", act));
        shop.Do((records, act) =>
        {
            records.Shop.Single().SetMixer(Trade.Weight.FromPounds(40m));
            return Outcome.Done(1);
        });
        var (_, again) = shop.Plan("Hot sausage", one, two);
        shop.Do((records, act) =>
        {
            records.Shop.Single().SetMixer(Trade.Weight.FromPounds(25m));
            return Outcome.Done(1);
        });
        shop.Draw(again.Single(), one, 11.03m);
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");

        var asked = await (await desk.Open($"/Kitchen/Load/{again.Single()}")).Send("Mixed", ("Mix.Fat", "3.68"), ("Mix.AsAsked", "true"));
        asked.Expect($"Nothing is in yet of Ned Ives, job {shop.Number(two)}.");
        var mixed = await asked.Send("Mixed", ("Mix.WithoutThem", "true"));

        mixed.Expect("Load 1 is mixed.");
    }

    [Fact]
    public async Task The_script_is_answered_with_the_lug_and_with_the_amounts_alone()
    {
        var (job, load) = Planned("Ola Penn");
        shop.Draw(load, job, 12.50m);
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");
        var page = await desk.Open($"/Kitchen/Load/{load}");

        var lug = await page.Live("Save the draw", "Lug", ("Draw.Lug", shop.Lugs(job)[1]));
        var amounts = await page.Live("Mixed", "Amounts", ("Mix.Fat", "5.00"), ("Mix.Lines[1].Weighed", "40"), ("Mix.Lines[1].Again", "40"));

        Assert.Contains($"Lug {shop.Lugs(job)[1]}: Ola Penn", lug.Text, StringComparison.Ordinal);
        Assert.Contains("Too much nitrite", amounts.Text, StringComparison.Ordinal);
        Assert.Null(lug.Document.QuerySelector("form"));
        Assert.Null(amounts.Document.QuerySelector("form"));
    }

    private (int Job, int Load) Planned(string owner)
    {
        var job = shop.Job(owner);
        return (job, shop.Plan(job).Loads[0]);
    }

    /// <summary>A ticket for the last lug of the job.</summary>
    private long Ticket(int job) => long.Parse(shop.Write((records, act) =>
    {
        var filling = records.Fillings.Where(one => one.JobId == job).OrderBy(one => one.Id).Select(one => one.Id).Last();
        var ticket = act.NewTicket(TicketKind.Filling, filling);
        return Outcome.Done(ticket.Number.ToString(System.Globalization.CultureInfo.InvariantCulture));
    }).Result, System.Globalization.CultureInfo.InvariantCulture);
}
