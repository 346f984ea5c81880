using ProcessorDesk.Records;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.OwnersPage;

/// <summary>What an owner reads from home at each step of one deer, every figure worked by hand.</summary>
public sealed class OwnersStoryTests(ShopUnderTest shop) : IClassFixture<ShopUnderTest>
{
    [Fact]
    public async Task The_page_follows_the_deer_from_the_door_to_the_truck()
    {
        var deer = new OwnersDeer(shop);
        using var home = shop.Stranger();
        async Task<Screen> Look(string heading)
        {
            var page = await home.Open(deer.Link);
            Assert.Equal(heading, page.Heading);
            return page;
        }

        (await Look("Your white-tail deer is here and waits to be cut."))
            .Expect("Promised for Fri 11 Dec", "White-tail deer, tag WQ-1, field-dressed, 128.5 lb", "You asked for 7.50 lb of your own meat in it.",
                "Deposit paid Fri 27 Nov -$50.00", "Paid ahead $50.00", "There is no invoice yet.", "Antlers Here with us", "Chronic wasting disease", "all of it to 160 °F");

        deer.Hang();
        (await Look("Your white-tail deer hangs in our cooler.")).Expect("Hangs in the cooler since Fri 27 Nov", "Hide, head, feet − 34.50 lb");
        deer.Hold();
        (await Look("Your white-tail deer hangs in our cooler."))
            .Expect("On hold. It waits for the disease test.", "The shop will call.", "which may not hold while it waits", "Not tested is not the same as not detected");
        deer.Release();
        deer.StartCutting();
        await Look("Your white-tail deer is on the cutting table.");
        deer.FinishCutting();
        // 94.00 hanging less 40.00 bone less 20.00 lean leaves 34.00 that nobody weighed apart.
        (await Look("Your white-tail deer is cut; next we divide the trim as you asked.")).Expect("Bone − 40.00 lb", "Not weighed apart − 34.00 lb", "Boneless meat 20.00 lb");

        deer.Agree();
        // 7.50 lean is 75 % of 10.00 of block, so 2.50 of pork; 2 % seasoning makes 10.20; 12.50 is left for plain ground.
        (await Look("Your white-tail deer is in the kitchen.")).Expect(
            "0 of 2 products made", "Hot sausage 10.20 lb", "7.50 lb of your own meat, 2.50 lb of pork or fat and the seasoning added", "Waits for its turn in the kitchen",
            "Plain ground 12.50 lb", "What was left over became this.", "12.50 lb of your own meat, nothing added", "Made, about 22.70 lb");

        // 2 % of 10.00 lb is 0.2 lb, 90.7 g.
        var hot = deer.Mix("Hot sausage", 7.5m, 2.5m, 90.7m);
        (await Look("Your white-tail deer is in the kitchen.")).Expect("Mixed on Fri 27 Nov; rests, cooks or chills now");
        deer.Finish(hot, 10.05m);
        (await Look("Your white-tail deer is in the kitchen.")).Expect("1 of 2 products made", "Hot sausage 10.05 lb", "Made on Fri 27 Nov; to be boxed", "Made, about 22.55 lb");

        var first = deer.Box("Hot sausage", 9, 10.05m);
        deer.Invoice();
        deer.HandOver(first);
        // 95.00 flat; 10.05 at 2.50 is 25.13 and 1.57 tax; 2.50 of pork at 1.95 is 4.88 and 0.31 tax; less 50.00.
        (await Look("Your white-tail deer is in the kitchen.")).Expect(
            "1 box so far, 10.05 lb", "Made on Fri 27 Nov; with you", "Hot sausage, 9 packs", "Taken Fri 27 Nov", "Invoice 1 Fri 27 Nov $126.89", "To be paid $76.89", "Not on an invoice yet: Plain ground.", "Antlers Taken Fri 27 Nov");

        deer.Finish(deer.Mix("Plain ground", 12.5m, 0m, 0m), 12.40m);
        await Look("Your white-tail deer is made up and goes into boxes.");
        var second = deer.Box("Plain ground", 12, 12.40m);
        deer.FinishBoxing();
        (await Look("Your white-tail deer is boxed; part of it is with you, the rest is ready.")).Expect(
            "Ready", "coolers for 12.40 lb", "Made on Fri 27 Nov; in our freezer", "2 boxes, 22.45 lb", "Cooking and drying − 0.25 lb", "Made 22.45 lb", "In boxes 22.45 lb");

        deer.Invoice();
        deer.Pay(90.64m);
        deer.HandOver(second);
        // 12.50 of lean at 1.10 is 13.75; with the first invoice 140.64, all of it paid.
        var last = await Look("Your white-tail deer went home with you.");
        last.Expect("Invoice 2 Fri 27 Nov $13.75", "Paid Fri 27 Nov -$90.64", "To be paid $0.00", "Together 22.45 lb", "2 boxes taken Fri 27 Nov");
        Assert.DoesNotContain("Not on an invoice", last.Text, StringComparison.Ordinal);
        NothingOfPeople(last);

        // The shop sees the same picture on the job's page.
        using var desk = await shop.SignIn(StaffRole.Clerk);
        Assert.Equal(last.Document.QuerySelector("svg.way")!.OuterHtml, (await desk.Open($"/Find/Job/{deer.Id}")).Document.QuerySelector("svg.way")!.OuterHtml);
    }

    [Fact]
    public async Task What_was_thrown_out_is_said_without_the_shops_own_words()
    {
        var deer = new OwnersDeer(shop);
        deer.StartCutting();
        deer.FinishCutting();
        deer.Agree();
        deer.ThrowOut(deer.Mix("Hot sausage", 7.5m, 2.5m, 90.7m));
        using var home = shop.Stranger();

        var page = await home.Open(deer.Link);

        page.Expect("Hot sausage nothing", "Had to be thrown out on Fri 27 Nov; the shop talks to you about it", "Thrown out in the kitchen − 10.20 lb");
        NothingOfPeople(page);
    }

    private static void NothingOfPeople(Screen page)
    {
        var all = page.Document.DocumentElement.OuterHtml;
        foreach (var word in new[] { OwnersDeer.Name, OwnersDeer.Phone, OwnersDeer.Street, OwnersDeer.Collector, "555-0178", "Barnaby", "Thrift", "Shelf 3" })
            Assert.DoesNotContain(word, all, StringComparison.OrdinalIgnoreCase);
    }
}
