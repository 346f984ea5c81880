using System.Globalization;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Counter;

public sealed class HoldTests(CounterShop shop) : IClassFixture<CounterShop>
{
    [Fact]
    public async Task Without_a_tag_it_is_taken_in_and_held_until_the_tag_is_there()
    {
        using var desk = await shop.SignIn(StaffRole.Clerk);
        var taken = await TakeIn(desk, "Tagless", ("Input.Animals[0].Tag", ""));
        taken.Expect("On hold", "tag missing");

        var animal = Animal("Tagless");
        var page = await desk.Open($"/Counter/Animal/{animal.Id}");
        page = await page.Send("Save the animal", ("Input.Tag", "WT 77"));

        page.Expect("The animal is saved", "tag WT 77", "The tag is there: WT 77");
        Assert.DoesNotContain(Animal("Tagless").Holds, hold => hold.ReleasedAt is null);
    }

    [Fact]
    public async Task Where_the_shop_refuses_without_a_tag_the_message_stands_at_the_field()
    {
        Rule(TagRule.Refuse);
        try
        {
            using var desk = await shop.SignIn(StaffRole.Clerk);
            var before = shop.Jobs;
            var page = await TakeIn(desk, "Refused", ("Input.Animals[0].Tag", ""));

            Assert.Equal(["No animal is taken in here without its tag. Type the tag number."], page.Problems);
            Assert.NotNull(page.Document.QuerySelector("#Input_Animals_0__Tag-problem"));
            Assert.Equal(before, shop.Jobs);
        }
        finally
        {
            Rule(TagRule.Hold);
        }
    }

    [Fact]
    public async Task A_pending_test_holds_and_the_result_of_not_detected_releases()
    {
        using var desk = await shop.SignIn(StaffRole.Clerk);
        var taken = await TakeIn(desk, "Pending Pat", ("Input.Animals[0].DiseaseTest", "Pending"), ("Input.Animals[0].SampleNumber", "S-12"));
        taken.Expect("waiting for the disease test");

        var page = await desk.Open($"/Counter/Animal/{Animal("Pending Pat").Id}");
        page = await page.Send("Save the animal", ("Input.DiseaseTest", "NotDetected"));

        page.Expect("Result: not detected");
        var animal = Animal("Pending Pat");
        Assert.Equal(DiseaseTest.NotDetected, animal.DiseaseTest);
        Assert.Equal(new DateOnly(2026, 11, 27), animal.ResultOn);
        Assert.DoesNotContain(animal.Holds, hold => hold.ReleasedAt is null);
    }

    [Fact]
    public async Task Detected_is_released_by_the_manager_alone_and_with_a_reason()
    {
        using var desk = await shop.SignIn(StaffRole.Clerk);
        await TakeIn(desk, "Detected Dee", ("Input.Animals[0].DiseaseTest", "Detected"));
        var hold = Assert.Single(Animal("Detected Dee").Holds);
        var address = $"/Counter/Animal/{hold.AnimalId}";

        var clerk = await desk.Open(address);
        clerk.Expect("disease detected", "Only the manager releases it.");
        Assert.DoesNotContain(clerk.Document.QuerySelectorAll("button"), button => button.TextContent.Trim() == "Release this hold");

        using var office = await shop.SignIn(StaffRole.Manager);
        var refused = await (await office.Open(address)).Press("Release this hold");
        Assert.Equal(["Say why the hold is released."], refused.Problems);
        Assert.Null(Animal("Detected Dee").Holds.Single().ReleasedAt);

        var released = await refused.Send("Release this hold", ("Hold.Because", "Whole animal destroyed, agency told"));
        released.Expect("The hold is released", "Whole animal destroyed, agency told");
        Assert.NotNull(Animal("Detected Dee").Holds.Single().ReleasedAt);
    }

    [Fact]
    public async Task A_clerk_cannot_release_what_was_detected_by_a_forged_form_either()
    {
        using var desk = await shop.SignIn(StaffRole.Clerk);
        await TakeIn(desk, "Forger", ("Input.Animals[0].DiseaseTest", "Detected"));
        var hold = Assert.Single(Animal("Forger").Holds);
        var page = await desk.Open($"/Counter/Animal/{hold.AnimalId}");
        var request = page.Form("Put it on hold").Submission(page.Button("Put it on hold"));
        request.RequestUri = new Uri(shop.Address, $"/Counter/Animal/{hold.AnimalId}?handler=Release&hold={hold.Id}");

        var answer = await desk.Ask(request);

        Assert.Equal(["Only the manager releases an animal in which disease was detected."], answer.Problems);
        Assert.Null(Animal("Forger").Holds.Single().ReleasedAt);
    }

