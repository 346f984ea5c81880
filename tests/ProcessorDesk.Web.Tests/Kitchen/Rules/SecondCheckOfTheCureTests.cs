using ProcessorDesk.Records;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Kitchen.Rules;

/// <summary>The second check of the cure on the page of the load, the batch and the papers: by another hand, or the same after setting the scale to zero.</summary>
public sealed class SecondCheckOfTheCureTests(KitchenFloor shop) : IClassFixture<KitchenFloor>
{
    [Fact]
    public async Task The_signed_in_hand_weighs_again_without_typing_initials_and_the_load_shows_both()
    {
        var load = Drawn("Abe Cole");
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");
        var page = await desk.Open($"/Kitchen/Load/{load}");
        page.Expect("Cure weighed again", "Weighed again by");
        var own = shop.Read(records => records.Staff.Single(staff => staff.Role == StaffRole.Kitchen).Initials);
        Assert.Equal(own, page.Form("Mixed").Value("Mix.AgainBy"));

        (await page.Send("Mixed", ("Mix.Fat", "5.36"), ("Mix.AsAsked", "true"), ("Mix.Lines[1].Weighed", "20.2"), ("Mix.Lines[1].Again", "20.1"))).Expect("Load 1 is mixed.");

        (await desk.Open($"/Kitchen/Load/{load}")).Expect("20.2 g", $"again 20.1 g, {own}", $"Weighed by {own}, and again by {own} after setting the scale to zero");
    }

    [Fact]
    public async Task Another_hand_is_chosen_by_its_initials_and_initials_nobody_has_are_refused()
    {
        var load = Drawn("Bea Dorn");
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");
        var page = await desk.Open($"/Kitchen/Load/{load}");
        (string, string)[] typed = [("Mix.Fat", "5.36"), ("Mix.AsAsked", "true"), ("Mix.Lines[1].Weighed", "20.2"), ("Mix.Lines[1].Again", "20.2")];

        var asked = await page.Send("Mixed", [.. typed, ("Mix.AgainBy", "qqz")]);
        Assert.Contains("Nobody here has the initials QQZ. Type those of the hand that weighed it again.", asked.Problems);
        Assert.Equal("qqz", asked.Form("Mixed").Value("Mix.AgainBy"));
        var manager = shop.StaffOf(StaffRole.Manager);
        var other = shop.Read(records => records.Staff.Single(staff => staff.Id == manager).Initials);
        (await asked.Send("Mixed", ("Mix.AgainBy", other.ToLowerInvariant()))).Expect("Load 1 is mixed.");

        (await desk.Open($"/Kitchen/Load/{load}")).Expect($"again 20.2 g, {other}");
    }

    [Fact]
    public async Task Left_blank_or_too_far_apart_it_is_asked_for_beside_its_field_with_what_was_typed()
    {
        var load = Drawn("Cy Egan");
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");
        var page = await desk.Open($"/Kitchen/Load/{load}");

        var blank = await page.Send("Mixed", ("Mix.Fat", "5.36"), ("Mix.AsAsked", "true"), ("Mix.Lines[1].Weighed", "20.2"));
        Assert.Contains("Set the scale to zero, weigh the pink curing salt a second time, and type what it shows.", blank.Problems);
        var apart = await blank.Send("Mixed", ("Mix.Lines[1].Again", "18.9"));
        Assert.Contains("First 20.2 g, now 18.9 g: more than 0.6 g apart. Set the scale to zero and weigh it both times anew.", apart.Problems);
        Assert.Equal("18.9", apart.Form("Mixed").Value("Mix.Lines[1].Again"));

        Assert.Null(shop.Read(records => records.Loads.Single(one => one.Id == load).MixedAt));
    }

    [Fact]
    public async Task Mixed_already_on_one_weighing_the_release_says_so_and_the_record_too()
    {
        var load = Drawn("Di Fenn");
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");

        var refused = await (await desk.Open($"/Kitchen/Load/{load}")).Send("Mixed", ("Mix.Fat", "5.36"), ("Mix.AsAsked", "true"), ("Mix.Lines[1].Weighed", "20.2"));
        refused.Expect("Is it mixed already?");
        (await refused.Send("It is already mixed", ("Mix.AlreadyInBecause", "alone in the kitchen"))).Expect("The batch is on hold.");
        (await desk.Open($"/Kitchen/Load/{load}")).Expect("No second weighing of the cure is noted.");
        var batch = shop.Read(records => records.Loads.Single(one => one.Id == load).BatchId);
        shop.Do((records, act) => records.ReleaseBatchHold(records.Holds.Standing().Single(hold => hold.BatchId == batch).Id, "it was weighed right", act));
        shop.Do((records, act) => records.FinishMixing(batch, act));

        (await desk.Open($"/Kitchen/Batch/{batch}")).Expect("No second weighing of the cure is noted", "Load 1: no second weighing of the cure is noted.");
        Assert.Contains("no second weighing", await PdfText.Of(desk, $"/Kitchen/Record/{batch}"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_sheet_on_paper_has_boxes_for_it_and_the_process_record_prints_it()
    {
        var job = shop.Job("Eli Gore");
        var batch = shop.MixedRing(job); // 20.2 g, and 20.1 g the second time
        using var desk = await shop.SignIn(StaffRole.Kitchen, "Kitchen");

        var sheet = await PdfText.Of(desk, $"/Kitchen/Sheet/{batch}");
        Assert.Contains("Weighed again, g", sheet, StringComparison.Ordinal);
        Assert.Contains("Weighed again by, after setting the scale to zero", sheet, StringComparison.Ordinal);
        var record = await PdfText.Of(desk, $"/Kitchen/Record/{batch}");
        Assert.Contains("again 20.1 g", record, StringComparison.Ordinal);
        Assert.Contains("Cure weighed again, load 2", record, StringComparison.Ordinal);
    }

    private int Drawn(string owner)
    {
        var job = shop.Job(owner);
        var load = shop.Plan(job).Loads[0];
        shop.Draw(load, job, 12.50m);
        return load;
    }
}
