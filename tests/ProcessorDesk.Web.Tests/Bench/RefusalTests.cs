using System.Net;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;
using ProcessorDesk.Web.Bench;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Bench;

/// <summary>What the bench refuses: with status, problem and field, and never with a fault.</summary>
public sealed class RefusalTests(RefusalTests.PatientShop shop) : IClassFixture<RefusalTests.PatientShop>
{
    private const string Ask = "split?leanLb=40&divisionLb=0.01&ask=";

    [Theory]
    [InlineData("yield?species=cow&from=live&to=hanging&weightLb=100", 400, "species")]
    [InlineData("yield?species=beef&from=dead&to=hanging&weightLb=100", 400, "from")]
    [InlineData("yield?species=beef&from=live&to=hanging", 400, "weightLb")]
    [InlineData("yield?species=beef&from=live&to=hanging&weightLb=100&weightLb=200", 400, "weightLb")]
    [InlineData("yield?species=beef&from=live&to=boneless&weightLb=100", 422, "to")]
    [InlineData("yield?species=bear&from=fieldDressed&to=boneless&weightLb=100", 422, "to")]
    [InlineData("yield?species=deer&from=fieldDressed&to=boneIn&weightLb=6", 422, "weightLb")]
    [InlineData("girth?girthIn=19.99&age=adult", 422, "girthIn")]
    [InlineData("girth?girthIn=50.01&age=fawn", 422, "girthIn")]
    [InlineData("girth?girthIn=36&age=old", 400, "age")]
    [InlineData("blend?leanFatPct=31&addedFatPct=60&targetFatPct=28&blockLb=100", 422, "targetFatPct")]
    [InlineData("blend?leanFatPct=101&addedFatPct=60&targetFatPct=28&blockLb=100", 400, "leanFatPct")]
    [InlineData(Ask, 400, "ask")]
    [InlineData(Ask + "a;rest;;70;0;0;0;0%0Ab;rest;;70;0;0;0;0", 400, "ask")]
    [InlineData(Ask + "a;half;1;70;0;0;0;0", 400, "ask")]
    [InlineData(Ask + "a;lean;1;0;0;0;0;0", 400, "ask")]
    [InlineData(Ask + "a;lean;1;70;0;100;0;0", 400, "ask")]
    [InlineData(Ask + ";lean;1;70;0;0;0;0", 400, "ask")]
    [InlineData(Ask + "a;lean;1;70", 400, "ask")]
    [InlineData("split?leanLb=40&divisionLb=0&ask=a;rest;;70;0;0;0;0", 400, "divisionLb")]
    [InlineData("split?leanLb=40&divisionLb=0.00000001&ask=a;rest;;70;0;0;0;0", 400, "divisionLb")]
    [InlineData("lethality?log=6&reading=0;145", 400, "log")]
    [InlineData("lethality?log=6.5", 400, "reading")]
    [InlineData("lethality?log=6.5&reading=145", 400, "reading")]
    [InlineData("lethality?log=6.5&reading=-1;145", 400, "reading")]
    [InlineData("lethality?log=6.5&reading=0;1450", 400, "reading")]
    [InlineData("lethality?log=6.5&reading=0;145&poultry=duck", 400, "poultry")]
    [InlineData("cooling?option=3&reading=0;145", 400, "option")]
    [InlineData("cooling?reading=0;145", 400, "option")]
    [InlineData("degree-hours?reading=0;75&ph53Hours=soon", 400, "ph53Hours")]
    public Task An_impossible_request(string address, int status, string field) => shop.ExpectRefusal(address, status, field);

    /// <summary>RFC 9457 has its own media type; a plain decimal has a point and nothing else in it.</summary>
    [Theory]
    [InlineData("-1")]
    [InlineData("0")]
    [InlineData("NaN")]
    [InlineData("Infinity")]
    [InlineData("1e3")]
    [InlineData("1,000")]
    [InlineData("12 lb")]
    [InlineData("1/2")]
    [InlineData("0x10")]
    [InlineData("٣")]
    [InlineData("100000.01")]
    [InlineData("99999999999999999999999999999999999999999999999999")]
    [InlineData("0.00000000000000000000000000000000000000000000000001")]
    public Task Whatever_is_no_plain_decimal_above_zero(string weight) =>
        shop.ExpectRefusal("yield?species=deer&from=fieldDressed&to=boneless&weightLb=" + Uri.EscapeDataString(weight), 400, "weightLb");

    [Fact]
    public async Task Without_any_field_every_required_one_is_named()
    {
        foreach (var calculator in BenchList.All)
        {
            var (status, _, json) = await shop.Ask(calculator.Path);

            Assert.Equal(HttpStatusCode.BadRequest, status);
            var named = json.GetProperty("errors").EnumerateObject().Select(error => error.Name).ToList();
            var required = calculator.Fields.Where(field => field is { IsRequired: true, Default: "" }).Select(field => field.Name).ToList();
            Assert.NotEmpty(named);
            if (required.Count > 0)
                Assert.Equal(required, named);
        }
    }

    /// <summary>Every field of every calculator with texts that might trip it: always an answer or a refusal, never a fault.</summary>
    [Fact]
    public async Task Nothing_typed_is_a_fault()
    {
        string[] texts =
        [
            "", " ", "-1", "0", "0.0000001", "100000", "1000", "99.9999", "1e9", "NaN", ";", ";;;;;;;", "0;0", "100000;600", "1;-80", "a;lean;100000;0.0001;1000;99.9999;0;0.0001",
            "a;rest;;100;0;0;0;100000", "a;finished;100000;0.0001;1000;99.9999;100000;100000", "\0", "\u00bd", "<script>", new string('9', 300), "%", "a;percent;100;100;0;0;0;0.0001",
        ];
        foreach (var calculator in BenchList.All)
        {
            foreach (var field in calculator.Fields)
            {
                foreach (var text in texts)
                {
                    var others = calculator.Example.Split('&').Where(pair => pair.Split('=')[0] != field.Name);
                    var (status, _, json) = await shop.Ask($"{calculator.Path}?{string.Join('&', others)}&{field.Name}={Uri.EscapeDataString(text)}");

                    Assert.True((int)status is 200 or 400 or 422, $"{calculator.Path} {field.Name}={text}: {(int)status} {json}");
                }
            }
        }
    }

    [Fact]
    public async Task An_address_that_is_no_calculator_is_not_there()
    {
        var (status, type, _) = await shop.Ask("nothing-of-the-kind");

        Assert.Equal((HttpStatusCode.NotFound, "application/problem+json"), (status, type));
    }

    /// <summary>Takes as many requests as a quick machine can make.</summary>
    public sealed class PatientShop : ShopUnderTest
    {
        protected override void ConfigureWebHost(IWebHostBuilder builder)
        {
            base.ConfigureWebHost(builder);
            builder.ConfigureTestServices(services => services.AddSingleton(new BenchRate(100_000, 100_000, TimeSpan.FromSeconds(1))));
        }
    }
}
