using System.Net;
using System.Net.Sockets;

namespace ProcessorDesk.Web.Pages.Office;

/// <summary>Where owners reach the desk from home: scheme, name and perhaps a port, nothing behind.</summary>
public static class PublicAddress
{
    private const string Example = "https://desk.example.com";

    /// <summary>An address as people type it: "https://desk.example.com", without a slash at its end, or what is wrong with it in words; both null where nothing is typed.</summary>
    public static (string? Address, string? Problem) Read(string? typed)
    {
        var text = (typed ?? "").Trim();
        if (text == "")
            return (null, null);
        if (!text.Contains("://", StringComparison.Ordinal))
            return Bad($"Begin with https://, as in {Example}.");
        if (!Uri.TryCreate(text, UriKind.Absolute, out var address) || address.Host == "")
            return Bad($"This does not read as an address. Type it like {Example}.");
        if (address.Scheme != Uri.UriSchemeHttp && address.Scheme != Uri.UriSchemeHttps)
            return Bad($"An address begins with https:// (or http:// inside the shop's own network), as in {Example}.");
        if (address.UserInfo != "")
            return Bad("Leave out the name and password before the @: everybody with a link would read them.");
        if (address.PathAndQuery != "/" || address.Fragment != "")
            return Bad($"Leave out everything behind the name and its port: {address.GetLeftPart(UriPartial.Authority)}");
        if (address.Scheme == Uri.UriSchemeHttp && !IsOwnNetwork(address))
            return Bad("Over the open internet the address begins with https://, or what owners read can be read and changed on its way. Plain http:// is for the shop's own network.");
        return ($"{address.Scheme}://{Host(address)}{(address.IsDefaultPort ? "" : FormattableString.Invariant($":{address.Port}"))}", null);
    }

    private static (string? Address, string? Problem) Bad(string problem) => (null, problem);

    private static string Host(Uri address) => address.HostNameType == UriHostNameType.IPv6 ? address.Host : address.IdnHost;

    /// <summary>Addresses and names that no name server of the open internet leads to (RFC 1918, 4193, 6762, 8375).</summary>
    private static bool IsOwnNetwork(Uri address)
    {
        if (IPAddress.TryParse(address.Host.Trim('[', ']'), out var number))
            return IPAddress.IsLoopback(number) || (number.AddressFamily == AddressFamily.InterNetwork ? IsPrivate(number.GetAddressBytes()) : number.IsIPv6LinkLocal || number.IsIPv6UniqueLocal);
        string[] local = [".local", ".home.arpa", ".internal", ".localhost"];
        return !address.IdnHost.Contains('.', StringComparison.Ordinal) || local.Any(ending => address.IdnHost.EndsWith(ending, StringComparison.OrdinalIgnoreCase));
    }

    private static bool IsPrivate(byte[] bytes) => bytes switch
    {
        [10, ..] or [192, 168, ..] or [169, 254, ..] => true,
        [172, var second, ..] => second is >= 16 and <= 31,
        _ => false,
    };
}
