using Microsoft.Playwright;
using ProcessorDesk.Web.Tests.Harness;

namespace ProcessorDesk.Browser.Tests.Screens;

/// <summary>Where everybody comes in.</summary>
internal sealed class DoorScreen : DeskScreen
{
    private DoorScreen(IPage page)
        : base(page)
    {
    }

    public static async Task<DoorScreen> Open(IPage page)
    {
        await page.GotoAsync("/Door");
        await Shows(page, "Who is at the desk?");
        return new DoorScreen(page);
    }

    public async Task<DeskScreen> ComeIn(int staff, string station)
    {
        await Choose("Input.StaffId", $"{staff}");
        await Choose("Input.Station", station);
        await Type("Input.Pin", Desk.Pin);
        await Press("Sign in");
        return new DeskScreen(Page);
    }
}
