using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;

namespace ProcessorDesk.Web.Hosting;

/// <summary>What the console says once the app listens: where to open it, here and on a tablet, and the first manager's code.</summary>
internal static class Announcement
{
    public static void AnnounceWhenStarted(this WebApplication app) => app.Lifetime.ApplicationStarted.Register(() =>
    {
        var addresses = app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()?.Addresses ?? [];
        var output = Console.Out;
        output.WriteLine();
        foreach (var address in addresses.Select(BindingAddress.Parse))
        {
            output.WriteLine($"  Open on this PC:  {address.Scheme}://localhost:{address.Port}");
            output.WriteLine(IsOnlyThisMachine(address.Host)
                ? $"  On a tablet:      not reachable; start with --urls {address.Scheme}://0.0.0.0:{address.Port}"
                : $"  On a tablet:      {address.Scheme}://{OwnAddress()}:{address.Port}");
        }

        output.WriteLine($"  The records are in {app.Services.GetRequiredService<DataFolder>().Path}");
        if (app.Services.GetRequiredService<FirstManagerCode>().Code is { } code)
            output.WriteLine($"  First manager's one-time code:  {code}");
        output.WriteLine();
    });

    private static bool IsOnlyThisMachine(string host) =>
        host == "localhost" || (IPAddress.TryParse(host.Trim('[', ']'), out var ip) && IPAddress.IsLoopback(ip));

    private static string OwnAddress() =>
        NetworkInterface.GetAllNetworkInterfaces()
            .Where(net => net.OperationalStatus == OperationalStatus.Up && net.NetworkInterfaceType != NetworkInterfaceType.Loopback)
            .SelectMany(net => net.GetIPProperties().UnicastAddresses)
            .Select(unicast => unicast.Address)
            .FirstOrDefault(ip => ip.AddressFamily == AddressFamily.InterNetwork)?.ToString()
        ?? "(no network found)";
}
