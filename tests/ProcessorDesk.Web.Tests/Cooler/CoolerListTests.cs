using AngleSharp.Dom;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Tests.Cutting;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Cooler;

public sealed class CoolerListTests(ShopUnderTest shop) : IClassFixture<ShopUnderTest>
{
    [Fact]
    public async Task Held_comes_first_then_warm_then_by_the_days_left_with_the_reason_in_words()
    {
        var now = shop.Clock.GetUtcNow().UtcDateTime;
        Hang("Last", 0, now.AddDays(-1), null);
        Hang("Soon", 0, now.AddDays(-5), null);
        Hang("Warm", 0, now, Temperature.FromFahrenheit(52m));
        var held = Hang("Held", 0, now, null);
        shop.Hold(held, HoldReason.DiseaseTest);
        var (started, _) = shop.TakeIn("Gone", 90m);
        shop.StartCutting(started);
        using var desk = await shop.SignIn(StaffRole.Cutter, "Cooler");

        var page = await desk.Open("/Cooler");

        var rows = page.Document.QuerySelectorAll("tbody tr").Select(row => string.Join(' ', row.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))).ToList();
        Assert.Equal(["Held", "Warm", "Soon", "Last"], rows.Select(row => row.Split(", job")[0].Split(' ')[^1]));
        Assert.Contains("On hold: waiting for the disease test", rows[0], StringComparison.Ordinal);
        Assert.Contains("Came in at 52.0 °F, above 40.0 °F", rows[1], StringComparison.Ordinal);
        Assert.Contains("Hung 5 days; ready: cut or freeze by day 5. Promised Mon 30 Nov.", rows[2], StringComparison.Ordinal);
        page.Expect("Michigan State University Extension");
    }

    private int Hang(string owner, int rail, DateTime hungAt, Temperature? surface) =>
        shop.TakeIn(owner, animal =>
        {
            animal.Describe(animal.Species, Sex.Unknown, ArrivalState.FieldDressed, surface, null, null);
            animal.Hang($"{rail}", hungAt);
        }, 100m).Animals[0];
}
