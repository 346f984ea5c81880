using System.Globalization;
using System.Net;

namespace ProcessorDesk.Web.Tests.Harness;

/// <summary>One browser: its cookies stay, redirects are followed.</summary>
public sealed class Desk : IDisposable
{
    public const string Pin = "2580";

    private readonly HttpClientHandler _handler = new() { CookieContainer = new CookieContainer(), AllowAutoRedirect = true };

    public Desk(Uri address) => Client = new HttpClient(_handler) { BaseAddress = address };

    /// <summary>For requests no browser would make.</summary>
    public HttpClient Client { get; }

    public Task<Screen> Open(string path) => Ask(new HttpRequestMessage(HttpMethod.Get, path));

    public async Task<Screen> Ask(HttpRequestMessage request)
    {
        using var answer = await Client.SendAsync(request);
        return await Screen.Read(this, answer);
    }

    /// <summary>Signs in at the door with the test's PIN.</summary>
    public async Task<Screen> ComeIn(int staffId, string station = "Counter", string pin = Pin)
    {
        var door = await Open("/Door");
        return await door.Send(
            "Sign in", ("Input.StaffId", staffId.ToString(CultureInfo.InvariantCulture)), ("Input.Station", station), ("Input.Pin", pin));
    }

    /// <summary>Throws the sign-in away, as a browser does when its cookies are cleared.</summary>
    public void ForgetSignIn() => Drop("desk");

    public void Drop(string cookie)
    {
        var found = _handler.CookieContainer.GetCookies(Client.BaseAddress!)[cookie];
        if (found is not null) found.Expired = true;
    }

    public void Dispose()
    {
        Client.Dispose();
        _handler.Dispose();
    }
}
