using System.Net;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;
using ProcessorDesk.Web.Bench;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Bench;

/// <summary>How many requests one address may make.</summary>
public sealed class RateTests(RateTests.NarrowShop shop) : IClassFixture<RateTests.NarrowShop>
{
    private const int AtOnce = 3;

    [Fact]
    public async Task Too_many_at_once_are_told_when_to_come_again()
    {
        using var desk = new Desk(shop.Address, follows: false);
        var statuses = new List<HttpStatusCode>();
        for (var i = 0; i < AtOnce; i++)
            statuses.Add((await shop.Ask("girth?girthIn=36&age=adult")).Status);

        var (status, type, json) = await shop.Ask("girth?girthIn=36&age=adult");
        var page = await desk.Open(BenchList.Document);
        var door = await desk.Open("/Door");

        Assert.All(statuses, each => Assert.Equal(HttpStatusCode.OK, each));
        Assert.Equal((HttpStatusCode.TooManyRequests, "application/problem+json", 429), (status, type, json.GetProperty("status").GetInt32()));
        Assert.Equal(HttpStatusCode.TooManyRequests, page.Status);
        Assert.True(int.Parse(page.Headers["Retry-After"], System.Globalization.CultureInfo.InvariantCulture) >= 1);
        Assert.NotEqual("", page.Heading);
        Assert.NotEqual(HttpStatusCode.TooManyRequests, door.Status);
    }

    [Fact]
    public async Task A_hundred_in_a_second_are_promised()
    {
        using var wide = new ShopUnderTest();
        var rate = wide.Services.GetRequiredService<BenchRate>();

        Assert.True(rate.AtOnce >= 100 && rate.Again / rate.Every.TotalSeconds >= 100);
        for (var i = 0; i < 250; i++)
            Assert.Equal(HttpStatusCode.OK, (await wide.Ask("girth?girthIn=36&age=adult")).Status);
    }

    /// <summary>Takes three requests at once, and none after.</summary>
    public sealed class NarrowShop : ShopUnderTest
    {
        protected override void ConfigureWebHost(IWebHostBuilder builder)
        {
            base.ConfigureWebHost(builder);
            builder.ConfigureTestServices(services => services.AddSingleton(new BenchRate(AtOnce, 1, TimeSpan.FromDays(1))));
        }
    }
}
