using Microsoft.Extensions.DependencyInjection;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Hosting;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Door;

public sealed class FirstManagerTests : IDisposable
{
    private readonly ShopUnderTest _shop = new();

    private string Code => _shop.Services.GetRequiredService<FirstManagerCode>().Code!;

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task A_new_shop_leads_to_its_first_manager_who_is_then_signed_in()
    {
        using var desk = _shop.Stranger();

        var first = await desk.Open("/");
        var page = await Set(first, Code.ToLowerInvariant());
        var me = await desk.Open("/Me");

        Assert.Equal("The first manager", first.Heading);
        Assert.Equal("/Today", page.Path);
        me.Expect("Rosa Hale", "RH", "Manager, at Office");
        Assert.Null(_shop.Services.GetRequiredService<FirstManagerCode>().Code);
    }

    [Fact]
    public async Task A_wrong_code_makes_nobody_and_what_was_typed_stays()
    {
        using var desk = _shop.Stranger();

        var page = await Set(await desk.Open("/Door/First"), "AAAAAAAAAA");

        Assert.Equal(["That is not the code on the console. It changes each time ProcessorDesk starts."], page.Problems);
        Assert.Equal("Rosa Hale", page.Form("Open the shop").Value("Input.Name"));
        Assert.False(_shop.Read(records => records.Staff.Any()));
    }

    [Fact]
    public async Task The_code_works_once()
    {
        var code = Code;
        using var desk = _shop.Stranger();
        using var other = _shop.Stranger();

        var waiting = await other.Open("/Door/First");
        await Set(await desk.Open("/Door/First"), code);
        var late = await Set(waiting, code);

        Assert.Equal("Who is at the desk?", late.Heading);
        Assert.Equal(1, _shop.Read(records => records.Staff.Count(s => s.Role == StaffRole.Manager)));
    }

    private static Task<Screen> Set(Screen first, string code) => first.Send(
        "Open the shop",
        ("Input.Code", code), ("Input.Name", "Rosa Hale"), ("Input.Initials", "rh"), ("Input.Pin", "4826"), ("Input.AgainPin", "4826"));
}
