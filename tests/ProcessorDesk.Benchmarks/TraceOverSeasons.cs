using BenchmarkDotNet.Attributes;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Seasons.Tests.Generating;

namespace ProcessorDesk.Benchmarks;

/// <summary>
/// A trace from each kind of thing over made-up seasons of ten thousand jobs, each from the thing that reaches farthest: the batch of most
/// owners, the lot in most batches, and what hangs on them. A file of seasons is made once for a schema and kept in the temporary folder.
/// </summary>
[MemoryDiagnoser]
public class TraceOverSeasons
{
    private const int Seed = 2026;

    private string _path = "";
    private TraceStart _start;

    [Params(1, 10)]
    public int Seasons { get; set; }

    [ParamsAllValues]
    public TracedKind Kind { get; set; }

    [GlobalSetup]
    public void Setup()
    {
        string schema;
        using (var model = RecordsFile.Open(":memory:"))
            schema = model.Database.GetMigrations().Last();
        var folder = Directory.CreateDirectory(Path.Combine(Path.GetTempPath(), "processor-desk-benchmarks"));
        _path = Path.Combine(folder.FullName, $"{Seasons}-{schema}.db");
        if (!File.Exists(_path))
        {
            SeasonGenerator.Fill(_path + ".new", SeasonSize.One with { Seasons = Seasons, Owners = 2_000 * Seasons }, Seed);
            File.Move(_path + ".new", _path);
        }

        using var records = RecordsFile.Open(_path);
        _start = new TraceStart(Kind, Farthest(records));
    }

    [Benchmark]
    public Trace? TraceOf()
    {
        using var records = RecordsFile.Open(_path);
        return records.TraceOf(_start);
    }

    private int Farthest(RecordsContext records)
    {
        var batch = records.BatchEntries.Where(entry => records.BoxContents.Any(content => content.AllotmentId == entry.AllotmentId)).GroupBy(entry => entry.BatchId).OrderByDescending(entries => entries.Count()).ThenByDescending(entries => entries.Key).Select(entries => entries.Key).First();
        var lug = records.Draws.Where(draw => draw.Load.BatchId == batch).Select(draw => draw.FillingId).First();
        var job = records.Fillings.Where(filling => filling.Id == lug).Select(filling => filling.JobId).Single();
        return Kind switch
        {
            TracedKind.Batch => batch,
            TracedKind.Lug => lug,
            TracedKind.Job => job,
            TracedKind.Animal => records.Shares.Where(share => share.JobId == job).Select(share => share.AnimalId).First(),
            TracedKind.Box => records.BoxContents.Where(content => records.BatchEntries.Any(entry => entry.BatchId == batch && entry.AllotmentId == content.AllotmentId)).Select(content => content.BoxId).First(),
            TracedKind.IngredientLot => records.LotUses.GroupBy(use => use.LotId).OrderByDescending(uses => uses.Count()).Select(uses => uses.Key).First(),
        };
    }
}
