using System.Globalization;
using Microsoft.Data.Sqlite;
using ProcessorDesk.Migrations;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Door;
using ProcessorDesk.Web.Tests.Harness;
using ProcessorDesk.Web.Tests.Hosting;

namespace ProcessorDesk.Browser.Tests.KitchenDay;

/// <summary>The shop of the kitchen day: a data folder, the real program over it as a process of its own, and a clock the test moves.</summary>
internal sealed class DayShop : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("processor-desk-day-").FullName;
    private readonly WriteGate _gate = new();
    private RunningDesk? _running;
    private string _listens = "http://127.0.0.1:0";

    public DayShop()
    {
        Clock = new DayClock(ClockFile);
        // Friday 27 November 2026, half past five in the morning by the shop's clock in winter (UTC-6).
        Clock.Set(new DateTimeOffset(2026, 11, 27, 11, 30, 0, TimeSpan.Zero));
        SchemaKeeper.BringUpToDate(Database, Clock);
        using (var records = RecordsFile.Open(Database))
            StartingShop.Lay(records, new Verbs(records, _gate, Clock), "The kitchen day", "America/Chicago", isDemo: false);
        (Manager, Kitchen, Cutter) = (Hire("Mona Hart", "MH", StaffRole.Manager), Hire("Kit Hollow", "KH", StaffRole.Kitchen), Hire("Cal Reeve", "CR", StaffRole.Cutter));
    }

    public DayClock Clock { get; }

    public int Manager { get; }

    public int Kitchen { get; }

    public int Cutter { get; }

    private string Database => Path.Combine(_folder, RecordsFile.Name);

    private string ClockFile => Path.Combine(_folder, "clock");

    /// <summary>Starts the program; the first time on a port the system gives, then on the same, for there the tablets look for it.</summary>
    public async Task<Uri> Start()
    {
        var here = Path.Combine(AppContext.BaseDirectory, typeof(DayShop).Assembly.GetName().Name!);
        _running = new RunningDesk(
            ["exec", "--depsfile", here + ".deps.json", "--runtimeconfig", Path.Combine(AppContext.BaseDirectory, "ProcessorDesk.Web.runtimeconfig.json")],
            new Dictionary<string, string> { ["ASPNETCORE_HOSTINGSTARTUPASSEMBLIES"] = typeof(DayClock).Assembly.GetName().Name!, [DayClock.Variable] = ClockFile },
            ["--data", _folder, "--urls", _listens]);
        _listens = $"http://127.0.0.1:{(await _running.Says(@"Open on this PC: +http://localhost:(\d+)$")).Groups[1].Value}";
        return new Uri(_listens);
    }

    /// <summary>The power fails, in the middle of whatever it is; waits until the system has taken the dead process away.</summary>
    public void Cut()
    {
        _running!.Cut();
        _running.Dispose();
        _running = null;
    }

    /// <summary>Runs a verb as a hand of the shop; what it gave, which is an id mostly.</summary>
    public int Do(string verb, int staff, string station, Func<RecordsContext, Act, Outcome> work)
    {
        using var records = RecordsFile.Open(Database);
        var outcome = new Verbs(records, _gate, Clock).Run(verb, new Hand(staff, station), null, act => work(records, act));
        return !outcome.IsDone ? throw new InvalidOperationException($"{verb}: {string.Join(' ', outcome.Findings.Select(finding => finding.Text))}")
            : int.TryParse(outcome.Result, NumberStyles.None, CultureInfo.InvariantCulture, out var id) ? id : 0;
    }

    public T Read<T>(Func<RecordsContext, T> read)
    {
        using var records = RecordsFile.Open(Database);
        return read(records);
    }

    public void Dispose()
    {
        _running?.Dispose();
        _gate.Dispose();
        using (var connection = new SqliteConnection(RecordsFile.ConnectionString(Database)))
            SqliteConnection.ClearPool(connection);
        Directory.Delete(_folder, recursive: true);
    }

    private int Hire(string name, string initials, StaffRole role)
    {
        using var records = RecordsFile.Open(Database);
        var staff = new Staff(name, initials, role);
        new Verbs(records, _gate, Clock).Run("hire", Hand.SetUp, null, _ =>
        {
            staff.SetPin(Pins.Hash(Desk.Pin));
            records.Staff.Add(staff);
            return Outcome.Done();
        });
        return staff.Id;
    }
}
