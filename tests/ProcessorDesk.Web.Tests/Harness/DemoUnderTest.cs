using ProcessorDesk.Records;

namespace ProcessorDesk.Web.Tests.Harness;

/// <summary>The same, holding the made-up shop.</summary>
public sealed class DemoUnderTest() : ShopUnderTest(demo: true)
{
    /// <summary>A browser in which one of the made-up hands came in by a tap on the name.</summary>
    public async Task<Desk> Tap(StaffRole role)
    {
        var name = Read(records => records.Staff.First(staff => staff.Role == role).Name);
        var desk = Stranger();
        var door = await desk.Open("/Door");
        await door.Press(door.Document.QuerySelectorAll("button").Single(button => button.TextContent.Contains(name, StringComparison.Ordinal)).TextContent.Trim());
        return desk;
    }
}
