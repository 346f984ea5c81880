using System.Globalization;
using System.Net;
using System.Text.Json;
using ProcessorDesk.Web.Tests.Harness;
using Xunit;

namespace ProcessorDesk.Web.Tests.Bench;

/// <summary>Asks the bench as another program would: an address in, JSON out.</summary>
internal static class Asking
{
    private static readonly HttpClient s_program = new(new HttpClientHandler { AllowAutoRedirect = false, UseCookies = false });

    public static async Task<(HttpStatusCode Status, string Type, JsonElement Json)> Ask(this ShopUnderTest shop, string address)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, new Uri(shop.Address, "/bench/" + address));
        request.Headers.Add("Accept", "application/json");
        using var answer = await s_program.SendAsync(request);
        return (answer.StatusCode, answer.Content.Headers.ContentType!.MediaType!, JsonDocument.Parse(await answer.Content.ReadAsStringAsync()).RootElement);
    }

    /// <summary>Figures of an answer, by path: "typicalLb", "allotments[1].leanLb".</summary>
    /// <param name="expected">Path and figure with blanks between: "typicalLb 48"; decimals to four places, "null", "true", text.</param>
    public static async Task Expect(this ShopUnderTest shop, string address, string expected)
    {
        var (status, type, json) = await shop.Ask(address);

        Assert.True(status == HttpStatusCode.OK, $"{address}: {(int)status} {json}");
        Assert.Equal("application/json", type);
        foreach (var (path, figure) in expected.Split(", ").Select(pair => (pair.Split(' ')[0], pair[(pair.IndexOf(' ', StringComparison.Ordinal) + 1)..])))
        {
            var found = path.Split('.').Aggregate(json, At);
            if (found.ValueKind == JsonValueKind.Number)
                Assert.InRange(found.GetDecimal() - decimal.Parse(figure, CultureInfo.InvariantCulture), -0.00005m, 0.00005m);
            else
                Assert.Equal((path, figure), (path, found.ValueKind switch { JsonValueKind.Null => "null", JsonValueKind.True => "true", JsonValueKind.False => "false", _ => found.GetString() }));
        }
    }

    /// <summary>Refused with this status and words beside this field.</summary>
    public static async Task ExpectRefusal(this ShopUnderTest shop, string address, int expected, string field)
    {
        var (status, type, json) = await shop.Ask(address);

        Assert.True(expected == (int)status, $"{address}: {(int)status} {json}");
        Assert.Equal(("application/problem+json", expected), (type, json.GetProperty("status").GetInt32()));
        Assert.All(["type", "title", "detail"], name => Assert.NotEmpty(json.GetProperty(name).GetString()!));
        Assert.True(json.GetProperty("errors").TryGetProperty(field, out var words), $"{address}: {json}");
        Assert.All(words.EnumerateArray(), line => Assert.NotEmpty(line.GetString()!));
    }

    private static JsonElement At(JsonElement from, string step)
    {
        var open = step.IndexOf('[', StringComparison.Ordinal);
        return open < 0 ? from.GetProperty(step) : from.GetProperty(step[..open])[int.Parse(step[(open + 1)..^1], CultureInfo.InvariantCulture)];
    }
}
