using ProcessorDesk.Records;
using ProcessorDesk.Seasons.Tests.Filing;

namespace ProcessorDesk.Seasons.Tests.Generating;

/// <summary>
/// Fills a new file with the records of a made-up shop over whole seasons, the same for the same seed. Entities are made and changed
/// by their own verbs, so that their rules hold; only the road to the file is a shorter one than the app's.
/// </summary>
internal static class SeasonGenerator
{
    private const int Days = 100;
    private const int LastWeeks = 14;

    /// <summary>The last moment of the last season: nine in the morning by the shop's clock, in the midst of things.</summary>
    public static DateTime Ends { get; } = new(2026, 11, 27, 15, 0, 0, DateTimeKind.Utc);

    /// <param name="path">Where no file is yet.</param>
    public static void Fill(string path, SeasonSize size, int seed)
    {
        var days = Enumerable.Range(0, size.Seasons).Select(season => DateOnly.FromDateTime(Ends).AddYears(season + 1 - size.Seasons)).ToList();
        var begins = days.ConvertAll(last => last.AddDays(-Days));
        ShopOpening.Open(path, begins, begins[0].AddDays(-1).ToDateTime(new TimeOnly(15, 0), DateTimeKind.Utc));
        using var records = RecordsFile.Open(path);
        var floor = new ShopFloor(records);
        using var rows = new SeasonRows(path);
        var dice = new Dice(seed);
        var season = new Season(rows, floor, dice, Ends);
        var door = new AtTheDoor(season, new OwnerDeck(size, dice));
        foreach (var last in days)
        {
            season.Larder.Expect(last.AddDays(-Days), last);
            var prices = floor.PriceLists.Last(list => list.StartsOn <= last);
            for (var jobs = 0; jobs < size.Jobs;)
                jobs += door.Expect(At(last.AddDays(DayOf(jobs, size)), dice), prices, size.Jobs - jobs);
            season.PlayUntil(last.AddDays(Days).ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc));
            if (!season.IsOver)
                throw new InvalidOperationException($"Something of the season that ends on {last} would come after the next begins.");
            rows.Write();
        }

        rows.SetCounter("job", season.NextJob);
        rows.SetCounter("invoice", season.NextInvoice);
        rows.SetCounter("batch", season.NextBatch);
        rows.SetCounter("ticket", season.NextTicket.Number);
        rows.Finish();
    }

    /// <summary>Days from the season's last one, none after it.</summary>
    private static int DayOf(int job, SeasonSize size)
    {
        var early = size.Jobs - size.InLastWeeks;
        return job < early
            ? -Days + job * (Days - LastWeeks - 1) / early
            : -LastWeeks + (job - early) * LastWeeks / size.InLastWeeks;
    }

    /// <summary>Some time while the door is open: eight to four by the shop's clock.</summary>
    private static DateTime At(DateOnly day, Dice dice) => day.ToDateTime(new TimeOnly(14, 0), DateTimeKind.Utc) + dice.Minutes(0, 480);
}
