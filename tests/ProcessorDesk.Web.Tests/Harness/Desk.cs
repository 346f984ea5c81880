using System.Globalization;
using System.Net;

namespace ProcessorDesk.Web.Tests.Harness;

/// <summary>One browser: its cookies stay, redirects are followed.</summary>
public sealed class Desk : IDisposable
{
    public const string Pin = "2580";

    private readonly HttpClientHandler _handler;

    /// <param name="follows">False shows each answer as it comes, redirects too.</param>
    public Desk(Uri address, bool follows = true)
    {
        _handler = new HttpClientHandler { CookieContainer = new CookieContainer(), AllowAutoRedirect = follows };
        Client = At(address);
    }

    /// <summary>For requests no browser would make.</summary>
    public HttpClient Client { get; private set; }

    /// <summary>The shop was started again at another address: cookies and open pages stay, and a page's forms go to where the shop is now.</summary>
    public void MoveTo(Uri address)
    {
        Client.Dispose();
        Client = At(address);
    }

    public Task<Screen> Open(string path) => Ask(new HttpRequestMessage(HttpMethod.Get, path));

    public async Task<Screen> Ask(HttpRequestMessage request)
    {
        if (request.RequestUri is { IsAbsoluteUri: true } asShown) request.RequestUri = new Uri(Client.BaseAddress!, asShown.PathAndQuery);
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

    private HttpClient At(Uri address) => new(_handler, disposeHandler: false) { BaseAddress = address };
}
