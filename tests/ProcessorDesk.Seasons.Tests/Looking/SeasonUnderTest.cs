using System.Diagnostics;
using Microsoft.AspNetCore.Hosting;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using ProcessorDesk.Records;
using ProcessorDesk.Seasons.Tests.Generating;
using ProcessorDesk.Web.Tests.Harness;

namespace ProcessorDesk.Seasons.Tests.Looking;

/// <summary>The real server over a shop with whole seasons behind it, and every page load watched.</summary>
public class SeasonUnderTest : ShopUnderTest
{
    private const int Seed = 2026;

    private readonly PageLoads _loads = new();
    private Task<IReadOnlyList<PageLoad>>? _walk;

    private protected SeasonUnderTest(SeasonSize size)
        : this(size, new Stopwatch())
    {
    }

    private SeasonUnderTest(SeasonSize size, Stopwatch watch)
        : base(demo: false, folder =>
        {
            watch.Start();
            SeasonGenerator.Fill(Path.Combine(folder, RecordsFile.Name), size, Seed);
            watch.Stop();
        }) => FillTook = watch.Elapsed;

    public TimeSpan FillTook { get; }

    internal PageLoads Loads => _loads;

    public string DatabasePath => Path.Combine(Folder, RecordsFile.Name);

    /// <summary>Every page opened in each of its states by every role, walked once for all who ask.</summary>
    internal Task<IReadOnlyList<PageLoad>> Walk() => _walk ??= PageWalk.Of(this);

    /// <summary>The seasons' own hands have no PIN; one of the role who has comes in.</summary>
    public async Task<Desk> ComeIn(StaffRole role)
    {
        var desk = Stranger();
        await desk.ComeIn(AddStaff($"{role} Tester", role));
        return desk;
    }

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        if (disposing)
            _loads.Dispose();
    }

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        base.ConfigureWebHost(builder);
        builder.ConfigureServices(services =>
        {
            services.AddSingleton<IStartupFilter>(_loads);
            services.ConfigureDbContext<RecordsContext>(options => options.AddInterceptors(_loads.Watch));
        });
    }
}
