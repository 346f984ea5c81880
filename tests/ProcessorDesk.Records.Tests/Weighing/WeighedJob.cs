using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Migrations;
using ProcessorDesk.Trade;
using Xunit;

namespace ProcessorDesk.Records.Tests.Weighing;

/// <summary>A file of its own with one cutter, one owner's job and two deer: the first whole, the second shared half and half with another job.</summary>
internal sealed class WeighedJob : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("weighed-");
    private readonly string _path;
    private DateTime _clock = new(2026, 11, 20, 15, 0, 0, DateTimeKind.Utc);

    public WeighedJob()
    {
        _path = Path.Combine(_folder.FullName, RecordsFile.Name);
        SchemaKeeper.BringUpToDate(_path, TimeProvider.System);
        Records = RecordsFile.Open(_path);
        using var gate = new WriteGate();
        StartingShop.Lay(Records, new Verbs(Records, gate, TimeProvider.System), "Shop", "UTC", isDemo: false);
        var cutter = new Staff("Rene Lowry", "RL", StaffRole.Cutter);
        var list = Records.PriceLists.Single();
        Records.Staff.Add(cutter);
        Records.SaveChanges();
        StaffId = cutter.Id;
        Job = new Job(1, new Owner("Ada Fenn", "555-0101"), _clock, StaffId, list.Id);
        Other = new Job(2, new Owner("Bo Vance", "555-0102"), _clock, StaffId, list.Id);
        Whole = new Animal(Species.WhiteTailDeer, ArrivalState.FieldDressed, _clock);
        Whole.Identify("W 1", null, null, null, null);
        Whole.ShareWith(Job, Ratio.One, Portion.Whole);
        Half = new Animal(Species.Beef, ArrivalState.Skinned, _clock);
        Half.ShareWith(Job, Ratio.Of(1, 2), Portion.Side);
        Half.ShareWith(Other, Ratio.Of(1, 2), Portion.Side);
        Records.AddRange(Job, Other, Whole, Half);
        Records.SaveChanges();
    }

    public RecordsContext Records { get; }

    public int StaffId { get; }

    public Job Job { get; }

    public Job Other { get; }

    public Animal Whole { get; }

    public Animal Half { get; }

    /// <summary>A weight of a whole animal, a minute after the one before.</summary>
    public WeighIn Weigh(Animal animal, WeighInKind kind, decimal pounds) =>
        Save(WeighIn.OfAnimal(kind, animal.Id, Weight.FromPounds(pounds), Scale, Later(), StaffId));

    /// <summary>A weight of a job's own, on the bench.</summary>
    public WeighIn Weigh(Job job, WeighInKind kind, decimal pounds) =>
        Save(WeighIn.OfJob(kind, job.Id, null, Weight.FromPounds(pounds), Weight.Zero, Scale, Later(), StaffId));

    public void Strike(WeighIn weighIn)
    {
        Assert.Null(weighIn.StrikeOut("wrong animal", Later(), StaffId));
        Records.SaveChanges();
    }

    /// <summary>What a new reader of the file finds, and in how many commands.</summary>
    public JobWeights Read(Job job, ScaleDivision division, Action<string>? command = null)
    {
        var options = new DbContextOptionsBuilder<RecordsContext>();
        options.UseRecordsFile(_path);
        if (command is not null)
            options.LogTo(command, [Microsoft.EntityFrameworkCore.Diagnostics.RelationalEventId.CommandExecuted]);
        using var reader = new RecordsContext(options.Options);
        return reader.WeightsOf(job.Id, division);
    }

    public void Dispose()
    {
        Records.Dispose();
        using (var connection = new SqliteConnection(RecordsFile.ConnectionString(_path)))
            SqliteConnection.ClearPool(connection);
        _folder.Delete(recursive: true);
    }

    private static Reading Scale => new("bench", ScaleDivision.HundredthPound);

    private DateTime Later() => _clock = _clock.AddMinutes(1);

    private WeighIn Save(WeighIn weighIn)
    {
        Records.WeighIns.Add(weighIn);
        Records.SaveChanges();
        return weighIn;
    }
}
