using Microsoft.AspNetCore.Mvc;
using Microsoft.EntityFrameworkCore;
using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Web.Forms;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>What is on its way in the kitchen and what to do next with it; what waits for a batch; what was released lately.</summary>
public sealed class IndexModel(RecordsContext records, Verbs verbs, ShopDay shop) : StationPage
{
    private const int MostReleased = 8;

    [BindProperty]
    public PlanInput Input { get; set; } = new();

    public IReadOnlyList<OpenBatch> Open { get; private set; } = [];

    /// <summary>By product and formula, each a batch of its own.</summary>
    public IReadOnlyList<WaitingProduct> Waiting { get; private set; } = [];

    public IReadOnlyList<Released> Lately { get; private set; } = [];

    public ShopDay Shop => shop;

    /// <summary>Why the batch was not planned.</summary>
    public IReadOnlyList<string> Refusals => [.. ModelState["Input.Allotments"]?.Errors.Select(error => error.ErrorMessage) ?? []];

    public void OnGet() => Load();

    public IActionResult OnPost()
    {
        var outcome = verbs.Run("plan a batch", Hand, FormKey, act => records.PlanBatch(Input.Allotments, act));
        if (outcome.IsDone)
        {
            Say("The batch is planned. Print its sheet, or draw the meat.");
            return RedirectToPage("Batch", new { id = outcome.Result });
        }

        ModelState.Add(outcome.Findings);
        Load();
        return Page();
    }

    /// <summary>"On hold: record incomplete", "Rests until 3:40 PM", "Draw the meat for load 2".</summary>
    public string NextWords(OpenBatch batch) => KitchenWords.Next(batch.Progress, _batchHolds[batch.Id].Select(hold => hold.Reason), shop);

    public NextInKitchen Next(OpenBatch batch) => batch.Progress.NextAt(shop.Now);

    private ILookup<int, KitchenHold> _batchHolds = Array.Empty<KitchenHold>().ToLookup(hold => hold.Id);

    private void Load()
    {
        var holds = KitchenHold.All(records, shop);
        _batchHolds = holds.Where(hold => hold.BatchId is not null).ToLookup(hold => hold.BatchId!.Value);
        var held = holds.Where(hold => hold.StopsBatch).SelectMany(hold => hold.JobIds.Select(job => (Job: job, Hold: hold))).ToLookup(one => one.Job, one => one.Hold);
        Open = [.. records.OpenBatches().OrderBy(batch => batch.Progress.NextAt(shop.Now) == NextInKitchen.Rest).ThenByDescending(batch => batch.Progress.NextAt(shop.Now) == NextInKitchen.Held)];
        Waiting =
        [
            .. records.WaitingAllotments().GroupBy(one => (one.ProductId, one.Product, one.FormulaNumber))
                .Select(product => new WaitingProduct(
                    product.Key.ProductId, product.Key.Product, product.Key.FormulaNumber,
                    [.. product.Select(one => new WaitingProduct.Line(one, [.. held[one.JobId].Select(hold => $"{hold.Whose}: {Wording.Of(hold.Reason)}")]))]))
        ];
        Lately =
        [
            .. records.Batches.AsNoTracking().Where(batch => batch.ReleasedAt != null).OrderByDescending(batch => batch.ReleasedAt).Take(MostReleased)
                .Select(batch => new
                {
                    batch.Id,
                    batch.Number,
                    Product = batch.Product.Name,
                    batch.ReleasedAt,
                    Finished = records.FinishedShares.Where(share => share.Entry.BatchId == batch.Id).Sum(share => share.Weight.Milligrams),
                })
                .AsEnumerable()
                .Select(batch => new Released(batch.Id, batch.Number, batch.Product, shop.Moment(batch.ReleasedAt!.Value), shop.Print(Weight.FromMilligrams(batch.Finished))))
        ];
    }

    public sealed class PlanInput
    {
        /// <summary>Which of the lists was sent.</summary>
        public string Tried { get; set; } = "";

        public List<int> Allotments { get; set; } = [];
    }

    public sealed record Released(int Id, int Number, string Product, string At, string Finished);
}