    // Deer hang at or under 40 °F: Michigan State University Extension.
    [Theory]
    [InlineData("Unknown", "40", false)]
    [InlineData("Unknown", "40.1", true)]
    [InlineData("FieldDressed", "95", false)]
    public async Task Found_warm_after_a_night_it_is_held_and_freshly_killed_it_is_not(string state, string surface, bool held)
    {
        var owner = $"Warm {state} {surface}";
        using var desk = await shop.SignIn(StaffRole.Clerk);

        await TakeIn(desk, owner, ("Input.Animals[0].State", state), ("Input.Animals[0].Surface", surface));

        Assert.Equal(held, Animal(owner).Holds.Any(hold => hold.Reason == HoldReason.TooWarm));
    }

    [Fact]
    public async Task A_hold_is_put_on_by_hand_and_released_with_a_reason()
    {
        using var desk = await shop.SignIn(StaffRole.Clerk);
        await TakeIn(desk, "By Hand");
        var page = await desk.Open($"/Counter/Animal/{Animal("By Hand").Id}");

        page = await page.Send("Put it on hold", ("Hold.Reason", "Dispute"), ("Hold.Note", "Says it is not his tag"));
        page.Expect("On hold: in dispute", "Says it is not his tag");
        page = await page.Send("Release this hold", ("Hold.Because", "He looked again"));

        page.Expect("He looked again");
    }

    [Fact]
    public async Task A_whole_job_is_put_on_hold_and_let_go_at_its_order()
    {
        using var desk = await shop.SignIn(StaffRole.Clerk);
        await TakeIn(desk, "Whole Job");
        var id = shop.Read(records => records.Jobs.Single(job => job.Owner.Name == "Whole Job").Id);

        var page = await (await desk.Open($"/Counter/Order/{id}")).Send("Put it on hold", ("Hold.Reason", "Dispute"), ("Hold.Note", "Two claim it"));
        page.Expect("The whole job is on hold", "Two claim it");
        Assert.NotEmpty(shop.Read(records => records.Stopping(id, HeldAct.HandOver)));
        var refused = await page.Press("Release this hold");
        Assert.Equal(["Say why the hold is released."], refused.Problems);
        page = await refused.Send("Release this hold", ("Hold.Because", "Settled between them"));

        page.Expect("Settled between them");
        Assert.Empty(shop.Read(records => records.Stopping(id, HeldAct.HandOver)));
    }

    [Fact]
    public async Task A_weight_put_right_strikes_the_old_one_with_its_reason()
    {
        using var desk = await shop.SignIn(StaffRole.Clerk);
        await TakeIn(desk, "Weighed Twice", ("Input.Animals[0].Weight", "128.5"));
        var id = Animal("Weighed Twice").Id;

        var refused = await (await desk.Open($"/Counter/Animal/{id}")).Send("Save the animal", ("Input.Weight", "118.5"));
        Assert.Equal(["The weight was 128.5 lb. Say why it is changed; the old one stays, struck out."], refused.Problems);
        var saved = await refused.Send("Save the animal", ("Input.WeightBecause", "Misread"));

        saved.Expect("118.5 lb", "128.5 lb", "struck out: Misread");
        Assert.Equal(
            [(128.5m, true), (118.5m, false)],
            shop.Read(records => records.WeighIns.Include(one => one.Strike).Where(one => one.AnimalId == id).OrderBy(one => one.Id).AsEnumerable()
                .Select(one => (decimal.Round(one.Net.Pounds, 4), one.Strike is not null)).ToList()));
    }

    private Animal Animal(string owner) => shop.Read(records => records.Shares.Include(share => share.Animal).ThenInclude(animal => animal.Holds)
        .Where(share => share.Job.Owner.Name == owner).OrderBy(share => share.Id).Last().Animal);

    private void Rule(TagRule rule) => shop.Write((records, _) =>
    {
        var settings = records.Shop.Single();
        settings.SetRules(rule, settings.TaxRate, settings.TaxWording, settings.Tolerance);
        return Outcome.Done();
    });

    private static async Task<Screen> TakeIn(Desk desk, string owner, params (string Name, string Value)[] more)
    {
        var page = await desk.Open("/Counter/DropOff");
        (string, string)[] least =
        [
            ("Input.Owner.Name", owner), ("Input.Owner.Phone", "715 555 0123"), ("Input.Animals[0].Tag", "H-" + owner.Length.ToString(CultureInfo.InvariantCulture)),
            ("Input.Animals[0].State", "FieldDressed"), ("Input.Animals[0].Weight", "100"),
        ];
        return await page.Send("Take it in", [.. least, .. more]);
    }
}
