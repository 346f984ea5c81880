using ProcessorDesk.Records;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Door;

public sealed class DemoTests(DemoUnderTest shop) : IClassFixture<DemoUnderTest>
{
    [Fact]
    public async Task In_the_demo_a_tap_on_a_name_is_enough_and_every_page_says_that_it_is_one()
    {
        shop.StaffOf(StaffRole.Kitchen);
        var name = shop.Read(records => records.Staff.First(s => s.Role == StaffRole.Kitchen).Name);
        using var desk = shop.Stranger();

        var door = await desk.Open("/Door");
        var button = door.Document.QuerySelectorAll("button").Single(b => b.TextContent.Contains(name, StringComparison.Ordinal));
        await door.Press(button.TextContent.Trim());
        var me = await desk.Open("/Me");

        Assert.Contains("a demo: a made-up shop", door.Document.QuerySelector(".demo")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("a demo: a made-up shop", me.Document.QuerySelector(".demo")!.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("PIN", me.Text, StringComparison.Ordinal);
        me.Expect(name, "Kitchen hand");
    }
}
