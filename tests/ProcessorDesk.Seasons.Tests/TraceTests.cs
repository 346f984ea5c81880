using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using Xunit;

namespace ProcessorDesk.Seasons.Tests;

/// <summary>
/// What holds for every trace of a season: who is found backwards finds the same thing again forwards, and weights add up to the division.
/// Held against the tables themselves, row by row, with none of the trace's own queries.
/// </summary>
public sealed class TraceTests(SeasonFiles files) : IClassFixture<SeasonFiles>
{
    [Fact]
    public void Forwards_of_whatever_is_found_backwards_leads_to_the_thing_again()
    {
        using var records = RecordsFile.Open(files.Small);
        var batches = records.Batches.Where(batch => batch.Id % 7 == 0 && batch.MixedAt != null).Select(batch => batch.Id).ToList();
        var boxes = records.Boxes.Where(box => box.Id % 17 == 0).Select(box => box.Id).ToList();

        Assert.True(batches.Count > 20 && boxes.Count > 20);
        foreach (var id in batches)
        {
            var trace = Of(records, TracedKind.Batch, id);
            Assert.NotEmpty(trace.LugsIn);
            Assert.All(trace.LugsIn, lug => Assert.Contains(Of(records, TracedKind.Lug, lug.Id).In, batch => batch.Id == id));
            Assert.All(trace.AnimalsIn, animal => Assert.Contains(Of(records, TracedKind.Animal, animal.Id).In, batch => batch.Id == id));
            Assert.All(trace.LugsIn.SelectMany(lug => Of(records, TracedKind.Lug, lug.Id).AnimalsIn), animal => Assert.Contains(trace.AnimalsIn, one => one.Id == animal.Id));
        }

        foreach (var id in boxes)
        {
            var trace = Of(records, TracedKind.Box, id);
            Assert.NotEmpty(trace.AnimalsIn);
            Assert.All(trace.AnimalsIn, animal => Assert.Contains(Of(records, TracedKind.Animal, animal.Id).BoxesOf, box => box.Id == id));
            Assert.All(trace.In, batch => Assert.Contains(Of(records, TracedKind.Batch, batch.Id).BoxesOf, box => box.Id == id));
        }
    }

    [Fact]
    public void Every_lug_is_its_draws_and_its_rest_and_every_batch_what_it_gave_back()
    {
        using var records = RecordsFile.Open(files.Small);
        var division = records.Shop.AsNoTracking().Single().BenchDivision;

        foreach (var id in records.Fillings.Where(filling => filling.Id % 11 == 0).Select(filling => filling.Id).ToList())
        {
            var lug = Of(records, TracedKind.Lug, id).OwnLugs.Single();
            Assert.Equal(division.Round(lug.Lean), lug.Drawn(division) + lug.Rest(division));
            Assert.Equal(records.Draws.Where(draw => draw.FillingId == id && draw.StruckAt == null).AsEnumerable().Sum(draw => division.CountOf(draw.Weighed)), division.CountOf(lug.Drawn(division)));
        }

        foreach (var id in records.Batches.Where(batch => batch.Id % 7 == 0 && batch.ReleasedAt != null).Select(batch => batch.Id).ToList())
        {
            var trace = Of(records, TracedKind.Batch, id);
            var batch = trace.In.Single();
            Assert.Equal(division.Round(batch.Finished!.Value), division.Sum(batch.Places.Select(place => place.Back!.Value)));
            Assert.Equal(division.CountOf(trace.Meat(batch, division)), records.Draws.Where(draw => draw.Load.BatchId == id && draw.StruckAt == null).AsEnumerable().Sum(draw => division.CountOf(draw.Weighed)));
        }
    }

    [Fact]
    public void A_lot_names_every_batch_and_owner_it_went_to_and_adds_up_exactly()
    {
        using var records = RecordsFile.Open(files.Small);
        foreach (var lot in records.IngredientLots.AsNoTracking().Where(lot => lot.Id % 3 == 0).ToList())
        {
            var uses = records.LotUses.AsNoTracking().Include(use => use.Load).Where(use => use.LotId == lot.Id && use.StruckAt == null).ToList();
            var batches = uses.Select(use => use.Load.BatchId).Distinct().Order().ToList();
            var jobs = records.BatchEntries.Where(entry => batches.Contains(entry.BatchId)).Select(entry => entry.JobId).Distinct().Order().ToList();

            var trace = Of(records, TracedKind.IngredientLot, lot.Id);

            Assert.Equal(batches, trace.In.Select(batch => batch.Id).Order());
            Assert.Equal(jobs, trace.ToTell.Select(job => job.Id).Order());
            Assert.Equal(uses.Aggregate(Weight.Zero, (sum, use) => sum + use.Amount) + trace.Lots[0].Rest, lot.Amount);
            Assert.All(trace.In.Where((_, i) => i % 20 == 0), batch => Assert.Contains(Of(records, TracedKind.Batch, batch.Id).LotsIn, one => one.Id == lot.Id));
        }
    }

    private static Trace Of(RecordsContext records, TracedKind kind, int id) => records.TraceOf(new TraceStart(kind, id))!;
}
