using Microsoft.Data.Sqlite;
using ProcessorDesk.Records;
using ProcessorDesk.Web.Tests.Hosting;

namespace ProcessorDesk.Web.Tests.Durability;

/// <summary>A shop's PC: the real program, started again and again on the same data folder.</summary>
internal sealed class ShopOnThisPc : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("processor-desk-durable-").FullName;
    private RunningDesk? _running;

    /// <summary>What every run of the program said on the console.</summary>
    public string Console { get; private set; } = "";

    /// <summary>Starts the program; where it listens now.</summary>
    public async Task<Uri> Start()
    {
        _running = new RunningDesk("--data", _folder, "--urls", "http://127.0.0.1:0");
        var here = await _running.Says(@"Open on this PC: +http://localhost:(\d+)$");
        return new Uri($"http://127.0.0.1:{here.Groups[1].Value}");
    }

    /// <summary>The first manager's code, which a new shop says after it started.</summary>
    public async Task<string> Code() => (await _running!.Says(@"First manager's one-time code: +(\w+)$")).Groups[1].Value;

    /// <summary>The power fails, at once and for whoever is just being answered.</summary>
    public void Cut() => _running!.Cut();

    /// <summary>Waits until the system has taken the dead process away.</summary>
    public void Clear()
    {
        if (_running is null)
            return;
        _running.Dispose();
        Console += _running.Console;
        _running = null;
    }

    /// <summary>Reads the shop's file past the program, as it stands on the disk.</summary>
    public T Read<T>(Func<RecordsContext, T> read)
    {
        var file = Path.Combine(_folder, RecordsFile.Name);
        using var connection = new SqliteConnection(RecordsFile.ConnectionString(file));
        try
        {
            using var records = RecordsFile.Open(file);
            return read(records);
        }
        finally
        {
            // A connection left open here would outlive the power cut, and the program would find nothing to recover.
            SqliteConnection.ClearPool(connection);
        }
    }

    public void Dispose()
    {
        Clear();
        Directory.Delete(_folder, recursive: true);
    }
}
