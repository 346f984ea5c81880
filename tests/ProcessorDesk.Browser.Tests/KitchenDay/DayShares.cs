using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using Xunit;
using static ProcessorDesk.Browser.Tests.KitchenDay.DayAccounts;

namespace ProcessorDesk.Browser.Tests.KitchenDay;

/// <summary>Who was together with whom, and what came back to each: by the green weight of the meat as it was drawn.</summary>
internal static class DayShares
{
    /// <summary>
    /// Own batches are of one owner and pooled ones only of owners who agreed. Meat without a place is there once, where it was written down; that of
    /// the held animal is nowhere.
    /// </summary>
    public static void AreKeptApart(RecordsContext records, IReadOnlyList<DayBatch> batches)
    {
        var strays = new List<string>();
        foreach (var batch in batches)
        {
            var placed = records.BatchEntries.Where(entry => entry.BatchId == batch.Id && entry.LeftAt == null).Select(entry => new { entry.Id, entry.Job.Owner.Name, entry.Job.Pooling }).ToList();
            Assert.True(batch.IsPooled ? placed.TrueForAll(one => one.Pooling == Pooling.Pooled) : placed.DistinctBy(one => one.Name).Count() == 1, $"Batch {batch.Number} is of owners who do not belong together.");
            var draws = records.Draws.Where(draw => draw.Load.BatchId == batch.Id && draw.StruckAt == null)
                .Select(draw => new { draw.EntryId, draw.AlreadyInBecause, draw.Filling.Job.Owner.Name }).ToList();
            foreach (var draw in draws)
            {
                if (placed.Find(one => one.Name == draw.Name) is { } place)
                    Assert.Equal(place.Id, draw.EntryId);
                else
                    strays.Add($"{draw.Name} in {string.Join(", ", placed.Select(one => one.Name))}: {draw.EntryId}{draw.AlreadyInBecause}");
            }
        }

        Assert.Equal([$"{DayOwners.Wronged} in {DayOwners.Mistaken}: {KitchenDayTests.Mistake}"], strays);
        Assert.Empty(records.Draws.Where(draw => draw.Filling.Job.Owner.Name == DayOwners.Held).Select(draw => draw.Id));
        Assert.Empty(records.BatchEntries.Where(entry => entry.Job.Owner.Name == DayOwners.Held).Select(entry => entry.Id));
    }

    /// <summary>The shares of a batch sum to what was weighed, pieces and pounds, and none is a division away from its part of the green weight.</summary>
    public static void SumUp(RecordsContext records, DayNotes notes, DayBatch batch)
    {
        var shares = records.FinishedShares.Where(share => share.Entry.BatchId == batch.Id).Include(share => share.Entry).ThenInclude(entry => entry.Job).ThenInclude(job => job.Owner).ToList();
        foreach (var scale in notes.Finished.Where(one => one.Batch == batch.Id))
        {
            var of = shares.FindAll(share => share.LoadId == scale.Load);
            Assert.Equal(Count(scale.Pounds), of.Sum(share => Count(share.Weight)));
            if (scale.Pieces is { } pieces)
                Assert.Equal(pieces, of.Sum(share => share.Pieces!.Value));
            var greens = of.ToDictionary(share => share.EntryId, share => Green(records, share.EntryId, scale.Load));
            var all = greens.Values.Sum();
            foreach (var share in of)
            {
                var (owed, due) = (scale.Pounds * 100m * greens[share.EntryId] / all, Count(share.Weight));
                Assert.True(Math.Abs(owed - due) < 2m, $"Batch {batch.Number}: {share.Entry.Job.Owner.Name} has {due} hundredths of a pound and is owed {owed:0.0}.");
                if (scale.Pieces is { } count)
                    Assert.True(Math.Abs(count * greens[share.EntryId] / all - share.Pieces!.Value) < 1.01m, $"Batch {batch.Number}: {share.Entry.Job.Owner.Name} has {share.Pieces} pieces of {count}.");
            }
        }

        // Each owner of the plan has a share of each thing weighed that their meat is in, and nobody else has one.
        Assert.Equal(batch.Owners.Order(), shares.Select(share => share.Entry.Job.Owner.Name).Distinct().Order());
    }

    /// <summary>What an entry's lean made: each pound of it as much green weight as the plan says for its load.</summary>
    private static decimal Green(RecordsContext records, int entry, int? load) => records.LoadParts.AsNoTracking()
        .Where(part => part.EntryId == entry && (load == null || part.LoadId == load)).AsEnumerable()
        .Sum(part => records.Draws.Where(draw => draw.LoadId == part.LoadId && draw.EntryId == entry && draw.StruckAt == null).Select(draw => draw.Weighed).AsEnumerable().Sum(Count)
            * (decimal)part.Green.Milligrams / part.Lean.Milligrams);
}
