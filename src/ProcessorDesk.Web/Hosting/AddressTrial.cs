using System.Net;
using System.Security.Cryptography;
using System.Text;

namespace ProcessorDesk.Web.Hosting;

/// <summary>
/// Tries whether a public address leads to this very shop: the desk asks itself through it, and takes only an answer that this shop's
/// key made for the question of the moment.
/// </summary>
public sealed class AddressTrial(OwnerKey key) : IDisposable
{
    /// <summary>Where any desk answers; behind it the question.</summary>
    public const string Path = "/Owner/Here/";

    private const int QuestionLength = 32;
    private const string Greeting = "ProcessorDesk ";
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(8);

    private readonly HttpClient _client = new(new SocketsHttpHandler { AllowAutoRedirect = false, UseProxy = false, UseCookies = false })
    {
        Timeout = Patience,
        MaxResponseContentBufferSize = 16 * 1024,
    };

    /// <summary>What this desk answers to a question; nothing where it is none.</summary>
    public IResult Answer(string question) =>
        question.Length == QuestionLength && question.All(char.IsAsciiHexDigitLower)
            ? Results.Text(Greeting + Proof(question))
            : Results.NotFound();

    /// <summary>Null where the address led here; otherwise what happened instead, in words.</summary>
    public async Task<string?> Try(string address)
    {
        var question = RandomNumberGenerator.GetHexString(QuestionLength, lowercase: true);
        try
        {
            using var answer = await _client.GetAsync(new Uri(address + Path + question));
            var redirected = (int)answer.StatusCode is >= 300 and < 400;
            if (redirected)
                return $"{address} sends the browser on to another address{(answer.Headers.Location is { } to ? $", {to}" : "")}. Set the address that answers without that.";
            var words = await answer.Content.ReadAsStringAsync();
            if (answer.StatusCode != HttpStatusCode.OK || !words.StartsWith(Greeting, StringComparison.Ordinal))
                return $"Another program answered at {address} (it said {(int)answer.StatusCode}). Look where the address, the router or the forwarding leads to.";
            return CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(words[Greeting.Length..]), Encoding.UTF8.GetBytes(Proof(question)))
                ? null
                : $"Another shop's desk answered at {address}. Look where the address leads to.";
        }
        catch (HttpRequestException fault)
        {
            return Words(address, fault.HttpRequestError);
        }
        catch (TaskCanceledException)
        {
            return $"Nothing answered at {address} within {Patience.Seconds} seconds. Is the address right, and does the router or the forwarding lead to this PC?";
        }
    }

    public void Dispose() => _client.Dispose();

    private string Proof(string question) => Convert.ToHexStringLower(key.Prove($"here {question}"));

    private static string Words(string address, HttpRequestError error) => error switch
    {
        HttpRequestError.NameResolutionError => $"The name in {address} is not known to any name server. Is it spelled right?",
        HttpRequestError.SecureConnectionError => $"Something answered at {address}, but not with a certificate that holds for it. Browsers would warn the owner too.",
        HttpRequestError.ConnectionError => $"Nothing answers at {address}. Is the address right, and does the router or the forwarding lead to this PC?",
        HttpRequestError.Unknown or HttpRequestError.HttpProtocolError or HttpRequestError.ExtendedConnectNotSupported or HttpRequestError.VersionNegotiationError
            or HttpRequestError.UserAuthenticationError or HttpRequestError.ProxyTunnelError or HttpRequestError.InvalidResponse or HttpRequestError.ResponseEnded
            or HttpRequestError.ConfigurationLimitExceeded => $"What answered at {address} is no web page this desk can read. Look where the address leads to.",
    };
}
