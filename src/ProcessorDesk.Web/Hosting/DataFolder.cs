using ProcessorDesk.Records;

namespace ProcessorDesk.Web.Hosting;

/// <summary>
/// The one folder that holds all a shop has: its database, its keys, the copies made before upgrades. Named by
/// <c>--data</c>; otherwise a folder of the user's own, the demo's apart from the shop's.
/// </summary>
internal sealed class DataFolder
{
    public DataFolder(IConfiguration configuration)
    {
        var named = configuration["data"];
        Path = System.IO.Path.GetFullPath(string.IsNullOrWhiteSpace(named) ? PerUser(configuration.Demo()) : named);
        Directory.CreateDirectory(Path);
        Directory.CreateDirectory(Keys);
    }

    public string Path { get; }

    public string Database => System.IO.Path.Combine(Path, RecordsFile.Name);

    /// <summary>Keys that protect forms, sign-ins and owner links; part of a backup.</summary>
    public string Keys => System.IO.Path.Combine(Path, "keys");

    /// <summary>The key that owners' links are derived from.</summary>
    public string OwnerKey => System.IO.Path.Combine(Keys, "owner-links.key");

    private static string PerUser(bool demo) => System.IO.Path.Combine(
        Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.Create),
        demo ? "ProcessorDesk-demo" : "ProcessorDesk");
}
