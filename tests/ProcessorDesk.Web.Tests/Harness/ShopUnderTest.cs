using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Door;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Tests.Harness;

// A whole shop: the real server on a free port, a real SQLite file in a folder of its own, a clock the test holds. One per class:
//   public sealed class HangTests(ShopUnderTest shop) : IClassFixture<ShopUnderTest> { ... }
//   using var desk = await shop.SignIn(StaffRole.Cutter); var page = await desk.Open("/Cooler"); page = await page.Send("Hang it", ("Input.Weight", "96")); page.Expect("96.0 lb");

/// <summary>Runs the web app as a shop does, and lets a test write to its records and come in at its door.</summary>
public class ShopUnderTest : WebApplicationFactory<Program>
{
    private readonly string _folder = Directory.CreateTempSubdirectory("processor-desk-").FullName;
    private readonly bool _demo;

    public ShopUnderTest()
        : this(demo: false)
    {
    }

    /// <param name="demo">Whether it is the made-up shop.</param>
    /// <param name="lay">Puts records into the shop's folder before it opens; null for a new shop.</param>
    protected ShopUnderTest(bool demo, Action<string>? lay = null)
    {
        _demo = demo;
        lay?.Invoke(_folder);
        UseKestrel(0);
        StartServer();
    }

    /// <summary>Friday 27 November 2026, nine in the morning by the shop's clock in winter (UTC−6).</summary>
    public FakeTimeProvider Clock { get; } = new(new DateTimeOffset(2026, 11, 27, 15, 0, 0, TimeSpan.Zero));

    public Uri Address => ClientOptions.BaseAddress;

    public string Folder => _folder;

    /// <summary>A browser of its own, with its own cookies, signed in to nothing.</summary>
    public Desk Stranger() => new(Address);

    /// <summary>A browser in which somebody of this role is signed in, with PIN 2580; the person is made where there is none.</summary>
    public async Task<Desk> SignIn(StaffRole role, string station = "Counter")
    {
        var desk = Stranger();
        await desk.ComeIn(StaffOf(role), station);
        return desk;
    }

    /// <summary>Writes through the same door as the pages do; returns what the act gave.</summary>
    public Outcome Write(Func<RecordsContext, Act, Outcome> work, Hand? hand = null)
    {
        using var scope = Services.CreateScope();
        var records = scope.ServiceProvider.GetRequiredService<RecordsContext>();
        return scope.ServiceProvider.GetRequiredService<Verbs>().Run("prepare a test", hand ?? Hand.SetUp, null, act => work(records, act));
    }

    public T Read<T>(Func<RecordsContext, T> read)
    {
        using var scope = Services.CreateScope();
        return read(scope.ServiceProvider.GetRequiredService<RecordsContext>());
    }

    public int StaffOf(StaffRole role)
    {
        var known = Read(records => records.Staff.Where(s => s.Role == role && s.RetiredAt == null).Select(s => (int?)s.Id).FirstOrDefault());
        return known ?? AddStaff($"{role} Tester", role);
    }

    public int AddStaff(string name, StaffRole role, string pin = Desk.Pin)
    {
        var outcome = Write((records, _) =>
        {
            var staff = new Staff(name, $"T{records.Staff.Count() + 1}", role);
            staff.SetPin(Pins.Hash(pin));
            records.Staff.Add(staff);
            records.SaveChanges();
            return Outcome.Done(staff.Id);
        });
        // Somebody is here: the door no longer asks for the first manager.
        Services.GetRequiredService<FirstManagerCode>().Spend();
        return int.Parse(outcome.Result, System.Globalization.CultureInfo.InvariantCulture);
    }

    protected override void ConfigureWebHost(IWebHostBuilder builder)
    {
        builder.UseSetting("data", _folder);
        builder.UseSetting("demo", _demo ? "true" : "false");
        builder.UseSetting("environment", "Production");
        builder.ConfigureTestServices(services => services.AddSingleton<TimeProvider>(Clock));
    }

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        if (!disposing || !Directory.Exists(_folder)) return;
        using (var connection = new SqliteConnection(RecordsFile.ConnectionString(Path.Combine(_folder, RecordsFile.Name))))
            SqliteConnection.ClearPool(connection);
        Directory.Delete(_folder, recursive: true);
    }
}
