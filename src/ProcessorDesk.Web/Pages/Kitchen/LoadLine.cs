using ProcessorDesk.Records;
using ProcessorDesk.Trade;
using ProcessorDesk.Trade.Curing;
using ProcessorDesk.Web.Hosting;

namespace ProcessorDesk.Web.Pages.Kitchen;

/// <summary>A load in the list of its batch: planned beside what happened.</summary>
/// <param name="Green">As planned.</param>
/// <param name="Cure">The check on what was weighed; null where the product is not cured or the load not mixed.</param>
public sealed record LoadLine(int Id, int Number, string Lean, string Drawn, string? Fat, string FatWeighed, string Green, string State, CureCheck? Cure, IReadOnlyList<string> Wrong)
{
    public static LoadLine Of(Load load, ShopDay shop) => new(
        load.Id, load.Number, shop.Print(load.Lean), load.Drawn.IsPositive ? shop.Print(load.Drawn) : "–",
        load.AddedFat.IsZero ? null : shop.Print(load.AddedFat), load.FatWeighed is { } fat ? shop.Print(fat) : "–", shop.Print(load.Green),
        load.MixedAt is { } at ? $"Mixed {shop.Moment(at)}" : load.Batch.MixedAt is not null ? "Not made: all the meat went into the others" : load.Drawn.IsPositive ? "Meat is in" : "To be drawn",
        load.MixedAt is null ? null : load.StricterCure(load.WeighedBlock, load.Ingredients),
        [
            .. load.Draws.Where(draw => draw.StruckAt is null && draw.AlreadyInBecause is not null)
                .Select(draw => $"{shop.Print(draw.Weighed)} of job {draw.Filling.Job.Number} was in already: {draw.AlreadyInBecause}"),
            .. load.AlreadyInBecause is { } because ? [$"Mixed before it was checked: {because}"] : Array.Empty<string>(),
            .. load.LacksSecondWeighing(load.Ingredients) ? ["No second weighing of the cure is noted"] : Array.Empty<string>(),
            .. load.LowCureBecause is { } low ? [$"Less cure than the minimum, accepted: {low}"] : Array.Empty<string>(),
        ]);
}
