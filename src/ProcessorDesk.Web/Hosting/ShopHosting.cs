using Microsoft.AspNetCore.DataProtection;
using Microsoft.Extensions.DependencyInjection.Extensions;
using ProcessorDesk.Migrations;
using ProcessorDesk.Records;
using ProcessorDesk.SeedDemo;

namespace ProcessorDesk.Web.Hosting;

/// <summary>How the app gets its shop: the data folder, the records, the clock; and what happens before the first page.</summary>
internal static class ShopHosting
{
    private const string DefaultAddress = "http://0.0.0.0:5080";

    public static void AddShop(this WebApplicationBuilder builder)
    {
        if (string.IsNullOrEmpty(builder.Configuration["urls"]) && string.IsNullOrEmpty(builder.Configuration["http_ports"]))
            builder.WebHost.UseUrls(DefaultAddress);
        var folder = new DataFolder(builder.Configuration);
        builder.Services.AddSingleton(folder);
        builder.Services.TryAddSingleton(TimeProvider.System);
        builder.Services.AddDataProtection().PersistKeysToFileSystem(new DirectoryInfo(folder.Keys)).SetApplicationName("ProcessorDesk");
        builder.Services.AddSingleton(new OwnerKey(folder.OwnerKey));
        builder.Services.AddSingleton<AddressTrial>();
        builder.Services.AddSingleton<WriteGate>();
        builder.Services.AddDbContext<RecordsContext>(options => options.UseRecordsFile(folder.Database));
        builder.Services.AddScoped<Verbs>();
        builder.Services.AddSingleton<FirstManagerCode>();
        builder.Services.AddScoped<ShopDay>();
    }

    /// <summary>Upgrades the schema, lays the built-in rows, fills the demo. False, with words on the console, where it must not go on.</summary>
    public static bool PrepareShop(this WebApplication app)
    {
        var folder = app.Services.GetRequiredService<DataFolder>();
        var clock = app.Services.GetRequiredService<TimeProvider>();
        var demo = app.Configuration.Demo();
        if (SchemaKeeper.BringUpToDate(folder.Database, clock) is { } copy)
            Console.WriteLine($"The records were upgraded. A copy from before is {copy}");
        using var scope = app.Services.CreateScope();
        var records = scope.ServiceProvider.GetRequiredService<RecordsContext>();
        if (records.Shop.Select(shop => (bool?)shop.IsDemo).SingleOrDefault() is { } isDemo && isDemo != demo)
        {
            Console.Error.WriteLine(isDemo
                ? $"The folder {folder.Path} holds the demo. Start with --demo, or name another folder with --data."
                : $"The folder {folder.Path} holds a real shop. The demo won't touch it: name another folder with --data.");
            return false;
        }

        if (demo)
            DemoSeason.Fill(records, scope.ServiceProvider.GetRequiredService<WriteGate>(), clock);
        else
            StartingShop.Lay(records, scope.ServiceProvider.GetRequiredService<Verbs>(), "Our shop", TimeZoneInfo.Local.Id, isDemo: false);
        app.Services.GetRequiredService<FirstManagerCode>().Prepare(records);
        app.Services.GetRequiredService<OwnerKey>().Prepare();
        return true;
    }
}
