using ProcessorDesk.Records;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Forms;

public sealed class PostFormTests(ShopUnderTest shop) : IClassFixture<ShopUnderTest>
{
    [Fact]
    public async Task A_form_goes_to_its_page_whichever_handler_showed_it()
    {
        using var desk = await shop.SignIn(StaffRole.Manager, "Office");

        var open = await desk.Open("/Me?handler=Work&from=tag");
        var moved = await open.Send("Move here", ("Input.Station", "Grind"));

        Assert.Equal("/Me?from=tag", open.Form("Move here").GetAttribute("action"));
        moved.Expect("This screen is now at Grind.");
    }

    [Fact]
    public async Task Every_form_that_posts_carries_one_form_token()
    {
        using var desk = await shop.SignIn(StaffRole.Manager, "Office");

        foreach (var address in new[] { "/Me", "/Me/Pin", "/Door" })
        {
            var forms = (await desk.Open(address)).Document.QuerySelectorAll("form[method=post]").ToList();

            Assert.NotEmpty(forms);
            Assert.All(forms, form => Assert.Single(form.QuerySelectorAll("[name=__RequestVerificationToken]")));
        }
    }
}
